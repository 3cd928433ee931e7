import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  depthInPolygon,
  interiorPoint,
  pointInPolygon,
  polygonArea,
  signedArea,
  stretched,
} from '#model/geometry/polygon.ts';
import { distancePointToSegment, gapBetweenSegments } from '#model/geometry/segments.ts';
import { SQUARE, U_SHAPE, moved, rectangle, ring, simplePolygons, turned } from './shapes.ts';

describe('area', () => {
  test('of a rectangle, a triangle and a U, whichever way the corners run', () => {
    expect(polygonArea(rectangle(7, 9, 1200, 800))).toBe(960_000);
    expect(polygonArea(ring([0, 0], [300, 0], [0, 400]))).toBe(60_000);
    expect(polygonArea(U_SHAPE)).toBe(1_000_000 - 600 * 800);
    expect(polygonArea([...U_SHAPE].reverse())).toBe(polygonArea(U_SHAPE));
    expect(signedArea(SQUARE)).toBe(1_000_000);
    expect(signedArea([...SQUARE].reverse())).toBe(-1_000_000);
  });

  test('of a regular polygon is n/2 r2 sin(2 pi / n)', () => {
    const corners = Array.from({ length: 24 }, (_, k) => ({
      x: 500 * Math.cos((k * Math.PI) / 12),
      y: 500 * Math.sin((k * Math.PI) / 12),
    }));
    expect(polygonArea(corners)).toBeCloseTo(12 * 500 * 500 * Math.sin(Math.PI / 12), 6);
  });

  test('of less than three corners is nothing', () => {
    expect(polygonArea([])).toBe(0);
    expect(polygonArea(ring([3, 4], [5, 6]))).toBe(0);
  });

  test('does not depend on where the polygon is, nor on its first corner', () => {
    fc.assert(
      fc.property(simplePolygons, (polygon) => {
        const area = polygonArea(polygon);
        expect(polygonArea(moved(polygon, 1e6, -1e6)) / area).toBeCloseTo(1, 6);
        expect(polygonArea([...polygon.slice(1), ...polygon.slice(0, 1)]) / area).toBeCloseTo(1, 9);
      }),
    );
  });
});

test('stretched along one axis it has that length there, and as much more area', () => {
  // An L of 800 by 800, about a spot that is not its middle.
  const shape = ring([-300, -300], [500, -300], [500, 0], [0, 0], [0, 500], [-300, 500]);
  const wide = stretched(shape, 'x', 1600);
  expect(wide.map(({ x }) => x)).toEqual([-600, 1000, 1000, 0, 0, -600]);
  expect(wide.map(({ y }) => y)).toEqual(shape.map(({ y }) => y));
  expect(polygonArea(wide)).toBe(2 * polygonArea(shape));
  expect(stretched(shape, 'y', 400).map(({ y }) => y)).toEqual([-150, -150, 0, 0, 250, 250]);
});

describe('point in polygon', () => {
  test('inside, in the notch, outside, on an edge, at a corner', () => {
    expect(pointInPolygon({ x: 100, y: 900 }, U_SHAPE)).toBe(true);
    expect(pointInPolygon({ x: 500, y: 900 }, U_SHAPE)).toBe(false);
    expect(pointInPolygon({ x: -1, y: 500 }, U_SHAPE)).toBe(false);
    expect(pointInPolygon({ x: 200, y: 600 }, U_SHAPE)).toBe(true);
    expect(pointInPolygon({ x: 1000, y: 1000 }, U_SHAPE)).toBe(true);
  });

  test('a ray through a corner counts it once', () => {
    const diamond = ring([0, -100], [100, 0], [0, 100], [-100, 0]);
    expect(pointInPolygon({ x: -50, y: 0 }, diamond)).toBe(true);
    expect(pointInPolygon({ x: -150, y: 0 }, diamond)).toBe(false);
    expect(pointInPolygon({ x: 0, y: 0 }, diamond)).toBe(true);
  });

  test('depth is the distance to the boundary, negative outside', () => {
    expect(depthInPolygon({ x: 500, y: 60 }, SQUARE)).toBe(60);
    expect(depthInPolygon({ x: 1030, y: 1040 }, SQUARE)).toBe(-50);
    expect(depthInPolygon({ x: 0, y: 0 }, [])).toBe(-Infinity);
  });

  test('an interior point is inside', () => {
    fc.assert(
      fc.property(simplePolygons, (polygon) => {
        const point = interiorPoint(polygon);
        expect(point && depthInPolygon(point, polygon)).toBeGreaterThan(0);
      }),
    );
    expect(interiorPoint(ring([0, 0], [10, 0]))).toBeNull();
  });

  test('turning polygon and point together changes nothing', () => {
    fc.assert(
      fc.property(simplePolygons, fc.double({ min: -7, max: 7, noNaN: true }), (polygon, angle) => {
        const depth = depthInPolygon({ x: 0, y: 0 }, polygon);
        expect(depthInPolygon({ x: 0, y: 0 }, turned(polygon, angle))).toBeCloseTo(depth, 6);
      }),
    );
  });
});

describe('segments', () => {
  test('distance from a point: beside, beyond an end, to a segment without length', () => {
    const [a, b] = [
      { x: 0, y: 0 },
      { x: 100, y: 0 },
    ];
    expect(distancePointToSegment({ x: 30, y: 40 }, a, b)).toBe(40);
    expect(distancePointToSegment({ x: 103, y: 4 }, a, b)).toBe(5);
    expect(distancePointToSegment({ x: -3, y: -4 }, a, b)).toBe(5);
    expect(distancePointToSegment({ x: 3, y: 4 }, a, a)).toBe(5);
  });

  test('gap of crossing, collinear and parallel segments', () => {
    const at = (x: number, y: number) => ({ x, y });
    expect(gapBetweenSegments(at(0, 0), at(10, 10), at(0, 10), at(10, 0))).toEqual({
      distance: 0,
      a: at(5, 5),
      b: at(5, 5),
    });
    expect(gapBetweenSegments(at(0, 0), at(10, 0), at(5, 0), at(20, 0)).distance).toBe(0);
    expect(gapBetweenSegments(at(0, 0), at(10, 0), at(14, 3), at(20, 3)).distance).toBe(5);
    expect(gapBetweenSegments(at(0, 0), at(10, 0), at(0, 7), at(10, 7)).distance).toBe(7);
  });

  test('swapping ends or segments changes no gap', () => {
    const point = fc.record({ x: fc.integer({ min: -9, max: 9 }), y: fc.integer({ min: -9, max: 9 }) });
    fc.assert(
      fc.property(point, point, point, point, (a, b, c, d) => {
        const { distance } = gapBetweenSegments(a, b, c, d);
        expect(gapBetweenSegments(b, a, c, d).distance).toBeCloseTo(distance, 12);
        expect(gapBetweenSegments(c, d, a, b).distance).toBeCloseTo(distance, 12);
      }),
      { numRuns: 1000 },
    );
  });
});
