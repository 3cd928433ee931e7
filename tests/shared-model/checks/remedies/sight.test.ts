/** Remedies for `sight.house`. */

import { describe, expect, it } from 'vitest';
import { standModel } from '#model/catalogue/stands.ts';
import type { Remedy } from '#model/checks/finding.ts';
import { leastRemedies } from '#model/checks/remedy.ts';
import { sightReport } from '#model/checks/sightlines/sight-report.ts';
import {
  aDocument,
  aLargeInstrument,
  aPiano,
  aPlayer,
  aRiser,
  aShape,
  aStand,
  SETUP,
} from '../../../helpers/build.ts';
import { carried, doesLeast, findingsIn, found, isThere, remediesFor } from './trials.ts';

function expectCleared(document: ReturnType<typeof aDocument>, remedies: readonly Remedy[]): void {
  const finding = found(document, 'sight.house', 'player-1');
  for (const remedy of remedies) {
    expect(isThere(findingsIn(carried(document, remedy)), finding), JSON.stringify(remedy)).toBe(false);
    expect(doesLeast(document, finding, remedy), JSON.stringify(remedy)).toBe(true);
  }
}

describe('a desk right before a player', () => {
  const document = aDocument(aPlayer({ y: 2000 }), aStand({ y: 1500, lip: 1050, tilt: 70 }));
  const remedies = remediesFor(document, 'sight.house', 'player-1');

  it('is lowered by as little as makes the house see him, in steps of 5 mm, and no less', () => {
    const lower = remedies[0];
    if (lower?.kind !== 'lower') throw new Error('not lowered');
    expect(lower.item).toBe('stand-1');
    expect(lower.by % 5).toBe(0);
    expect(1050 - lower.by).toBeGreaterThanOrEqual(standModel('orchestral')?.lip.least ?? Infinity);
  });

  it('each remedy clears the finding, and one step less of it does not', () => {
    expect(remedies.length).toBeGreaterThan(0);
    expectCleared(document, remedies);
  });

  it('`after` is the figure of a full check', () => {
    for (const remedy of remedies)
      expect(sightReport(carried(document, remedy), SETUP).figures[0]?.seenWell).toBe(remedy.after);
  });

  it('no kind of remedy comes twice', () => {
    expect(new Set(remedies.map(({ kind }) => kind)).size).toBe(remedies.length);
  });
});

describe('two desks, either of which hides him enough', () => {
  const document = aDocument(
    aPlayer({ y: 3000 }),
    aStand({ id: 'stand-1', x: 0, y: 2500, lip: 1000, deskWidth: 1100 }),
    aStand({ id: 'stand-2', x: 0, y: 1500, lip: 1000, deskWidth: 1100 }),
  );
  const remedies = remediesFor(document, 'sight.house', 'player-1');

  it('are lowered together, because one alone does not do', () => {
    expect(remedies.map(({ kind }) => kind)).toEqual(['lowerAll']);
    expectCleared(document, remedies);
    const [together] = remedies;
    if (together?.kind !== 'lowerAll') throw new Error('not together');
    for (const { item } of together.items) {
      const alone = carried(document, { kind: 'lower', item, by: 350 });
      expect(isThere(findingsIn(alone), found(document, 'sight.house', 'player-1')), item).toBe(true);
    }
  });
});

it('a desk is not lowered farther than its model goes, though lower would do', () => {
  // 500 mm high, with its lip at 650 at the lowest: even there it hides a seated player.
  const chair = { model: 'orchestra-chair', height: 450 };
  const document = aDocument(
    aPlayer({ y: 2000, chair }),
    aStand({ y: 1500, lip: 700, tilt: 85, deskHeight: 500 }),
  );
  const lower = carried(document, { kind: 'lower', item: 'stand-1', by: 580 });
  expect(isThere(findingsIn(lower), found(document, 'sight.house', 'player-1'))).toBe(false);
  for (const { kind } of remediesFor(document, 'sight.house', 'player-1')) expect(kind).not.toBe('lower');
});

const wall = (halfWidth: number) => [
  { x: -halfWidth, y: -150 },
  { x: halfWidth, y: -150 },
  { x: halfWidth, y: 150 },
  { x: -halfWidth, y: 150 },
];

describe('what stays where it is', () => {
  it('a wide part of the building: nothing is pretended to help', () => {
    const document = aDocument(aPlayer({ y: 2000 }), aShape({ y: 1000, outline: wall(2500), fixed: true }));
    expect(found(document, 'sight.house', 'player-1').subjects).toEqual(['player-1', 'shape-1']);
    expect(remediesFor(document, 'sight.house', 'player-1')).toEqual([]);
  });

  it('behind a narrow column the player is moved, not the column', () => {
    const document = aDocument(aPlayer({ y: 2000 }), aShape({ y: 1500, outline: wall(100), fixed: true }));
    const remedies = remediesFor(document, 'sight.house', 'player-1');
    expect(remedies).toMatchObject([{ kind: 'move', item: 'player-1' }]);
    expectCleared(document, remedies);
  });

  it('a flight case in the same spot is moved instead', () => {
    const document = aDocument(aPlayer({ y: 2000 }), aShape({ y: 1500, outline: wall(200), fixed: false }));
    expect(remediesFor(document, 'sight.house', 'player-1')).toMatchObject([
      { kind: 'move', item: 'shape-1' },
    ]);
  });

  it('a level that hides him carries other things', () => {
    const document = aDocument(aPlayer({ y: 4000 }), aRiser({ y: 2000, width: 7000, height: 1500 }));
    for (const remedy of remediesFor(document, 'sight.house', 'player-1'))
      expect(remedy).not.toMatchObject({ item: 'riser-1' });
  });
});

describe('what is heavy', () => {
  const hidden = aPlayer({ x: 1100, y: 3500, chair: { model: 'orchestra-chair', height: 450 } });
  const piano = aPiano({ model: 'upright', facing: 180, y: 2500 });

  it('is left alone while it is enough to move the player', () => {
    const document = aDocument(hidden, piano);
    expect(found(document, 'sight.house', 'player-1').subjects).toEqual(['player-1', 'piano-1']);
    expect(remediesFor(document, 'sight.house', 'player-1')).toMatchObject([
      { item: 'player-1', dx: 140, dy: 0 },
    ]);
    expectCleared(document, remediesFor(document, 'sight.house', 'player-1'));
  });

  it('is moved when he cannot be, because he belongs at what he plays', () => {
    const organ = aLargeInstrument({ model: 'chest-organ', x: 1100, y: 4400, player: hidden.id });
    const document = aDocument(hidden, piano, organ);
    const remedies = remediesFor(document, 'sight.house', 'player-1');
    expect(remedies).toMatchObject([{ kind: 'move', item: 'piano-1' }]);
    expectCleared(document, remedies);
  });
});

it('where he is seen well already nothing is suggested, whatever an old finding says', () => {
  const document = aDocument(aPlayer({ y: 2000 }), aStand({ y: 1500, lip: 1050, tilt: 70 }));
  const finding = found(document, 'sight.house', 'player-1');
  const cleared = carried(document, { kind: 'lower', item: 'stand-1', by: 400 });
  expect(isThere(findingsIn(cleared), finding)).toBe(false);
  expect(leastRemedies(cleared, SETUP, finding)).toEqual([]);
});
