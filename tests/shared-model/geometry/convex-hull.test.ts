import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { convexHull } from '#model/geometry/convex-hull.ts';
import { pointInPolygon, signedArea } from '#model/geometry/polygon.ts';
import { turn } from '#model/geometry/segments.ts';
import { U_SHAPE, rectangle, ring } from './shapes.ts';

const points = fc.array(
  fc.record({ x: fc.integer({ min: -20, max: 20 }), y: fc.integer({ min: -20, max: 20 }) }),
  { maxLength: 30 },
);

describe('convex hull', () => {
  test('of a U is its square', () => {
    expect(convexHull(U_SHAPE)).toEqual(rectangle(0, 0, 1000, 1000));
  });

  test('of nothing, a point, a line', () => {
    expect(convexHull([])).toEqual([]);
    expect(convexHull(ring([3, 4], [3, 4]))).toEqual(ring([3, 4]));
    expect(convexHull(ring([2, 2], [0, 0], [1, 1]))).toEqual(ring([0, 0], [2, 2]));
  });

  test('is strictly convex, anticlockwise, made of the points, and holds them all', () => {
    fc.assert(
      fc.property(points, (given) => {
        const hull = convexHull(given);
        expect(hull.every((corner) => given.includes(corner))).toBe(true);
        if (hull.length < 3) return;
        expect(signedArea(hull)).toBeGreaterThan(0);
        hull.forEach((corner, k) => {
          const [next, after] = [hull[(k + 1) % hull.length], hull[(k + 2) % hull.length]];
          expect(next && after && turn(corner, next, after)).toBeGreaterThan(0);
        });
        expect(given.every((point) => pointInPolygon(point, hull))).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });
});
