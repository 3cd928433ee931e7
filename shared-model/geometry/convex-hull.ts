/** The convex hull of points in the plane. */

import type { Vec2 } from './frame.ts';
import { turn } from './segments.ts';

/**
 * Corners of the hull, anticlockwise from the lowest-leftmost, without points on its edges (Andrew's monotone
 * chain: A. M. Andrew, Information Processing Letters 9 (1979) 216-219). One or two points when all lie on a line.
 */
export function convexHull(points: readonly Vec2[]): Vec2[] {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y);
  const lower = chain(sorted);
  const upper = chain(sorted.reverse());
  // Each chain ends where the other begins.
  return lower.length + upper.length <= 2 ? lower : [...lower.slice(0, -1), ...upper.slice(0, -1)];
}

function chain(sorted: readonly Vec2[]): Vec2[] {
  const corners: Vec2[] = [];
  for (const point of sorted) {
    while (turnsRight(corners, point)) corners.pop();
    const last = corners.at(-1);
    if (!last || last.x !== point.x || last.y !== point.y) corners.push(point);
  }
  return corners;
}

function turnsRight(corners: readonly Vec2[], next: Vec2): boolean {
  const [a, b] = [corners.at(-2), corners.at(-1)];
  return a !== undefined && b !== undefined && turn(a, b, next) <= 0;
}
