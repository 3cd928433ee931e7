import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { AnyRecord, Point, Shape } from '#model/document/records.ts';
import { asId } from '#model/document/ids.ts';
import { outlineOf } from '#model/catalogue/outlines.ts';
import { carryingWays, type Way } from '#model/programme/ways/carrying.ts';
import '../../helpers/seed.ts';
import { aDoor, aRiser, aShape, SETUP } from '../../helpers/build.ts';
import { twoSetups } from './programme-scenes.ts';

const ROUTE = 915;

const box = (width: number, depth: number): Shape['outline'] => [
  { x: -width / 2, y: -depth / 2 },
  { x: width / 2, y: -depth / 2 },
  { x: width / 2, y: depth / 2 },
  { x: -width / 2, y: depth / 2 },
];

const column = (id: string, at: Point, width: number, depth: number) =>
  aShape({ id, setup: null, ...at, outline: box(width, depth) });

const waysPast = (...records: AnyRecord[]) => carryingWays(twoSetups(...records), SETUP);

describe('carrying ways', () => {
  it('are straight where nothing stands', () => {
    const way = waysPast().between({ x: -1000, y: 1000 }, { x: 2000, y: 3000 }, 500);
    expect(way).toMatchObject({ ease: 'clear', points: [{ x: -1000 }, { x: 2000 }] });
    expect(way.length).toBeCloseTo(Math.hypot(3000, 2000), 9);
  });

  it('go round a column as wide as a route: a taut string round it is the least there can be', () => {
    // A wall 2 m long across the way, its end 1 m off: the string bends round a quarter of a circle at that end.
    const ways = waysPast(column('shape-1', { x: 500, y: 2500 }, 200, 3000));
    const [from, to] = [
      { x: -1500, y: 1500 },
      { x: 2500, y: 1500 },
    ];
    const way = ways.between(from, to, 500);
    const taut = tautRound(from, to, [
      { x: 400, y: 1000 },
      { x: 600, y: 1000 },
    ]);
    expect(way.ease).toBe('clear');
    expect(way.length).toBeGreaterThanOrEqual(taut - 0.1);
    expect(way.length).toBeLessThanOrEqual(taut * 1.03);
  });

  it('keep clear of everything and are hardly longer than on a fine grid', () => {
    const place = fc.record({
      x: fc.integer({ min: -2200, max: 2200 }),
      y: fc.integer({ min: 1200, max: 3800 }),
    });
    const size = fc.integer({ min: 100, max: 900 });
    const block = fc.tuple(place, size, size);
    fc.assert(
      fc.property(fc.array(block, { minLength: 1, maxLength: 4 }), (blocks) => {
        const columns = blocks.map(([at, width, depth], index) =>
          column(`shape-${index + 1}`, at, width, depth),
        );
        const [from, to] = [
          { x: -3300, y: 2500 },
          { x: 3300, y: 2500 },
        ];
        const way = waysPast(...columns).between(from, to, 500);
        const grid = gridLength(columns, from, to, ROUTE / 2);
        if (way.ease !== 'clear') {
          // The grid finds nothing either, unless by the width of a cell.
          expect(gridLength(columns, from, to, ROUTE / 2 + 1.5 * CELL)).toBe(Infinity);
          return;
        }
        for (const [at, isEnd] of samples(way)) {
          // Near its ends it may squeeze past; they stand free here, so that is of no use.
          expect(clearance(columns, at), JSON.stringify([at, isEnd])).toBeGreaterThan(ROUTE / 2 - 1);
        }
        // Eight neighbours make a grid's ways up to 8.3 % too long, bends cut round corners ours at most as much.
        if (grid < Infinity) expect(way.length).toBeLessThan(grid * 1.02 + 2 * CELL);
        expect(way.length).toBeGreaterThan(grid / 1.083 - 4 * CELL);
      }),
      { numRuns: 25 },
    );
  });

  it('take what is wider only through gaps that it fits, and say when it fits nowhere', () => {
    const wall = [
      column('shape-1', { x: 0, y: 1000 }, 200, 2000),
      column('shape-2', { x: 0, y: 4000 }, 200, 2000),
    ];
    const [from, to] = [
      { x: -2000, y: 2500 },
      { x: 2000, y: 2500 },
    ];
    // The gap is 1000 wide.
    expect(waysPast(...wall).between(from, to, 600).ease).toBe('clear');
    expect(waysPast(...wall).between(from, to, 1100).ease).toBe('none');
    const narrow = [
      column('shape-1', { x: 0, y: 1000 }, 200, 2000),
      column('shape-2', { x: 0, y: 3850 }, 200, 2300),
    ];
    // Now 700: less than a route, more than the thing.
    expect(waysPast(...narrow).between(from, to, 600).ease).toBe('tight');
    expect(waysPast(...narrow).between(from, to, 750).ease).toBe('none');
  });

  it('go over the edge of a high level only where there is no other way', () => {
    const stage = aRiser({
      id: 'riser-1',
      setup: null,
      x: 0,
      y: 3000,
      width: 3000,
      depth: 2000,
      height: 400,
    });
    const up = waysPast(stage).between({ x: -3000, y: 3000 }, { x: 0, y: 3000 }, 400);
    expect(up.ease).toBe('tight');
    const low = aRiser({ id: 'riser-1', setup: null, x: 0, y: 3000, width: 3000, depth: 2000, height: 150 });
    expect(waysPast(low).between({ x: -3000, y: 3000 }, { x: 0, y: 3000 }, 400).ease).toBe('clear');
  });
});

describe('ways to storage', () => {
  const from = { x: 1000, y: 2000 };
  const storage = (fields: object) =>
    ({
      id: asId<'storage'>('storage-1'),
      kind: 'storage',
      name: 'Dock',
      x: 0,
      y: 8000,
      door: null,
      ...fields,
    }) as const;

  it('lead through the opening and then straight', () => {
    const dock = storage({});
    const way = waysPast(dock).away(from, dock, 500);
    expect(way).toMatchObject({ door: 'door-1', ease: 'clear' });
    expect(way.length).toBeCloseTo(Math.hypot(1000, 3000) + 3000, 6);
  });

  it('take the door that the storage names, else the one that makes the way shortest', () => {
    const far = aDoor({ id: 'door-2', edge: 3, offset: 2000, width: 1000 });
    const dock = storage({});
    expect(waysPast(far, dock).away(from, dock, 500).door).toBe('door-1');
    const named = storage({ door: asId<'door'>('door-2') });
    expect(waysPast(far, named).away(from, named, 500).door).toBe('door-2');
  });

  it('do not lead a thing through a door that it does not fit', () => {
    const narrow = aDoor({ id: 'door-1', edge: 2, offset: 3500, width: 1000 });
    const wide = aDoor({ id: 'door-2', edge: 3, offset: 1500, width: 2000 });
    const dock = storage({});
    expect(waysPast(narrow, wide, dock).away(from, dock, 900).door).toBe('door-1');
    expect(waysPast(narrow, wide, dock).away(from, dock, 1500).door).toBe('door-2');
    expect(waysPast(narrow, dock).away(from, dock, 1500).ease).toBe('none');
  });

  it('end at the nearest opening when nobody said where things wait', () => {
    const way = waysPast().away(from, null, 500);
    expect(way.points.at(-1)).toMatchObject({ x: 0, y: 5000 });
    const shut = carryingWays(twoSetups(aDoor({ exit: false })), SETUP).away(from, null, 500);
    expect(shut).toMatchObject({ ease: 'none', door: null });
  });
});

/** Of a string pulled tight round a quarter of a circle at either corner: straight, arc, straight, arc, straight. */
function tautRound(from: Point, to: Point, [a, b]: readonly [Point, Point]): number {
  const r = ROUTE / 2;
  const tangent = (p: Point, c: Point) => Math.sqrt((p.x - c.x) ** 2 + (p.y - c.y) ** 2 - r * r);
  // The string leaves `from` on the tangent below `a`, runs along y = a.y - r, and rises to `to` from below `b`.
  const angle = (p: Point, c: Point) => {
    const d = Math.hypot(p.x - c.x, p.y - c.y);
    const toPoint = Math.atan2(Math.abs(p.x - c.x), c.y - p.y);
    return Math.max(0, toPoint - Math.acos(r / d));
  };
  return tangent(from, a) + r * angle(from, a) + (b.x - a.x) + r * angle(to, b) + tangent(to, b);
}

const CELL = 25;

/** Distance from the nearest column or edge of the platform, measured by itself: boxes about their middles. */
function clearance(columns: readonly Shape[], { x, y }: Point): number {
  const edges = Math.min(x + 4000, 4000 - x, y, 5000 - y);
  return columns.reduce((least, shape) => {
    const [a, , c] = outlineOf(shape);
    if (!a || !c) throw new Error('no box');
    const dx = Math.max(Math.min(a.x, c.x) - x, 0, x - Math.max(a.x, c.x));
    const dy = Math.max(Math.min(a.y, c.y) - y, 0, y - Math.max(a.y, c.y));
    return Math.min(least, Math.hypot(dx, dy));
  }, edges);
}

function samples({ points, length }: Way): [Point, boolean][] {
  const found: [Point, boolean][] = [];
  points.forEach((a, index) => {
    const b = points[index + 1];
    if (!b) return;
    const steps = Math.max(1, Math.ceil((Math.hypot(b.x - a.x, b.y - a.y) / Math.max(length, 1)) * 60));
    for (let step = 0; step <= steps; step++) {
      const share = step / steps;
      found.push([
        { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) },
        index === 0 || step === steps,
      ]);
    }
  });
  return found;
}

/** Dijkstra over cells whose middles are clear by `radius`, to all eight neighbours. */
function gridLength(columns: readonly Shape[], from: Point, to: Point, radius: number): number {
  const [across, up] = [Math.round(8000 / CELL) + 1, Math.round(5000 / CELL) + 1];
  const at = ({ x, y }: Point) => Math.round((x + 4000) / CELL) + across * Math.round(y / CELL);
  const point = (cell: number): Point => ({
    x: (cell % across) * CELL - 4000,
    y: Math.floor(cell / across) * CELL,
  });
  const lengths = new Float64Array(across * up).fill(Infinity);
  const isFree = Uint8Array.from({ length: across * up }, (_, cell) =>
    clearance(columns, point(cell)) >= radius ? 1 : 0,
  );
  lengths[at(from)] = 0;
  // Buckets of a millimetre: no way here is longer than 30 m.
  const buckets: number[][] = Array.from({ length: 30_000 }, () => []);
  buckets[0]?.push(at(from));
  for (let key = 0; key < buckets.length; key++) {
    for (const cell of buckets[key] ?? []) {
      if (Math.floor(lengths[cell] ?? 0) !== key) continue;
      const [column, row] = [cell % across, Math.floor(cell / across)];
      for (const [dx, dy] of NEIGHBOURS) {
        if (column + dx < 0 || column + dx >= across || row + dy < 0 || row + dy >= up) continue;
        const next = cell + dx + across * dy;
        const length = (lengths[cell] ?? 0) + CELL * Math.hypot(dx, dy);
        if (!isFree[next] || length >= (lengths[next] ?? 0)) continue;
        lengths[next] = length;
        buckets[Math.floor(length)]?.push(next);
      }
    }
  }
  return lengths[at(to)] ?? Infinity;
}

const NEIGHBOURS = [-1, 0, 1]
  .flatMap((dx) => [-1, 0, 1].map((dy) => [dx, dy] as const))
  .filter(([dx, dy]) => dx !== 0 || dy !== 0);
