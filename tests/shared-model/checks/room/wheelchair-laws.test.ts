/** What has to hold for the way of a wheelchair wherever things stand. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Finding } from '#model/checks/finding.ts';
import { routeResults } from '#model/checks/room/routes.ts';
import { wheelchairFindings } from '#model/checks/room/wheelchair-findings.ts';
import type { AnyRecord, Platform, PlacedRecord } from '#model/document/records.ts';
import { isPlaced } from '#model/document/records.ts';
import { rectangle } from '#model/catalogue/shapes.ts';
import { facingVector } from '#model/geometry/frame.ts';
import {
  aDocument,
  aDoor,
  aPlatform,
  aPlayer,
  aRiser,
  aShape,
  aStand,
  SETUP,
} from '../../../helpers/build.ts';
import { mirrored } from './mirrored.ts';

const CORNERS = [
  { x: -4000, y: 0 },
  { x: 4000, y: 0 },
  { x: 4000, y: 5000 },
  { x: -4000, y: 5000 },
];

const spot = fc.record({ x: fc.integer({ min: -3300, max: 3300 }), y: fc.integer({ min: 700, max: 4300 }) });
const facing = fc.integer({ min: -180, max: 180 });

/** Somebody in a wheelchair, a stand before a player, a level and a few boxes. */
const scenes = fc
  .record({
    user: fc.tuple(spot, facing),
    other: fc.tuple(spot, facing),
    level: fc.option(fc.tuple(spot, facing), { nil: null }),
    boxes: fc.array(
      fc.record({
        at: spot,
        facing,
        width: fc.integer({ min: 200, max: 2500 }),
        depth: fc.integer({ min: 100, max: 600 }),
      }),
      { maxLength: 4 },
    ),
  })
  .map(({ user, other, level, boxes }): PlacedRecord[] => [
    aPlayer({
      ...user[0],
      facing: user[1],
      chair: { model: 'wheelchair', height: 485 },
      mobility: 'wheelchair',
    }),
    aPlayer({ ...other[0], id: 'player-2', facing: other[1] }),
    aStand({ ...other[0], y: other[0].y - 600 }),
    ...(level ? [aRiser({ ...level[0], facing: level[1] })] : []),
    ...boxes.map((box, index) =>
      aShape({
        ...box.at,
        id: `shape-${index + 1}`,
        facing: box.facing,
        outline: rectangle(box.width, box.depth),
      }),
    ),
  ]);

type Place = (items: readonly PlacedRecord[]) => AnyRecord[];

const asItIs: Place = (items) => [
  aPlatform({ openEdges: [] }),
  aDoor({ offset: 500, width: 1300 }),
  ...items,
];

const inTheMirror: Place = (items) => [
  aPlatform({ openEdges: [] }),
  aDoor({ offset: 8000 - 500 - 1300, width: 1300 }),
  ...items.map(mirrored),
];

const turnedBy =
  (degrees: number): Place =>
  (items) => {
    // The direction that was straight at the house, and the one that was stage left.
    const [ahead, left] = [facingVector(degrees), facingVector(degrees + 90)];
    const turned = <P extends { readonly x: number; readonly y: number }>(point: P): P => ({
      ...point,
      x: point.x * left.x - point.y * ahead.x,
      y: point.x * left.y - point.y * ahead.y,
    });
    const platform: Platform = aPlatform({ openEdges: [], outline: CORNERS.map(turned) });
    const moved = items.map((item) => {
      const there = turned(item);
      return { ...there, facing: item.facing + degrees };
    });
    return [platform, aDoor({ offset: 500, width: 1300 }), ...moved];
  };

const said = (records: readonly AnyRecord[]): Finding[] => wheelchairFindings(aDocument(...records), SETUP);

/** Findings that lack so little that rounding decides are left out on both sides. */
const TRIFLE = 3;
const key = ({ code, detail, subjects }: Finding): string => `${code} ${subjects[0]} ${detail['at'] ?? ''}`;
const clear = (findings: readonly Finding[]): Finding[] =>
  findings.filter(({ measured, required }) => required - measured > TRIFLE || measured > required);

/** Two ways may be equally good, and bends and ends depend on which is taken: what is at the place does not. */
const atPlace = ({ code, detail }: Finding): boolean => code !== 'room.turning' || detail['at'] === 'place';

function expectSame(items: readonly PlacedRecord[], other: Place): void {
  const [here, there] = [said(asItIs(items)), said(other(items))];
  for (const [some, all] of [
    [here, there],
    [there, here],
  ] as const) {
    for (const finding of clear(some).filter(atPlace)) {
      const same = all.find((found) => key(found) === key(finding));
      expect(same, key(finding)).toBeDefined();
      expect(Math.abs((same?.measured ?? NaN) - finding.measured)).toBeLessThan(TRIFLE);
    }
  }
}

describe('the way of a wheelchair', () => {
  it('is judged alike in the mirror', () => {
    fc.assert(
      fc.property(scenes, (items) => expectSame(items, inTheMirror)),
      { numRuns: 60 },
    );
  });

  it('is judged alike when everything is turned', () => {
    fc.assert(
      fc.property(scenes, facing, (items, degrees) => expectSame(items, turnedBy(degrees))),
      { numRuns: 60 },
    );
  });

  it('finds something to say in some of these scenes, and nothing in others', () => {
    const counts = fc.sample(scenes, 60).map((items) => said(asItIs(items)).length);
    expect(counts.filter((count) => count > 0).length).toBeGreaterThan(5);
    expect(counts.filter((count) => count === 0).length).toBeGreaterThan(5);
  });

  it('never becomes wider, nor the room to turn larger, when a thing grows', () => {
    const state = (items: readonly PlacedRecord[]) => {
      const [route] = routeResults(aDocument(...asItIs(items)), SETUP);
      return {
        width: Math.min(915, route?.width ?? 0),
        place: Math.min(1525, route?.turning[0]?.diameter ?? 0),
      };
    };
    fc.assert(
      fc.property(
        scenes,
        spot,
        fc.integer({ min: 100, max: 900 }),
        fc.integer({ min: 1, max: 900 }),
        (items, at, width, more) => {
          // What somebody is in the middle of is not in his way, so it stays clear of him.
          const [user] = items;
          fc.pre(user !== undefined && isPlaced(user) && Math.hypot(user.x - at.x, user.y - at.y) > 1700);
          const box = (wide: number) => aShape({ ...at, id: 'shape-9', outline: rectangle(wide, wide) });
          const [before, after] = [state([...items, box(width)]), state([...items, box(width + more)])];
          expect(after.width).toBeLessThanOrEqual(before.width + TRIFLE);
          expect(after.place).toBeLessThanOrEqual(before.place + TRIFLE);
        },
      ),
      { numRuns: 120 },
    );
  });

  it('without a step-free exit there is none, however much is cleared', () => {
    fc.assert(
      fc.property(scenes, (items) => {
        const records = [...asItIs(items), aDoor({ offset: 500, width: 1300, stepFree: false })];
        const [route] = routeResults(aDocument(...records), SETUP);
        expect(route).toMatchObject({ exit: null, path: [], width: 0 });
      }),
      { numRuns: 20 },
    );
  });
});
