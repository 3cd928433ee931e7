/**
 * Where a shortest way for a disc can bend: the corners of everything in its way, moved off by its radius. (T. Lozano-Pérez
 * and M. A. Wesley, "An algorithm for planning collision-free paths among polyhedral obstacles", CACM 22 (1979) 560-570.)
 */

import { convexHull } from '../../geometry/convex-hull.ts';
import type { Vec2 } from '../../geometry/frame.ts';
import type { Polygon } from '../../geometry/polygon.ts';

/** A round corner is cut into bends of at most this: a way along it is at most 1/cos(30°) = 1.15 times as far off. */
const SHARPEST_BEND = Math.PI / 3;

/**
 * Points `radius` off the corners of an outline's hull, such that the straight lines between neighbours keep just that
 * distance. Of a wall (two points) they lie round its ends.
 */
export function cornersRound(outline: Polygon, radius: number): Vec2[] {
  const hull = convexHull(outline);
  return hull.flatMap((corner, index) => {
    const before = hull.at(index - 1) ?? corner;
    const after = hull[(index + 1) % hull.length] ?? corner;
    return bendsAt(corner, { before, after, radius });
  });
}

interface Corner {
  readonly before: Vec2;
  readonly after: Vec2;
  readonly radius: number;
}

/** The hull runs anticlockwise, so its outside lies on the right of every edge. */
function bendsAt(corner: Vec2, { before, after, radius }: Corner): Vec2[] {
  const start = outwards(before, corner);
  const whole = (outwards(corner, after) - start + 4 * Math.PI) % (2 * Math.PI);
  const parts = Math.max(1, Math.ceil(whole / SHARPEST_BEND - 1e-9));
  const off = radius / Math.cos(whole / parts / 2);
  return Array.from({ length: parts }, (_, part) => {
    const angle = start + ((part + 0.5) * whole) / parts;
    return { x: corner.x + off * Math.cos(angle), y: corner.y + off * Math.sin(angle) };
  });
}

function outwards(from: Vec2, to: Vec2): number {
  return Math.atan2(from.x - to.x, to.y - from.y);
}
