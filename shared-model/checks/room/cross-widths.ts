/** The clear width across a walk at stations along it, measured square to the walk as with a tape. */

import type { Vec2 } from '../../geometry/frame.ts';
import { boundsOf } from '../../geometry/polygon.ts';
import { grown } from './box-grid.ts';
import { FARTHEST, type Line } from './clearance.ts';
import { FIRST_STEP } from './first-step.ts';
import type { Station } from './pinch-points.ts';
import type { Walker } from './walk.ts';

const EVERY = 5;

export interface CrossStation extends Station {
  readonly point: Vec2;
}

/** Every 5 mm along the walk, from the first step on. */
export function crossWidths(walker: Walker, path: readonly Vec2[]): CrossStation[] {
  const stations: CrossStation[] = [];
  let walked = 0;
  path.forEach((a, index) => {
    const b = path[index + 1];
    const length = b ? Math.hypot(b.x - a.x, b.y - a.y) : 0;
    if (!b || length === 0) return;
    const ahead = { x: (b.x - a.x) / length, y: (b.y - a.y) / length };
    const across = acrossOf(walker, a, b);
    for (let at = 0; at <= length; at += EVERY) {
      const point = { x: a.x + at * ahead.x, y: a.y + at * ahead.y };
      if (Math.hypot(point.x - walker.spot.x, point.y - walker.spot.y) < FIRST_STEP) continue;
      stations.push({ at: walked + at, width: widthAt(point, ahead, across), point });
    }
    walked += length;
  });
  return stations;
}

/** The edges of everything near a leg that is in the walker's way. */
function acrossOf({ clearances, free }: Walker, a: Vec2, b: Vec2): Line[] {
  const edges: Line[] = [];
  for (const index of clearances.grid.touching(grown(boundsOf([a, b]), FARTHEST))) {
    const thing = clearances.outlines[index];
    if (!thing || free.has(thing.owner)) continue;
    for (const edge of thing.edges) edges.push(edge);
  }
  return edges;
}

function widthAt(point: Vec2, ahead: Vec2, edges: readonly Line[]): number {
  let [left, right] = [FARTHEST, FARTHEST];
  for (const { ax, ay, bx, by } of edges) {
    const [px, py, qx, qy] = [ax - point.x, ay - point.y, bx - point.x, by - point.y];
    const [aheadP, aheadQ] = [px * ahead.x + py * ahead.y, qx * ahead.x + qy * ahead.y];
    if (aheadP >= 0 === aheadQ >= 0) continue;
    const share = aheadP / (aheadP - aheadQ);
    const aside = (py + share * (qy - py)) * ahead.x - (px + share * (qx - px)) * ahead.y;
    if (aside >= 0) left = Math.min(left, aside);
    else right = Math.min(right, -aside);
  }
  return left + right;
}
