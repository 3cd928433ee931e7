/** Remedies for steep pages and for eyes that cannot meet. */

import { describe, expect, it } from 'vitest';
import { asId } from '#model/document/ids.ts';
import { aConcert, aDocument, aPlayer, aShape, aStand, SIDE } from '../../../helpers/build.ts';
import { carried, doesLeast, findingsIn, found, isThere, remediesFor, troubles } from './trials.ts';

const READER = asId<'player'>('player-1');

describe('a desk that is turned away from its reader', () => {
  const stand = aStand({
    y: 1300,
    lip: 1000,
    facing: 130,
    sides: [{ ...SIDE, pagesAcross: 1, reader: READER }],
  });
  // Whether the house sees him is another matter.
  const { limits } = aConcert();
  const unseen = aConcert({ limits: { ...limits, houseShare: 0 } });
  const document = aDocument(unseen, aPlayer({ y: 2000 }), stand);
  const finding = found(document, 'reading.angle', 'stand-1');
  const turn = remediesFor(document, 'reading.angle', 'stand-1').find(({ kind }) => kind === 'turn');

  it('is turned back by as many whole degrees as it takes, and not one more', () => {
    if (turn?.kind !== 'turn') throw new Error('not turned');
    expect(turn.by).toBeGreaterThan(0);
    expect(turn.after).toBeLessThanOrEqual(45);
    expect(isThere(findingsIn(carried(document, turn)), finding)).toBe(false);
    expect(doesLeast(document, finding, turn)).toBe(true);
  });
});

describe('a desk between two players who must see each other', () => {
  const chair = { model: 'orchestra-chair', height: 450 };
  const pair = [
    aPlayer({ x: -900, facing: 90, chair }),
    aPlayer({ id: 'player-2', x: 900, facing: -90, chair }),
  ];
  const high = aStand({ x: 0, lip: 1000, facing: -90, tilt: 80 });
  const document = aDocument(...pair, high);

  it('is lowered until their eyes meet over it, with nothing else made worse', () => {
    const finding = found(document, 'facing.blocked', 'player-1', 'player-2');
    const [lower] = remediesFor(document, 'facing.blocked', 'player-1', 'player-2');
    if (lower?.kind !== 'lower') throw new Error('not lowered');
    const after = findingsIn(carried(document, lower));
    expect(isThere(after, finding)).toBe(false);
    expect(troubles(findingsIn(document), after)).toEqual([]);
    expect(doesLeast(document, finding, lower)).toBe(true);
  });

  it('the check itself says how far it has to come down: the remedy is that, rounded up to 5 mm', () => {
    const { measured } = found(document, 'facing.blocked', 'player-1', 'player-2');
    const [lower] = remediesFor(document, 'facing.blocked', 'player-1', 'player-2');
    expect(lower).toMatchObject({ kind: 'lower', by: Math.ceil(measured / 5) * 5, after: 0 });
  });

  it('past a column of the building one of the two moves, by no more than it takes', () => {
    const document = aDocument(...pair, aShape({ fixed: true }));
    const finding = found(document, 'facing.blocked', 'player-1', 'player-2');
    const remedies = remediesFor(document, 'facing.blocked', 'player-1', 'player-2');
    expect(remedies).toMatchObject([{ kind: 'move', item: 'player-1' }]);
    for (const remedy of remedies) {
      expect(isThere(findingsIn(carried(document, remedy)), finding)).toBe(false);
      expect(doesLeast(document, finding, remedy)).toBe(true);
    }
  });

  it('a wall of the building between them: nothing helps', () => {
    const wall = aShape({
      fixed: true,
      outline: [
        { x: -50, y: -2500 },
        { x: 50, y: -2500 },
        { x: 50, y: 2500 },
        { x: -50, y: 2500 },
      ],
    });
    expect(remediesFor(aDocument(...pair, wall), 'facing.blocked', 'player-1', 'player-2')).toEqual([]);
  });
});
