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
    const leg = { a, ahead, count: Math.floor(length / EVERY) + 1 };
    const widths = widthsOf(leg, acrossOf(walker, a, b));
    for (let step = 0; step < leg.count; step++) {
      const point = pointOn(leg, step);
      if (Math.hypot(point.x - walker.spot.x, point.y - walker.spot.y) < FIRST_STEP) continue;
      stations.push({ at: walked + step * EVERY, width: widths[step] ?? 0, point });
    }
    walked += length;
  });
  return stations;
}

/** A straight part of the walk with a station at its start and at every step. */
interface Leg {
  readonly a: Vec2;
  /** Unit vector. */
  readonly ahead: Vec2;
  readonly count: number;
}

function pointOn({ a, ahead }: Leg, step: number): Vec2 {
  return { x: a.x + step * EVERY * ahead.x, y: a.y + step * EVERY * ahead.y };
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

/** Each edge narrows only the stations beside it. */
function widthsOf(leg: Leg, edges: readonly Line[]): Float64Array {
  const left = new Float64Array(leg.count).fill(FARTHEST);
  const right = new Float64Array(leg.count).fill(FARTHEST);
  for (const edge of edges) {
    const [first, last] = stepsBeside(leg, edge);
    for (let step = first; step <= last; step++) {
      const aside = asideAt(leg, step, edge);
      if (Number.isNaN(aside)) continue;
      if (aside >= 0) left[step] = Math.min(left[step] ?? 0, aside);
      else right[step] = Math.min(right[step] ?? 0, -aside);
    }
  }
  return left.map((width, step) => width + (right[step] ?? 0));
}

/** The stations that may lie between the ends of an edge, with one to spare at either end. */
function stepsBeside({ a, ahead, count }: Leg, { ax, ay, bx, by }: Line): readonly [number, number] {
  const p = ((ax - a.x) * ahead.x + (ay - a.y) * ahead.y) / EVERY;
  const q = ((bx - a.x) * ahead.x + (by - a.y) * ahead.y) / EVERY;
  return [Math.max(0, Math.floor(Math.min(p, q)) - 1), Math.min(count - 1, Math.ceil(Math.max(p, q)) + 1)];
}

/** How far to the left of a station, square to the walk, the edge is; NaN when it is not beside it. */
function asideAt(leg: Leg, step: number, { ax, ay, bx, by }: Line): number {
  const { x, y } = leg.ahead;
  const at = step * EVERY;
  const [fromX, fromY] = [leg.a.x + at * x, leg.a.y + at * y];
  const [px, py, qx, qy] = [ax - fromX, ay - fromY, bx - fromX, by - fromY];
  const [aheadP, aheadQ] = [px * x + py * y, qx * x + qy * y];
  if (aheadP >= 0 === aheadQ >= 0) return NaN;
  const share = aheadP / (aheadP - aheadQ);
  return (py + share * (qy - py)) * x - (px + share * (qx - px)) * y;
}
