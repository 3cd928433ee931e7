/** The sweep against a plain count of points, and where outlines coincide. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { uncoveredInCrowd } from '#model/geometry/shadows/crowd.ts';
import { hullColumns } from '#model/geometry/shadows/hull-columns.ts';
import {
  addShadow,
  createOutline,
  createShadows,
  EVERYTHING,
  NOTHING,
  type Outline,
} from '#model/geometry/shadows/shadows.ts';
import { uncoveredShare } from '#model/geometry/shadows/uncovered.ts';

type Point = readonly [u: number, v: number];

function outlineOf(points: readonly Point[]): Outline {
  const outline = createOutline();
  points.forEach(([u, v], i) => {
    outline.u[i] = u;
    outline.lo[i] = outline.hi[i] = v;
  });
  outline.size = points.length;
  hullColumns(outline);
  return outline;
}

function openShare(...hulls: (readonly Point[])[]): number {
  const shadows = createShadows();
  for (const points of hulls) if (addShadow(shadows, outlineOf(points)) === EVERYTHING) return 0;
  return uncoveredShare(shadows);
}

const rectangle = (u0: number, u1: number, v0: number, v1: number): Point[] => [
  [u0, v0],
  [u1, v0],
  [u1, v1],
  [u0, v1],
];

describe('rectangles', () => {
  test.each([
    ['none', [], 1],
    ['one inside', [rectangle(0.2, 0.7, 0.1, 0.3)], 0.9],
    ['one that sticks out on all sides', [rectangle(-1, 2, -1, 2)], 0],
    ['one above, one below', [rectangle(-1, 2, 1, 2), rectangle(-1, 2, -2, 0)], 1],
    ['two that touch', [rectangle(0, 0.5, 0, 1), rectangle(0.5, 1, 0, 1)], 0],
    ['two stacked that touch', [rectangle(0, 1, 0, 0.5), rectangle(0, 1, 0.5, 1)], 0],
    [
      'a stack of three with gaps',
      [rectangle(0, 1, 0.1, 0.2), rectangle(0, 1, 0.4, 0.6), rectangle(0, 1, 0.8, 0.9)],
      0.6,
    ],
    ['one inside another', [rectangle(0.1, 0.9, 0.1, 0.9), rectangle(0.2, 0.3, 0.2, 0.3)], 1 - 0.64],
    ['the same twice', [rectangle(0.25, 0.75, 0, 0.5), rectangle(0.25, 0.75, 0, 0.5)], 0.75],
    ['half over, half under the window', [rectangle(0, 1, 0.5, 3), rectangle(0, 0.5, -3, 0.25)], 0.5 - 0.125],
  ])('%s', (_, hulls, open) => {
    expect(openShare(...hulls)).toBeCloseTo(open, 12);
  });
});

describe('edges that meet', () => {
  test('triangles that share an edge make a square', () => {
    const lower: Point[] = [
      [0, 0],
      [1, 0],
      [1, 1],
    ];
    const upper: Point[] = [
      [0, 0],
      [1, 1],
      [0, 1],
    ];
    expect(openShare(lower, upper)).toBeCloseTo(0, 12);
  });

  test('a cross of diagonals: crossings inside one stretch', () => {
    const rising: Point[] = [
      [0, 0],
      [0, 0.1],
      [1, 0.9],
      [1, 1],
    ];
    const falling: Point[] = [
      [0, 0.9],
      [0, 1],
      [1, 0],
      [1, 0.1],
    ];
    // Each covers 0.1; they share a parallelogram 0.1 high and 0.1 / 0.9 wide at its diagonals: area 0.1^2 / 1.8.
    expect(openShare(rising, falling)).toBeCloseTo(1 - (0.2 - 0.01 / 1.8), 12);
  });

  test('a fan of triangles with one common tip', () => {
    const fan = Array.from({ length: 8 }, (_, k): Point[] => [
      [0.5, 0.5],
      [1, k / 8],
      [1, (k + 1) / 8],
    ]);
    expect(openShare(...fan)).toBeCloseTo(0.75, 12);
  });

  test('many copies shifted by less than rounding', () => {
    const copies = Array.from({ length: 20 }, (_, k) =>
      rectangle(0.2, 0.8, 0.3 + k * 1e-16, 0.7 - k * 1e-16),
    );
    expect(openShare(...copies)).toBeCloseTo(1 - 0.24, 12);
  });
});

describe('outlines', () => {
  test('less than two columns, or beside the window: nothing', () => {
    const shadows = createShadows();
    expect(addShadow(shadows, outlineOf([]))).toBe(NOTHING);
    expect(
      addShadow(
        shadows,
        outlineOf([
          [0.5, 0],
          [0.5, 1],
        ]),
      ),
    ).toBe(NOTHING);
    expect(addShadow(shadows, outlineOf(rectangle(1, 2, 0, 1)))).toBe(NOTHING);
    expect(addShadow(shadows, outlineOf(rectangle(-2, 0, 0, 1)))).toBe(NOTHING);
    expect(shadows.count).toBe(0);
  });

  test('more shadows than there was room for at first', () => {
    const strips = Array.from({ length: 500 }, (_, k) => rectangle(k / 1000, (k + 0.5) / 1000, 0, 1));
    expect(openShare(...strips)).toBeCloseTo(0.75, 12);
    const piled = Array.from({ length: 500 }, (_, k) => rectangle(0, 1, k / 1000, (k + 0.5) / 1000));
    expect(openShare(...piled)).toBeCloseTo(0.75, 12);
  });
});

describe('a crowd', () => {
  const hulls = fc.array(
    fc.tuple(
      fc.double({ min: -0.2, max: 1.1, noNaN: true }),
      fc.double({ min: -0.2, max: 1.1, noNaN: true }),
      fc.double({ min: 0.01, max: 0.3, noNaN: true }),
    ),
    { minLength: 60, maxLength: 250 },
  );

  test('cut into quarters has the same open share as swept in one go', () => {
    fc.assert(
      fc.property(hulls, (triangles) => {
        const shadows = createShadows();
        for (const [u, v, size] of triangles) {
          addShadow(
            shadows,
            outlineOf([
              [u, v],
              [u + size, v + size / 3],
              [u + size / 2, v + size],
            ]),
          );
        }
        expect(uncoveredInCrowd(shadows)).toBeCloseTo(uncoveredShare(shadows), 10);
      }),
    );
  });

  test('a thousand shadows in one place', () => {
    const piled = Array.from({ length: 1000 }, (_, k) => rectangle(0.25, 0.75, k / 1e6, 0.5 + k / 1e6));
    const shadows = createShadows();
    for (const points of piled) addShadow(shadows, outlineOf(points));
    expect(uncoveredInCrowd(shadows)).toBeCloseTo(1 - 0.5 * (0.5 + 999 / 1e6), 12);
  });
});

describe('against counting points', () => {
  const points = fc.array(
    fc.tuple(
      fc.double({ min: -0.3, max: 1.3, noNaN: true }),
      fc.double({ min: -0.3, max: 1.3, noNaN: true }),
    ),
    { minLength: 3, maxLength: 6 },
  );
  // Half of the corners on a coarse grid, so that edges and corners coincide.
  const gridded = fc
    .array(fc.tuple(fc.integer({ min: -1, max: 5 }), fc.integer({ min: -1, max: 5 })), {
      minLength: 3,
      maxLength: 5,
    })
    .map((corners): Point[] => corners.map(([u, v]) => [u / 4, v / 4]));

  test('the open share is that of the points of a fine grid outside all hulls', () => {
    fc.assert(
      fc.property(fc.array(fc.oneof(points, gridded), { maxLength: 7 }), (hulls) => {
        const open = openShare(...hulls);
        expect(Math.abs(open - countedShare(hulls, 100))).toBeLessThan(0.02);
      }),
      { numRuns: 300 },
    );
  });
});

/** By whether a point lies in a triangle of any three corners: no hull, no order, no sweep. */
function countedShare(hulls: readonly (readonly Point[])[], side: number): number {
  const triangles = hulls.flatMap(trianglesOf);
  let open = 0;
  for (let i = 0; i < side; i++) {
    for (let k = 0; k < side; k++) {
      const point: Point = [(i + 0.5) / side, (k + 0.5) / side];
      if (!triangles.some((triangle) => holds(triangle, point))) open++;
    }
  }
  return open / side ** 2;
}

type Triangle = readonly [Point, Point, Point];

function trianglesOf(corners: readonly Point[]): Triangle[] {
  return corners.flatMap((a, i) =>
    corners.slice(i + 1).flatMap((b, k) => corners.slice(i + k + 2).map((c): Triangle => [a, b, c])),
  );
}

function holds([a, b, c]: Triangle, p: Point): boolean {
  const side = (from: Point, to: Point): number =>
    (to[0] - from[0]) * (p[1] - from[1]) - (to[1] - from[1]) * (p[0] - from[0]);
  const [ab, bc, ca] = [side(a, b), side(b, c), side(c, a)];
  return (ab > 0 && bc > 0 && ca > 0) || (ab < 0 && bc < 0 && ca < 0);
}
