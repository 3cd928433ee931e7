/** Whether a ring of corners is a proper outline: has an area and neither crosses nor touches itself. */

import type { Vec2 } from './frame.ts';
import { polygonArea, type Polygon } from './polygon.ts';
import { segmentsMeet, turn } from './segments.ts';
import { NO_AREA, SAME_POINT } from './tolerances.ts';

interface Edge {
  readonly index: number;
  readonly a: Vec2;
  readonly b: Vec2;
  readonly minX: number;
  readonly maxX: number;
}

/**
 * At least three corners, finite, no two neighbours the same, an area, and no two edges with a point in common
 * but the corner that joins neighbours. Sorted by x, so that ten thousand corners take milliseconds.
 */
export function isSimplePolygon(polygon: Polygon): boolean {
  if (polygon.length < 3 || !polygon.every(isFinitePoint)) return false;
  const edges = edgesByX(polygon);
  if (edges.some(({ a, b }) => Math.hypot(b.x - a.x, b.y - a.y) < SAME_POINT)) return false;
  for (const [position, edge] of edges.entries()) {
    for (let next = position + 1; next < edges.length; next++) {
      const other = edges[next];
      if (!other || other.minX > edge.maxX) break;
      if (clash(edge, other, polygon.length)) return false;
    }
  }
  return polygonArea(polygon) > NO_AREA;
}

function isFinitePoint({ x, y }: Vec2): boolean {
  return Number.isFinite(x) && Number.isFinite(y);
}

function edgesByX(polygon: Polygon): Edge[] {
  const edges = polygon.map((a, index) => {
    const b = polygon[(index + 1) % polygon.length] ?? a;
    return { index, a, b, minX: Math.min(a.x, b.x), maxX: Math.max(a.x, b.x) };
  });
  return edges.sort((p, q) => p.minX - q.minX);
}

function clash(p: Edge, q: Edge, count: number): boolean {
  if ((p.index + 1) % count === q.index) return foldsBack(p.a, p.b, q.b);
  if ((q.index + 1) % count === p.index) return foldsBack(q.a, q.b, p.b);
  return segmentsMeet(p.a, p.b, q.a, q.b);
}

/** Whether the path a, b, c runs back over itself at b. */
function foldsBack(a: Vec2, b: Vec2, c: Vec2): boolean {
  return turn(a, b, c) === 0 && (a.x - b.x) * (c.x - b.x) + (a.y - b.y) * (c.y - b.y) > 0;
}
