/** How far two outlines run into each other: the shortest shift of one that takes it clear of the other. */

import type { Vec2 } from '../../geometry/frame.ts';
import { forEachEdge, type Polygon } from '../../geometry/polygon.ts';
import { turn } from '../../geometry/segments.ts';

/** A shift of the first outline. */
export interface Shift extends Vec2 {
  readonly length: number;
}

/**
 * Looks along both outlines' edge normals, among which the shortest shift lies when both are convex. For concave
 * outlines the shift found is sufficient, and in rare cases not the shortest.
 */
export function shortestWayClear(a: Polygon, b: Polygon): Shift {
  const lengthAlong = isConvex(a) && isConvex(b) ? lengthToPart : lengthToClear;
  let best: Shift = { x: 0, y: 0, length: Infinity };
  for (const direction of normalsOf(a, b)) {
    const length = Math.max(0, lengthAlong(a, b, direction));
    if (length < best.length) best = { x: direction.x * length, y: direction.y * length, length };
  }
  return best;
}

/** How far `a` has to go along the unit vector `direction` until it has passed the last contact with `b`. */
export function lengthToClear(a: Polygon, b: Polygon, direction: Vec2): number {
  const back = { x: -direction.x, y: -direction.y };
  return Math.max(lastContact(a, b, direction), lastContact(b, a, back), 0);
}

/** How far `a` has to go along `direction` until a line square to it parts the two. */
function lengthToPart(a: Polygon, b: Polygon, direction: Vec2): number {
  let [hindmost, foremost] = [Infinity, -Infinity];
  for (const { x, y } of a) hindmost = Math.min(hindmost, x * direction.x + y * direction.y);
  for (const { x, y } of b) foremost = Math.max(foremost, x * direction.x + y * direction.y);
  return foremost - hindmost;
}

/** The greatest distance at which a corner of `corners`, going along `direction`, meets an edge of `edges`. */
function lastContact(corners: Polygon, edges: Polygon, direction: Vec2): number {
  let last = -Infinity;
  let p = edges.at(-1);
  for (const q of edges) {
    if (p) for (const corner of corners) last = Math.max(last, distanceToEdge(corner, direction, p, q));
    p = q;
  }
  return last;
}

/** Along `direction` from `point` to the edge p-q; -Infinity when the line misses it. */
function distanceToEdge({ x, y }: Vec2, direction: Vec2, p: Vec2, q: Vec2): number {
  const sideP = direction.x * (p.y - y) - direction.y * (p.x - x);
  const sideQ = direction.x * (q.y - y) - direction.y * (q.x - x);
  if ((sideP > 0 && sideQ > 0) || (sideP < 0 && sideQ < 0)) return -Infinity;
  const aheadP = direction.x * (p.x - x) + direction.y * (p.y - y);
  const aheadQ = direction.x * (q.x - x) + direction.y * (q.y - y);
  if (sideP === sideQ) return Math.max(aheadP, aheadQ);
  return aheadP + ((aheadQ - aheadP) * sideP) / (sideP - sideQ);
}

function isConvex(polygon: Polygon): boolean {
  let [left, right] = [false, false];
  polygon.forEach((a, index) => {
    const b = polygon[(index + 1) % polygon.length];
    const c = polygon[(index + 2) % polygon.length];
    const side = b && c ? turn(a, b, c) : 0;
    left ||= side > 0;
    right ||= side < 0;
  });
  return !(left && right);
}

function normalsOf(a: Polygon, b: Polygon): Vec2[] {
  const normals: Vec2[] = [];
  for (const polygon of [a, b]) {
    forEachEdge(polygon, (p, q) => {
      const length = Math.hypot(q.x - p.x, q.y - p.y);
      if (length === 0) return;
      const normal = { x: (q.y - p.y) / length, y: (p.x - q.x) / length };
      normals.push(normal, { x: -normal.x, y: -normal.y });
    });
  }
  return normals;
}
