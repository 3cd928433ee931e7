import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FIRST_STEP, SQUEEZE } from '#model/checks/room/first-step.ts';
import { roomFindings } from '#model/checks/room/room-findings.ts';
import { routeFindings } from '#model/checks/room/route-findings.ts';
import { routeResults } from '#model/checks/room/routes.ts';
import { outlineOf } from '#model/catalogue/outlines.ts';
import { asId } from '#model/document/ids.ts';
import type { AnyRecord, Shape } from '#model/document/records.ts';
import { depthInPolygon, type Polygon } from '#model/geometry/polygon.ts';
import { gapBetweenSegments } from '#model/geometry/segments.ts';
import {
  aBox,
  aConcert,
  aDocument,
  aDoor,
  aPlatform,
  aPlayer,
  aRiser,
  aShape,
  aStand,
  aTable,
  SETUP,
} from '../../../helpers/build.ts';
import { floodedWidth, PITCH } from './flood.ts';
import { mirrored } from './mirrored.ts';

const asked = (routeWidth: number) =>
  aConcert({ limits: { seesWell: 0.9, houseShare: 0.75, edgeDistance: 600, routeWidth } });

const route = (...records: AnyRecord[]) => {
  const [first] = routeResults(aDocument(...records), SETUP);
  if (!first) throw new Error('no player');
  return first;
};

/** A barrier across the platform with one gap about x = 0. The door is upstage, the player downstage of it. */
const barrier = (gap: number, thick = 200): Shape[] => [
  aBox('shape-1', [-4000, -gap / 2], [3000, 3000 + thick]),
  aBox('shape-2', [gap / 2, 4000], [3000, 3000 + thick]),
];
const WIDE_DOOR = aDoor({ offset: 1000, width: 3000 });
const PLAYER = aPlayer({ x: 1000, y: 1200 });

describe('the widest way', () => {
  test.each([320, 500, 815, 914, 915, 1000, 1180])('through a gap of %i mm is as wide as the gap', (gap) => {
    const found = route(asked(3000), WIDE_DOOR, PLAYER, ...barrier(gap));
    expect(found.width).toBeCloseTo(gap, 1);
    expect(found.exit).toBe('door-1');
  });

  test.each([3, 17, 38, 61])('through a slanting lane at %i degrees is as wide as the lane', (facing) => {
    const lane = (id: string, side: 1 | -1) =>
      aShape({
        id,
        y: 2800,
        facing: facing * 0.5,
        outline: [
          { x: side * 300, y: -600 },
          { x: side * 6000, y: -600 },
          { x: side * 6000, y: 600 },
          { x: side * 300, y: 600 },
        ],
      });
    const found = route(asked(3000), WIDE_DOOR, aPlayer({ y: 900 }), lane('shape-1', 1), lane('shape-2', -1));
    expect(found.width).toBeGreaterThan(599);
    expect(found.width).toBeLessThanOrEqual(600.001);
  });

  test('between two round things is the distance between their rims', () => {
    const round = (id: string, x: number) => aStand({ id, x, y: 3000, model: 'conductor', lip: 700 });
    const walls = [
      aBox('shape-1', [-4000, -1100], [2900, 3100]),
      aBox('shape-2', [1100, 4000], [2900, 3100]),
    ];
    const stands = [round('stand-1', -1000), round('stand-2', 1000)];
    const [a, b] = stands.map(outlineOf);
    if (!a || !b) throw new Error('two stands');
    const gap = Math.min(...b.map(({ x }) => x)) - Math.max(...a.map(({ x }) => x));
    expect(route(asked(3000), WIDE_DOOR, PLAYER, ...walls, ...stands).width).toBeCloseTo(gap, 0);
  });

  test('is no wider than the door', () => {
    expect(route(asked(3000), aDoor({ width: 850 }), PLAYER).width).toBeCloseTo(850, 1);
  });

  test('is chosen among several ways, however much longer it is', () => {
    const walls = [aBox('shape-1', [-3000, -400], [3000, 3200]), aBox('shape-2', [400, 4000], [3000, 3200])];
    // 800 mm in the middle, 1000 mm at the far stage right.
    const found = route(asked(3000), aDoor({ offset: 500, width: 3000 }), PLAYER, ...walls);
    expect(found.width).toBeCloseTo(1000, 1);
    expect(found.path.some(({ x }) => x < -3400)).toBe(true);
  });

  test('agrees with flooding a grid, on scattered things', () => {
    const spot = fc.record({
      x: fc.integer({ min: -2800, max: 2800 }),
      y: fc.integer({ min: 300, max: 3800 }),
    });
    const size = fc.integer({ min: 200, max: 1200 });
    const thing = fc.record({ at: spot, w: size, d: size, facing: fc.integer({ min: 0, max: 90 }) });
    fc.assert(
      fc.property(fc.array(thing, { minLength: 2, maxLength: 7 }), spot, (things, at) => {
        const tables = things.map(({ at: { x, y }, w, d, facing }, index) =>
          aTable({ id: `table-${index + 1}`, x, y, facing, width: w, depth: d }),
        );
        const obstacles = tables.map(outlineOf);
        // In the doorway itself the first step is all there is.
        fc.pre(Math.hypot(at.x - 2100, at.y - 4000) > 2 * FIRST_STEP);
        fc.pre(obstacles.every((obstacle) => depthInPolygon(at, obstacle) < -SQUEEZE / 2));
        const platform = aPlatform({ outline: YARD });
        const found = route(
          asked(3000),
          platform,
          aDoor({ offset: 400, width: 1000 }),
          aPlayer(at),
          ...tables,
        );
        const flooded = floodedWidth(
          { outline: YARD, obstacles, exit: EXIT, spot: at, firstStep: FIRST_STEP, squeeze: SQUEEZE },
          1000,
        );
        // Below this nobody gets through, and the search says "no way".
        fc.pre(flooded > 205);
        // The flood leaves the first step anywhere, the search along its net only.
        expect(found.width).toBeGreaterThan(flooded - 15);
        expect(found.width).toBeLessThan(flooded + 2 * PITCH);
      }),
      // Each run floods a grid a dozen times; shrinking would take minutes. The 15 mm are experience, so the seed is fixed.
      { numRuns: 25, endOnFailure: true, seed: 20261 },
    );
  });
});

const YARD: Polygon = [
  { x: -3000, y: 0 },
  { x: 3000, y: 0 },
  { x: 3000, y: 4000 },
  { x: -3000, y: 4000 },
];
/** Edge 2 runs from stage left to stage right. */
const EXIT = [
  { x: 2600, y: 4000 },
  { x: 1600, y: 4000 },
] as const;

describe('a route', () => {
  test('leads from the player’s spot to the doorway and keeps its width on the way', () => {
    const records = [
      WIDE_DOOR,
      PLAYER,
      ...barrier(1200),
      aStand({ x: 1000, y: 800 }),
      aTable({ x: -1200, y: 2200 }),
    ];
    const { path, width } = route(...records);
    expect(path[0]).toEqual({ x: PLAYER.x, y: PLAYER.y });
    expect(path.at(-1)?.y).toBeCloseTo(5000, 1);
    expect(width).toBeGreaterThanOrEqual(915);
    const others = records.flatMap((record) =>
      record.kind === 'player' || record.kind === 'door' ? [] : [outlineOf(record)],
    );
    expect(leastClearance(path, others)).toBeCloseTo(width / 2, 1);
  });

  test('as wide as asked is the shortest such', () => {
    const short = route(asked(600), WIDE_DOOR, PLAYER, ...barrier(700));
    // By the gap's middle to the doorway's.
    const straight = Math.hypot(1000, 1900) + Math.hypot(1500, 1900);
    expect(lengthOf(short.path)).toBeLessThan(straight * 1.02);
  });

  test('passes a player’s own body and chair, but nobody else’s', () => {
    // In a lane of 1000 mm, closed at the back: out is past the other one.
    const lane = [
      aBox('shape-1', [-4000, -500], [0, 4000]),
      aBox('shape-2', [500, 4000], [0, 4000]),
      WIDE_DOOR,
    ];
    const [back, front] = [aPlayer({ y: 800 }), aPlayer({ id: 'player-2', y: 2500 })];
    const results = routeResults(aDocument(asked(915), ...lane, back, front), SETUP);
    const shoulders = outlineOf(front).map(({ x }) => x);
    expect(results.map(({ player }) => player)).toEqual(['player-1', 'player-2']);
    expect(results[0]?.width).toBeCloseTo(500 - Math.max(...shoulders), -1);
    expect(results[1]?.width).toBeCloseTo(1000, 0);
  });

  test('may begin with a squeeze past the player’s own stand, within the first step', () => {
    const fence = [aBox('shape-1', [-4000, -350], [1000, 1100]), aBox('shape-2', [350, 4000], [1000, 1100])];
    // The gap of 700 lies 300 mm upstage of the player: it is his own place. Three metres off it counts.
    expect(route(WIDE_DOOR, aPlayer({ y: 800 }), ...fence).width).toBeGreaterThanOrEqual(915);
    expect(route(WIDE_DOOR, aPlayer({ x: 2000, y: 400 }), ...fence).width).toBeCloseTo(700, 1);
  });

  test('leads out of what the player stands in the middle of', () => {
    const around = aShape({
      x: PLAYER.x,
      y: PLAYER.y,
      outline: YARD.map(({ x, y }) => ({ x: x / 6, y: y / 6 - 333 })),
    });
    expect(route(WIDE_DOOR, PLAYER, around).width).toBeGreaterThanOrEqual(915);
    // The same thing beside the player is in the way: it closes the gap.
    const beside = { ...around, id: asId<'shape'>('shape-9'), x: 0, y: 3100 };
    expect(route(WIDE_DOOR, PLAYER, ...barrier(1100), beside).exit).toBeNull();
  });

  test('goes over levels and low marks on the floor', () => {
    const across = [aRiser({ y: 3000, width: 8000 }), aShape({ height: 0, y: 4000, outline: YARD })];
    expect(route(WIDE_DOOR, PLAYER, ...across).width).toBeGreaterThanOrEqual(915);
  });

  test('is none where a way is closed or only 200 mm wide, and for one who stands off the platform', () => {
    const none = { player: 'player-1', exit: null, path: [], width: 0, turning: [] };
    expect(route(WIDE_DOOR, PLAYER, ...barrier(0))).toEqual(none);
    expect(route(WIDE_DOOR, PLAYER, ...barrier(150))).toEqual(none);
    expect(route(WIDE_DOOR, aPlayer({ y: -500 }))).toEqual(none);
  });

  test('is none without an exit; an exit elsewhere will do', () => {
    expect(route(aDoor({ exit: false }), PLAYER).exit).toBeNull();
    const side = aDoor({ id: 'door-2', edge: 1, offset: 1000 });
    expect(route(aDoor({ exit: false }), side, PLAYER).exit).toBe('door-2');
  });

  test('in a mirror is as wide', () => {
    const things = [
      aTable({ x: 300, y: 2600, facing: 20 }),
      aStand({ x: -900, y: 3300 }),
      aPlayer({ x: 500, y: 700 }),
    ];
    const door = (offset: number) => aDoor({ offset, width: 1200 });
    const here = route(asked(3000), door(300), ...things);
    const there = route(asked(3000), door(8000 - 1200 - 300), ...things.map(mirrored));
    expect(there.width).toBeCloseTo(here.width, 0);
  });
});

describe('findings', () => {
  const findings = (...records: AnyRecord[]) => routeFindings(aDocument(...records), SETUP);

  test.each([
    [916, 0],
    [913, 1],
  ])('a gap of %i mm where 915 are asked: %i', (gap, count) => {
    expect(findings(WIDE_DOOR, PLAYER, ...barrier(gap))).toHaveLength(count);
  });

  test('say how narrow, where, and whether it is a pinch point of ADA/ABA 403.5.1', () => {
    const [pinch] = findings(WIDE_DOOR, PLAYER, ...barrier(850, 600));
    expect(pinch).toMatchObject({
      code: 'room.route',
      severity: 'caution',
      subjects: ['player-1', expect.stringMatching(/^shape-[12]$/), expect.stringMatching(/^shape-[12]$/)],
      measured: expect.closeTo(850, 1),
      required: 915,
      unit: 'mm',
      detail: { exit: 'door-1', pinch: 'pinch' },
    });
    expect(pinch?.where?.y).toBeGreaterThanOrEqual(3000);
    expect(pinch?.where?.y).toBeLessThanOrEqual(3600);
    // 620 mm long, or 800 mm wide: not such a point.
    expect(findings(WIDE_DOOR, PLAYER, ...barrier(850, 630))[0]?.detail).toMatchObject({ pinch: 'narrow' });
    expect(findings(WIDE_DOOR, PLAYER, ...barrier(810, 300))[0]?.detail).toMatchObject({ pinch: 'narrow' });
  });

  test.each([600, 700, 850, 900])('tell a straight passage of %i mm as it is measured by hand', (gap) => {
    for (const slant of [0, 7, 20]) {
      const sides = ([1, -1] as const).map((side) =>
        aShape({
          id: side > 0 ? 'shape-1' : 'shape-2',
          y: 3000,
          facing: slant,
          outline: [
            { x: (side * gap) / 2, y: -500 },
            { x: side * 5000, y: -500 },
            { x: side * 5000, y: 500 },
            { x: (side * gap) / 2, y: 500 },
          ],
        }),
      );
      const [told] = findings(WIDE_DOOR, PLAYER, ...sides);
      expect(Math.abs((told?.measured ?? NaN) - gap)).toBeLessThan(0.3);
    }
  });

  test('and the list of ways out says the same width as the finding, to the last digit', () => {
    let narrow = 0;
    fc.assert(
      fc.property(
        fc.integer({ min: 400, max: 914 }),
        fc.integer({ min: -20, max: 20 }),
        fc.constantFrom('walks' as const, 'wheelchair' as const),
        (gap, slant, mobility) => {
          const sides = ([1, -1] as const).map((side) =>
            aShape({
              id: `shape-${side + 2}`,
              y: 3000,
              facing: slant,
              outline: [
                { x: (side * gap) / 2, y: -500 },
                { x: side * 6000, y: -500 },
                { x: side * 6000, y: 500 },
                { x: (side * gap) / 2, y: 500 },
              ],
            }),
          );
          const chair = mobility === 'wheelchair' ? { model: 'wheelchair', height: 485 } : null;
          const document = aDocument(WIDE_DOOR, { ...PLAYER, mobility, chair }, ...sides);
          const [told] = routeResults(document, SETUP);
          const found = roomFindings(document, SETUP, told ? [told] : []).find(({ code }) =>
            ['room.route', 'room.wheelchairRoute'].includes(code),
          );
          if (!told || !found || told.exit === null) return;
          narrow++;
          expect(told.width).toBe(found.measured);
          // A straight passage is as wide as a tape says.
          expect(Math.abs(told.width - gap)).toBeLessThan(0.3);
        },
      ),
      { numRuns: 60 },
    );
    expect(narrow).toBeGreaterThan(30);
  });

  test('name the door where that is what is narrow', () => {
    expect(findings(aDoor({ offset: 3000, width: 880 }), PLAYER)).toMatchObject([
      { subjects: ['player-1', 'door-1'], measured: 880, where: { x: 560, y: 5000 } },
    ]);
  });

  test('no way at all is one too', () => {
    expect(findings(WIDE_DOOR, PLAYER, ...barrier(0))).toMatchObject([
      { measured: 0, where: { x: 1000, y: 1200 } },
    ]);
  });

  test('a platform without an exit has one finding for everybody', () => {
    const exitless = [aDoor({ exit: false }), PLAYER, aPlayer({ id: asId('player-2') })];
    expect(findings(...exitless)).toMatchObject([{ code: 'room.noExit', severity: 'caution', subjects: [] }]);
    expect(findings(aDoor(), PLAYER)).toEqual([]);
  });
});

function lengthOf(path: Polygon): number {
  return path.slice(1).reduce((sum, point, index) => {
    const before = path[index] ?? point;
    return sum + Math.hypot(point.x - before.x, point.y - before.y);
  }, 0);
}

/** Sampled every 5 mm, beyond the first step. */
function leastClearance(path: Polygon, others: readonly Polygon[]): number {
  const [spot] = path;
  let least = Infinity;
  path.slice(1).forEach((b, index) => {
    const a = path[index] ?? b;
    const steps = Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / 5);
    for (let step = 0; step <= steps; step++) {
      const at = { x: a.x + ((b.x - a.x) * step) / steps, y: a.y + ((b.y - a.y) * step) / steps };
      if (spot && Math.hypot(at.x - spot.x, at.y - spot.y) < FIRST_STEP) continue;
      for (const outline of others) {
        outline.forEach((p, corner) => {
          const q = outline[(corner + 1) % outline.length] ?? p;
          least = Math.min(least, gapBetweenSegments(at, at, p, q).distance);
        });
      }
    }
  });
  return least;
}
