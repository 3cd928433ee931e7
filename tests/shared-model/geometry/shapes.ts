/** Outlines for geometry tests. */

import fc from 'fast-check';
import type { Vec2 } from '#model/geometry/frame.ts';

export const SQUARE: readonly Vec2[] = rectangle(0, 0, 1000, 1000);

/** A U that is open at the top: arms 200 wide, floor 200 high, 1000 overall. */
export const U_SHAPE: readonly Vec2[] = ring(
  [0, 0],
  [1000, 0],
  [1000, 1000],
  [800, 1000],
  [800, 200],
  [200, 200],
  [200, 1000],
  [0, 1000],
);

export function ring(...corners: [number, number][]): Vec2[] {
  return corners.map(([x, y]) => ({ x, y }));
}

export function rectangle(x: number, y: number, width: number, height: number): Vec2[] {
  return ring([x, y], [x + width, y], [x + width, y + height], [x, y + height]);
}

export function moved(polygon: readonly Vec2[], dx: number, dy: number): Vec2[] {
  return polygon.map(({ x, y }) => ({ x: x + dx, y: y + dy }));
}

export function turned(polygon: readonly Vec2[], angle: number): Vec2[] {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return polygon.map(({ x, y }) => ({ x: c * x - s * y, y: s * x + c * y }));
}

/** Star-shaped about a random centre, hence simple and usually concave. */
export const simplePolygons: fc.Arbitrary<Vec2[]> = fc
  .record({
    x: fc.integer({ min: -1500, max: 1500 }),
    y: fc.integer({ min: -1500, max: 1500 }),
    radii: fc.array(fc.integer({ min: 50, max: 1500 }), { minLength: 3, maxLength: 9 }),
    turn: fc.double({ min: 0, max: 1, noNaN: true }),
  })
  .map(({ x, y, radii, turn }) =>
    radii.map((radius, index) => {
      const angle = ((index + turn) / radii.length) * 2 * Math.PI;
      return { x: x + radius * Math.cos(angle), y: y + radius * Math.sin(angle) };
    }),
  );
