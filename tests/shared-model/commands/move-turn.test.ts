import { describe, expect, it } from 'vitest';
import { align, distribute, mirror } from '#model/commands/arrange-items.ts';
import { isLocked } from '#model/document/groups.ts';
import { FARTHEST_ITEM, FARTHEST_PLACE, move, placeAt } from '#model/commands/move.ts';
import { turnBy, turnTo, turnTowards } from '#model/commands/turn.ts';
import { applyDiff } from '#model/document/diff.ts';
import { platformOf, type Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import type { PlacedRecord } from '#model/document/records.ts';
import { facingTowards } from '#model/geometry/frame.ts';
import {
  aDocument,
  aLamp,
  aPlace,
  aPlayer,
  aRiser,
  aShape,
  aStand,
  recordOf,
  SIDE,
} from '../../helpers/build.ts';
import { documentOfEveryKind } from '../document/every-kind.ts';
import { frozen } from '../document/freeze.ts';
import { carriedOut, checkLaws, refusal } from './check-laws.ts';

const threeStands = (): Document =>
  frozen(
    aDocument(
      aStand({ x: -1000, y: 1000, facing: 170 }),
      aStand({ id: asId('stand-2'), x: 100, y: 2000 }),
      aStand({ id: asId('stand-3'), x: 2000, y: 1500 }),
    ),
  );
const ALL = ['stand-1', 'stand-2', 'stand-3'];

const spots = (document: Document, ids: readonly string[]): [number, number, number][] =>
  ids.map((id) => {
    const { x, y, facing } = document.records.get(id) as PlacedRecord;
    return [x, y, facing];
  });

describe('move', () => {
  it('moves all of them by the same way', () => {
    const document = threeStands();
    const outcome = move(document, { ids: ALL, dx: 10.00049, dy: -20 });
    expect(spots(carriedOut(document, outcome), ALL)).toEqual([
      [-990, 980, 170],
      [110, 1980, 180],
      [2010, 1480, 180],
    ]);
    expect(outcome).toMatchObject({ label: 'move 3 stands' });
  });

  it('has an empty diff when nothing moves', () => {
    const document = threeStands();
    const outcome = move(document, { ids: ALL, dx: 0, dy: 0 });
    checkLaws(document, outcome);
    expect(outcome).toMatchObject({ ok: true, diff: new Map() });
  });

  it('takes the lamp’s end of a cable along and leaves its socket', () => {
    const cable = [
      { x: 0, y: 2000 },
      { x: 500, y: 3000 },
      { x: 500, y: 5000 },
    ];
    const document = frozen(aDocument(aLamp({ cable })));
    const after = carriedOut(document, move(document, { ids: ['lamp-1'], dx: 100, dy: 50 }));
    expect(recordOf(after, 'lamp-1', 'lamp').cable).toEqual([{ x: 100, y: 2050 }, ...cable.slice(1)]);
  });

  it('moves seat blocks and places too, but no door', () => {
    const document = frozen(aDocument(aPlace()));
    carriedOut(document, move(document, { ids: ['stalls', 'place-1'], dx: 0, dy: -500 }));
    expect(refusal(document, move(document, { ids: ['stalls', 'door-1'], dx: 0, dy: 1 }))).toBe(
      'door 1 cannot be moved.',
    );
  });

  it('refuses to go out of the world', () => {
    const document = threeStands();
    for (const dx of [2e6, Infinity, NaN]) {
      expect(refusal(document, move(document, { ids: ALL, dx, dy: 0 }))).toMatch(
        /^stand 1, from the centre line: .* give a length/,
      );
    }
  });

  it('puts one item at an exact spot', () => {
    const document = threeStands();
    const after = carriedOut(document, placeAt(document, { id: 'stand-2', x: 820, y: 1450 }));
    expect(spots(after, ['stand-2'])).toEqual([[820, 1450, 180]]);
  });

  it('puts nothing farther off the platform than anybody means, on both sides of the limit', () => {
    const document = frozen(aDocument(aStand(), aPlace()));
    const edge = Math.max(...platformOf(document).outline.map(({ x }) => x));
    const stand = (x: number) => placeAt(document, { id: 'stand-1', x, y: 1000 });
    expect(refusal(document, stand(999_999))).toBe(
      'stand 1 would be more than 50000 mm from the platform; give a spot nearer to it.',
    );
    expect(refusal(document, stand(edge + FARTHEST_ITEM + 1))).toMatch(/^stand 1 would be more than/);
    carriedOut(document, stand(edge + FARTHEST_ITEM));
    carriedOut(document, placeAt(document, { id: 'place-1', x: 0, y: -FARTHEST_PLACE }));
    expect(refusal(document, placeAt(document, { id: 'place-1', x: 0, y: -FARTHEST_PLACE - 1 }))).toMatch(
      /more than 200000 mm/,
    );
  });

  it('brings nearer what is too far off already', () => {
    const document = frozen(aDocument(aStand({ x: 300_000, y: 1000 })));
    carriedOut(document, placeAt(document, { id: 'stand-1', x: 200_000, y: 1000 }));
    carriedOut(document, placeAt(document, { id: 'stand-1', x: 0, y: 1000 }));
    expect(refusal(document, placeAt(document, { id: 'stand-1', x: 300_001, y: 1000 }))).toMatch(/more than/);
  });
});

describe('turn', () => {
  it('turns each about its own spot, and stays within half a turn', () => {
    const document = threeStands();
    const after = carriedOut(document, turnBy(document, { ids: ALL, by: 30, about: 'own' }));
    expect(spots(after, ALL)).toEqual([
      [-1000, 1000, -160],
      [100, 2000, -150],
      [2000, 1500, -150],
    ]);
  });

  it('turns a group about its middle, and back to where it was', () => {
    const document = threeStands();
    const after = carriedOut(document, turnBy(document, { ids: ALL, by: 90, about: 'common' }));
    // By hand: the middle is (366.667, 1500); a quarter turn anticlockwise takes (dx, dy) to (-dy, dx).
    expect(spots(after, ALL)[0]).toEqual([866.667, 133.333, -100]);
    const back = carriedOut(after, turnBy(after, { ids: ALL, by: -90, about: 'common' }));
    for (const [index, [x, y, facing]] of spots(back, ALL).entries()) {
      const [wasX, wasY, was] = spots(document, ALL)[index] ?? [];
      expect([x, y]).toEqual([expect.closeTo(wasX ?? NaN, 2), expect.closeTo(wasY ?? NaN, 2)]);
      expect(facing).toBe(was);
    }
  });

  it('turns to a facing; the same direction spelt otherwise is no change', () => {
    const document = frozen(aDocument(aStand({ facing: 270 })));
    expect(
      spots(carriedOut(document, turnTo(document, { ids: ['stand-1'], facing: -20 })), ['stand-1']),
    ).toEqual([[0, 2000, -20]]);
    const outcome = turnTo(document, { ids: ['stand-1'], facing: -90 });
    checkLaws(document, outcome);
    expect(outcome).toMatchObject({ diff: new Map() });
  });

  it('turns towards a point, a player and the house', () => {
    const document = frozen(aDocument(aStand(), aPlayer({ x: 1000, y: 3000, name: 'Viola' })));
    const stand = recordOf(document, 'stand-1', 'stand');
    const ids = ['stand-1'];
    const toPlayer = turnTowards(document, { ids, towards: { id: 'player-1' } });
    expect(toPlayer).toMatchObject({ label: 'turn stand 1 towards Viola (player 1)' });
    expect(spots(carriedOut(document, toPlayer), ids)[0]?.[2]).toBe(135);
    expect(
      spots(carriedOut(document, turnTowards(document, { ids, towards: { x: 500, y: 0 } })), ids)[0]?.[2],
    ).toBeCloseTo(facingTowards(stand, { x: 500, y: 0 }), 2);
    expect(spots(carriedOut(document, turnTowards(document, { ids, towards: 'house' })), ids)[0]?.[2]).toBe(
      0,
    );
  });

  it('refuses to turn towards itself, towards nothing, and what has no facing', () => {
    const document = aDocument(aStand(), aPlace());
    const ids = ['stand-1'];
    expect(refusal(document, turnTowards(document, { ids, towards: { id: 'stand-1' } }))).toMatch(
      /that very spot/,
    );
    expect(refusal(document, turnTowards(document, { ids, towards: { id: 'door-1' } }))).toMatch(
      /nothing there/,
    );
    expect(refusal(document, turnTo(document, { ids: ['place-1'], facing: 0 }))).toBe(
      'place 1 cannot be turned.',
    );
    expect(refusal(document, turnTo(document, { ids, facing: NaN }))).toMatch(/desk faces: not a number/);
  });
});

describe('align and distribute', () => {
  it('aligns the middles half-way between the outermost', () => {
    const document = threeStands();
    const after = carriedOut(document, align(document, { ids: ALL, axis: 'x', at: 'middle' }));
    expect(spots(after, ALL).map(([there]) => there)).toEqual([500, 500, 500]);
    expect(spots(after, ALL).map(([, y]) => y)).toEqual([1000, 2000, 1500]);
  });

  it.each([
    ['x', 'least', [-1000, -1700]],
    ['x', 'greatest', [600, 1300]],
    ['y', 'least', [1000, 1300]],
    ['y', 'greatest', [2500, 2200]],
  ] as const)('aligns the sides along %s at the %s', (axis, at, expected) => {
    // By hand: a level of 2 m by 1 m, and one of 1.6 m by 0.6 m that is turned by a right angle.
    const document = frozen(
      aDocument(
        aRiser({ x: -1000, y: 1000, width: 2000, depth: 1000 }),
        aRiser({ id: asId('riser-2'), x: 1300, y: 2200, width: 1600, depth: 600, facing: 90 }),
      ),
    );
    const ids = ['riser-1', 'riser-2'];
    const after = carriedOut(document, align(document, { ids, axis, at }));
    expect(spots(after, ids).map((spot) => spot[axis === 'x' ? 0 : 1])).toEqual(expected);
  });

  it('spreads evenly between the outermost, whatever the order of the selection', () => {
    const document = threeStands();
    for (const ids of [ALL, [...ALL].reverse()]) {
      const after = carriedOut(document, distribute(document, { ids, axis: 'x' }));
      expect(spots(after, ALL).map(([x]) => x)).toEqual([-1000, 500, 2000]);
    }
  });

  it('refuses too few', () => {
    const document = threeStands();
    expect(refusal(document, align(document, { ids: ['stand-1'], axis: 'x', at: 'least' }))).toMatch(
      /at least two/,
    );
    expect(refusal(document, distribute(document, { ids: ALL.slice(1), axis: 'x' }))).toMatch(
      /at least three/,
    );
  });
});

describe('mirror', () => {
  it('goes to the other side of the centre line, and twice is where it was', () => {
    const document = frozen(documentOfEveryKind());
    const ids = [...document.records.values()]
      .filter((record) => 'x' in record && record.kind !== 'seatBlock' && record.kind !== 'underlay')
      .filter(({ id }) => !isLocked(document, id))
      .map(({ id }) => id);
    const once = carriedOut(document, mirror(document, { ids }));
    expect(carriedOut(once, mirror(once, { ids }))).toEqual(document);
  });

  it('keeps the page of each side looking at its mirrored reader', () => {
    const readers = [
      { x: 700, y: 1000 },
      { x: -300, y: 2800 },
    ] as const;
    const pair = aStand({
      x: 200,
      y: 1900,
      facing: facingTowards({ x: 200, y: 1900 }, readers[0]),
      form: 'backToBack',
      sides: [
        { ...SIDE, reader: asId('player-1') },
        { ...SIDE, reader: asId('player-2') },
      ],
    });
    const document = frozen(
      aDocument(aPlayer(readers[0]), aPlayer({ id: asId('player-2'), ...readers[1] }), pair),
    );
    const after = carriedOut(document, mirror(document, { ids: ['player-1', 'player-2', 'stand-1'] }));
    const mirrored = recordOf(after, 'stand-1', 'stand');
    expect(mirrored.sides).toEqual(pair.sides);
    expect(mirrored.facing).toBeCloseTo(facingTowards(mirrored, recordOf(after, 'player-1', 'player')), 2);
  });

  it('flips outlines and keeps their direction', () => {
    const outline = [
      { x: 0, y: 0 },
      { x: 300, y: 0 },
      { x: 0, y: 100 },
    ];
    const document = frozen(aDocument(aShape({ x: 500, facing: 20, outline })));
    const after = carriedOut(document, mirror(document, { ids: ['shape-1'] }));
    expect(recordOf(after, 'shape-1', 'shape')).toMatchObject({
      x: -500,
      facing: -20,
      outline: [
        { x: 0, y: 100 },
        { x: -300, y: 0 },
        { x: 0, y: 0 },
      ],
    });
  });

  it('refuses a seat block', () => {
    const document = aDocument();
    expect(refusal(document, mirror(document, { ids: ['stalls'] }))).toMatch(/^Stalls.* cannot be mirrored/);
  });

  it('has an empty diff on the centre line', () => {
    const document = aDocument(aStand({ x: 0, facing: 180 }));
    const outcome = mirror(document, { ids: ['stand-1'] });
    expect(outcome.ok && applyDiff(document, outcome.diff)).toEqual(document);
    expect(outcome).toMatchObject({ diff: new Map() });
  });
});
