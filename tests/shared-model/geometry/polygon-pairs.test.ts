/** Overlap and distance of two outlines; checked against the general polygon library `polygon-clipping`. */

import fc from 'fast-check';
import polygonClipping, { type Polygon as Rings } from 'polygon-clipping';
import { describe, expect, test } from 'vitest';
import type { Vec2 } from '#model/geometry/frame.ts';
import { polygonArea } from '#model/geometry/polygon.ts';
import {
  distanceBetweenPolygons,
  gapBetweenPolygons,
  polygonsOverlap,
} from '#model/geometry/polygon-pairs.ts';
import { SQUARE, U_SHAPE, moved, rectangle, ring, simplePolygons } from './shapes.ts';

const ringsOf = (polygon: readonly Vec2[]): Rings => [polygon.map(({ x, y }) => [x, y])];

function sharedArea(a: readonly Vec2[], b: readonly Vec2[]): number {
  let area = 0;
  for (const rings of polygonClipping.intersection(ringsOf(a), ringsOf(b))) {
    rings.forEach((corners, index) => {
      const part = polygonArea(corners.map(([x, y]) => ({ x, y })));
      area += index === 0 ? part : -part;
    });
  }
  return area;
}

describe('overlap', () => {
  test.each([
    ['corner in the other', rectangle(900, 900, 500, 500), true],
    ['a cross: no corner in the other', rectangle(-100, 400, 1200, 200), true],
    ['the same outline', SQUARE, true],
    ['inside', rectangle(400, 400, 100, 100), true],
    ['inside, sharing an edge', rectangle(0, 400, 100, 100), true],
    ['a shifted copy along a shared edge line', rectangle(300, 0, 1000, 1000), true],
    ['sharing an edge from outside', rectangle(1000, 0, 500, 1000), false],
    ['sharing a corner', rectangle(1000, 1000, 500, 500), false],
    ['a millimetre apart', rectangle(1001, 0, 500, 1000), false],
    ['a millimetre into it', rectangle(999, 0, 500, 1000), true],
    ['a thousandth of a millimetre into it: touching', rectangle(999.999, 0, 500, 1000), false],
  ])('%s', (_, other, expected) => {
    expect(polygonsOverlap(SQUARE, other)).toBe(expected);
    expect(polygonsOverlap(other, SQUARE)).toBe(expected);
  });

  test('something in the notch of a U does not overlap it', () => {
    expect(polygonsOverlap(U_SHAPE, rectangle(200, 200, 600, 800))).toBe(false);
    expect(polygonsOverlap(U_SHAPE, rectangle(190, 210, 600, 800))).toBe(true);
  });

  test('pluses tile the plane: neighbours touch all along their steps', () => {
    const plus = ring(
      [-100, -300],
      [100, -300],
      [100, -100],
      [300, -100],
      [300, 100],
      [100, 100],
      [100, 300],
      [-100, 300],
      [-100, 100],
      [-300, 100],
      [-300, -100],
      [-100, -100],
    );
    expect(polygonsOverlap(plus, moved(plus, 400, 200))).toBe(false);
    expect(polygonsOverlap(plus, moved(plus, 390, 200))).toBe(true);
  });

  test('agrees with polygon-clipping on random outlines, in either order', () => {
    fc.assert(
      fc.property(simplePolygons, simplePolygons, (a, b) => {
        const shared = sharedArea(a, b);
        fc.pre(shared === 0 || shared > 100);
        expect(polygonsOverlap(a, b)).toBe(shared > 0);
        expect(polygonsOverlap(b, a)).toBe(shared > 0);
      }),
      { numRuns: 2000 },
    );
  });
});

describe('distance', () => {
  test('side by side, cornerwise, nested, in a notch', () => {
    expect(distanceBetweenPolygons(SQUARE, rectangle(1250, 0, 100, 100))).toBe(250);
    expect(distanceBetweenPolygons(SQUARE, rectangle(1300, 1400, 100, 100))).toBe(500);
    expect(distanceBetweenPolygons(SQUARE, rectangle(400, 400, 100, 100))).toBe(0);
    expect(distanceBetweenPolygons(U_SHAPE, rectangle(450, 400, 100, 100))).toBe(200);
    expect(distanceBetweenPolygons(SQUARE, [])).toBe(Infinity);
  });

  test('says where', () => {
    expect(gapBetweenPolygons(SQUARE, rectangle(1300, 1400, 100, 100))).toEqual({
      distance: 500,
      a: { x: 1000, y: 1000 },
      b: { x: 1300, y: 1400 },
    });
  });

  test('is positive exactly when they do not overlap; is symmetric; grows with scale', () => {
    const scaled = (polygon: readonly Vec2[]) => polygon.map(({ x, y }) => ({ x: 3 * x, y: 3 * y }));
    fc.assert(
      fc.property(simplePolygons, simplePolygons, (a, b) => {
        const distance = distanceBetweenPolygons(a, b);
        const shared = sharedArea(a, b);
        fc.pre(shared === 0 || shared > 100);
        expect(distance > 0).toBe(shared === 0);
        expect(distanceBetweenPolygons(b, a)).toBeCloseTo(distance, 9);
        expect(distanceBetweenPolygons(scaled(a), scaled(b))).toBeCloseTo(3 * distance, 6);
      }),
      { numRuns: 500 },
    );
  });
});
