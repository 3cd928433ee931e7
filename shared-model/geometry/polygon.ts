/** One polygon in the plane: a ring of corners, the last joined to the first, in either direction. */

import type { Vec2 } from './frame.ts';
import { distancePointToSegment } from './segments.ts';
import { TOUCHING } from './tolerances.ts';

export type Polygon = readonly Vec2[];

export interface Bounds {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** Positive when the corners run anticlockwise. Zero for fewer than three corners. */
export function signedArea(polygon: Polygon): number {
  const origin = polygon[0];
  if (!origin) return 0;
  let twice = 0;
  // Measured from the first corner, so that a polygon far from the origin loses no digits.
  forEachEdge(polygon, (a, b) => {
    twice += (a.x - origin.x) * (b.y - origin.y) - (b.x - origin.x) * (a.y - origin.y);
  });
  return twice / 2;
}

/** Area in the square of the corners' unit, whichever way the corners run. */
export function polygonArea(polygon: Polygon): number {
  return Math.abs(signedArea(polygon));
}

/** Inside, or within TOUCHING of the boundary. */
export function pointInPolygon(point: Vec2, polygon: Polygon): boolean {
  return depthInPolygon(point, polygon) >= -TOUCHING;
}

/** Distance to the boundary: positive inside, negative outside. -Infinity when there are no corners. */
export function depthInPolygon(point: Vec2, polygon: Polygon): number {
  let distance = Infinity;
  let inside = false;
  forEachEdge(polygon, (a, b) => {
    distance = Math.min(distance, distancePointToSegment(point, a, b));
    if (crossesRay(point, a, b)) inside = !inside;
  });
  return inside ? distance : -distance;
}

/** Stretched away from the origin along one axis, until it is so long along it. One without any length stays as it is. */
export function stretched(polygon: Polygon, axis: 'x' | 'y', length: number): Vec2[] {
  const { minX, maxX, minY, maxY } = boundsOf(polygon);
  const now = axis === 'x' ? maxX - minX : maxY - minY;
  const factor = now > 0 ? length / now : 1;
  return polygon.map(({ x, y }) => (axis === 'x' ? { x: x * factor, y } : { x, y: y * factor }));
}

export function boundsOf(points: readonly Vec2[]): Bounds {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points) {
    if (x < minX) minX = x;
    if (x > maxX) maxX = x;
    if (y < minY) minY = y;
    if (y > maxY) maxY = y;
  }
  return { minX, minY, maxX, maxY };
}

/** Some point well inside a simple polygon; null when the polygon has no inside. */
export function interiorPoint(polygon: Polygon): Vec2 | null {
  const y = middleOfWidestGap(polygon.map((corner) => corner.y));
  if (y === null) return null;
  const crossings: number[] = [];
  forEachEdge(polygon, (a, b) => {
    if (a.y > y !== b.y > y) crossings.push(a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x));
  });
  crossings.sort((a, b) => a - b);
  return widestChord(crossings, y);
}

/** Calls `visit` with the ends of every edge in turn. */
export function forEachEdge(polygon: Polygon, visit: (a: Vec2, b: Vec2, index: number) => void): void {
  let a = polygon.at(-1);
  // The closing edge comes first, under its own index.
  for (let index = 0; index < polygon.length; index++) {
    const b = polygon[index];
    if (a && b) visit(a, b, index === 0 ? polygon.length - 1 : index - 1);
    a = b;
  }
}

/** Whether the edge a-b crosses the ray from the point towards +x; an end on the ray counts once. */
function crossesRay(point: Vec2, a: Vec2, b: Vec2): boolean {
  if (a.y > point.y === b.y > point.y) return false;
  return point.x < a.x + ((point.y - a.y) / (b.y - a.y)) * (b.x - a.x);
}

function middleOfWidestGap(values: readonly number[]): number | null {
  const sorted = [...values].sort((a, b) => a - b);
  let widest = 0;
  let middle: number | null = null;
  for (let i = 1; i < sorted.length; i++) {
    const [low, high] = [sorted[i - 1] ?? 0, sorted[i] ?? 0];
    if (high - low > widest) [widest, middle] = [high - low, (low + high) / 2];
  }
  return middle;
}

/** The middle of the widest of the stretches 0-1, 2-3, ... of a horizontal line that lie inside. */
function widestChord(crossings: readonly number[], y: number): Vec2 | null {
  let widest = 0;
  let point: Vec2 | null = null;
  for (let i = 1; i < crossings.length; i += 2) {
    const [left, right] = [crossings[i - 1] ?? 0, crossings[i] ?? 0];
    if (right - left > widest) [widest, point] = [right - left, { x: (left + right) / 2, y }];
  }
  return point;
}
