import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isSimplePolygon } from '#model/geometry/simple-polygon.ts';
import { SQUARE, U_SHAPE, ring, simplePolygons } from './shapes.ts';

describe('a simple polygon', () => {
  test('convex, concave, either way round', () => {
    expect(isSimplePolygon(SQUARE)).toBe(true);
    expect(isSimplePolygon(U_SHAPE)).toBe(true);
    expect(isSimplePolygon([...U_SHAPE].reverse())).toBe(true);
  });

  test('may have corners in the middle of a straight edge', () => {
    expect(isSimplePolygon(ring([0, 0], [5, 0], [10, 0], [10, 10], [0, 10]))).toBe(true);
  });

  test('any star-shaped one', () => {
    fc.assert(fc.property(simplePolygons, (polygon) => isSimplePolygon(polygon)));
  });
});

describe('not a simple polygon', () => {
  test.each([
    ['no corners', ring()],
    ['two corners', ring([0, 0], [10, 0])],
    ['a bow tie', ring([0, 0], [10, 10], [10, 0], [0, 10])],
    ['all on a line', ring([0, 0], [10, 0], [20, 0])],
    ['a spike', ring([0, 0], [10, 0], [10, 10], [10, 20], [10, 10], [0, 10])],
    ['a corner twice in a row', ring([0, 0], [10, 0], [10, 0], [0, 10])],
    ['a corner that touches an edge', ring([0, 0], [10, 0], [10, 10], [5, 0], [0, 10])],
    ['two squares that share a corner', ring([0, 0], [5, 0], [5, 5], [9, 5], [9, 9], [5, 9], [5, 5], [0, 5])],
    ['a NaN', ring([0, 0], [NaN, 0], [10, 10])],
    ['an infinite corner', ring([0, 0], [Infinity, 0], [10, 10])],
  ])('%s', (_, polygon) => {
    expect(isSimplePolygon(polygon)).toBe(false);
  });

  test('ten thousand corners are judged quickly', () => {
    const round = Array.from({ length: 10_000 }, (_, k) => ({
      x: 5000 * Math.cos((k * 2 * Math.PI) / 10_000),
      y: 5000 * Math.sin((k * 2 * Math.PI) / 10_000),
    }));
    const before = performance.now();
    expect(isSimplePolygon(round)).toBe(true);
    expect(performance.now() - before).toBeLessThan(2000);
  });
});
