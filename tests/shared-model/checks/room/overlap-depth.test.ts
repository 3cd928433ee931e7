import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lengthToClear, shortestWayClear } from '#model/checks/room/overlap-depth.ts';
import { polygonsOverlap } from '#model/geometry/polygon-pairs.ts';
import { convexHull } from '#model/geometry/convex-hull.ts';
import type { Polygon } from '#model/geometry/polygon.ts';

const square = (x: number, y: number, half: number): Polygon => [
  { x: x - half, y: y - half },
  { x: x + half, y: y - half },
  { x: x + half, y: y + half },
  { x: x - half, y: y + half },
];

const shifted = (polygon: Polygon, { x, y }: { x: number; y: number }, by = 1): Polygon =>
  polygon.map((corner) => ({ x: corner.x + by * x, y: corner.y + by * y }));

const coordinate = fc.integer({ min: -500, max: 500 });
const convex = fc
  .array(fc.record({ x: coordinate, y: coordinate }), { minLength: 3, maxLength: 12 })
  .map(convexHull)
  .filter((hull) => hull.length >= 3);

describe('the shortest way clear', () => {
  test('of two squares is the lesser of what they share in x and in y', () => {
    expect(shortestWayClear(square(0, 0, 100), square(150, 20, 100))).toMatchObject({ x: -50, length: 50 });
    expect(shortestWayClear(square(0, 0, 100), square(30, -130, 100))).toMatchObject({ y: 70, length: 70 });
  });

  test('of one square inside another leads out by the nearest side', () => {
    expect(shortestWayClear(square(60, 0, 10), square(0, 0, 100)).length).toBeCloseTo(50);
  });

  test('out of a notch goes on until the last contact', () => {
    const notched: Polygon = [
      { x: 0, y: 0 },
      { x: 300, y: 0 },
      { x: 300, y: 300 },
      { x: 200, y: 300 },
      { x: 200, y: 100 },
      { x: 100, y: 100 },
      { x: 100, y: 300 },
      { x: 0, y: 300 },
    ];
    // The little square stands half in the bottom of the notch: up by 20 clears it.
    expect(shortestWayClear(square(150, 100, 20), notched)).toMatchObject({ length: 20 });
    expect(lengthToClear(square(150, 100, 20), notched, { x: 1, y: 0 })).toBeCloseTo(170);
  });

  test('parts convex outlines, and a hair less does not', () => {
    fc.assert(
      fc.property(convex, convex, (a, b) => {
        fc.pre(polygonsOverlap(a, b));
        const shift = shortestWayClear(a, b);
        fc.pre(shift.length > 1);
        expect(polygonsOverlap(shifted(a, shift), b)).toBe(false);
        expect(polygonsOverlap(shifted(a, shift, 1 - 0.1 / shift.length), b)).toBe(true);
      }),
    );
  });

  test('is as long for a from b as for b from a', () => {
    fc.assert(
      fc.property(convex, convex, (a, b) => {
        expect(shortestWayClear(a, b).length).toBeCloseTo(shortestWayClear(b, a).length, 6);
      }),
    );
  });
});
