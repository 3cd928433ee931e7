/** The part of an outline within an upright rectangle (Sutherland and Hodgman, Communications of the ACM 17 (1974) 32). */

import type { Vec2 } from '../../geometry/frame.ts';
import type { Bounds, Polygon } from '../../geometry/polygon.ts';

/**
 * Empty when nothing of it lies within. The pieces of a concave outline stay joined along the cut, which changes
 * none of its extreme coordinates.
 */
export function polygonBetween(polygon: Polygon, { minX, maxX, minY, maxY }: Bounds): Polygon {
  const sides: ((corner: Vec2) => number)[] = [];
  if (Number.isFinite(minX)) sides.push(({ x }) => x - minX);
  if (Number.isFinite(maxX)) sides.push(({ x }) => maxX - x);
  if (Number.isFinite(minY)) sides.push(({ y }) => y - minY);
  if (Number.isFinite(maxY)) sides.push(({ y }) => maxY - y);
  return sides.reduce<Polygon>(cutAt, polygon);
}

/** Keeps the side where `depth` is positive; what only touches it is left out. */
function cutAt(polygon: Polygon, depth: (corner: Vec2) => number): Polygon {
  return polygon.flatMap((corner, index) => {
    const next = polygon[(index + 1) % polygon.length] ?? corner;
    const [here, there] = [depth(corner), depth(next)];
    const kept = here > 0 ? [corner] : [];
    if (here > 0 === there > 0) return kept;
    const share = here / (here - there);
    return [
      ...kept,
      { x: corner.x + share * (next.x - corner.x), y: corner.y + share * (next.y - corner.y) },
    ];
  });
}
