/** How far a straight walk keeps from everything, measured on the outlines themselves. */

import type { Segment } from '../../document/openings.ts';
import type { Vec2 } from '../../geometry/frame.ts';
import { boundsOf, forEachEdge, type Bounds, type Polygon } from '../../geometry/polygon.ts';
import { BoxGrid } from './box-grid.ts';
import type { Ground } from './sites.ts';

/** Nothing farther away than this is looked for: a walk with this on both sides is as wide as anyone asks. */
export const FARTHEST = 1500;

export interface Clearances {
  readonly outlines: readonly NamedEdges[];
  readonly grid: BoxGrid;
}

/** A straight line from a to b, in plain numbers because it is looked at so often. */
export interface Line {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
}

interface OwnedEdges {
  /** '' for walls. */
  readonly owner: string;
  readonly outline: Polygon;
  readonly bounds: Bounds;
  readonly edges: readonly Line[];
  /** Of each edge: x and y of its middle, half its length. */
  readonly middles: Float64Array;
  /** A circle round all of them. */
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** `of`: the record to name; of a wall the platform, or the level whose edge it is. */
interface NamedEdges extends OwnedEdges {
  readonly of: string;
}

export function clearancesOf({ walls, obstacles }: Ground): Clearances {
  const outlines = [
    ...walls.map(({ a, b, of }) => ({ ...ownedEdges('', [a, b]), of })),
    ...obstacles.map(({ owner, outline }) => ({ ...ownedEdges(owner, outline), of: owner })),
  ];
  return { outlines, grid: new BoxGrid(outlines.map(({ bounds }) => bounds)) };
}

/** Least distance from the straight line a-b to what is not of `free`; `most` when all of it is farther away. */
export function clearanceAlong(
  { outlines, grid }: Clearances,
  { a, b }: Segment,
  free: ReadonlySet<string>,
  most: number = FARTHEST,
): number {
  const near: Bounds = {
    minX: Math.min(a.x, b.x) - most,
    minY: Math.min(a.y, b.y) - most,
    maxX: Math.max(a.x, b.x) + most,
    maxY: Math.max(a.y, b.y) + most,
  };
  const walk = lineOf(a, b);
  let least = most * most;
  grid.forEachTouching(near, (index) => {
    const thing = outlines[index];
    if (!thing || free.has(thing.owner)) return;
    const within = Math.sqrt(least) + thing.radius;
    if (squaredDistance(walk, thing.x, thing.y) >= within * within) return;
    least = leastGap(walk, thing, least);
  });
  return Math.sqrt(least);
}

/** Whether the straight line a-b keeps `least` from all that is not of `free`: done with the first thing that is nearer. */
export function keepsClear(
  { outlines, grid }: Clearances,
  { a, b }: Segment,
  free: ReadonlySet<string>,
  least: number,
): boolean {
  if (least <= 0) return true;
  const near: Bounds = {
    minX: Math.min(a.x, b.x) - least,
    minY: Math.min(a.y, b.y) - least,
    maxX: Math.max(a.x, b.x) + least,
    maxY: Math.max(a.y, b.y) + least,
  };
  const walk = lineOf(a, b);
  let isClear = true;
  grid.forEachTouching(near, (index) => {
    const thing = isClear ? outlines[index] : undefined;
    if (!thing || free.has(thing.owner)) return;
    const within = least + thing.radius;
    if (squaredDistance(walk, thing.x, thing.y) >= within * within) return;
    isClear = leastGap(walk, thing, least * least) >= least * least;
  });
  return isClear;
}

function lineOf(a: Vec2, b: Vec2): Line {
  return { ax: a.x, ay: a.y, bx: b.x, by: b.y };
}

function ownedEdges(owner: string, outline: Polygon): OwnedEdges {
  const edges: Line[] = [];
  const middles: number[] = [];
  forEachEdge(outline, (a, b) => {
    edges.push(lineOf(a, b));
    middles.push((a.x + b.x) / 2, (a.y + b.y) / 2, Math.hypot(b.x - a.x, b.y - a.y) / 2);
  });
  const bounds = boundsOf(outline);
  return {
    owner,
    outline,
    bounds,
    edges,
    middles: Float64Array.from(middles),
    x: (bounds.minX + bounds.maxX) / 2,
    y: (bounds.minY + bounds.maxY) / 2,
    radius: Math.hypot(bounds.maxX - bounds.minX, bounds.maxY - bounds.minY) / 2,
  };
}

/** Square of the least distance from a thing's edges, when it is less than `least`, which is one too. */
function leastGap(walk: Line, { edges, middles }: OwnedEdges, least: number): number {
  let [squared, reach] = [least, Math.sqrt(least) + ROUNDING];
  for (let index = 0; index < edges.length; index++) {
    const edge = edges[index];
    // No point of an edge is farther from its middle than half of it.
    const far = reach + (middles[3 * index + 2] ?? 0);
    const toMiddle = squaredDistance(walk, middles[3 * index] ?? 0, middles[3 * index + 1] ?? 0);
    if (!edge || toMiddle > far * far) continue;
    const gap = squaredGap(walk, edge);
    if (gap < squared) [squared, reach] = [gap, Math.sqrt(gap) + ROUNDING];
  }
  return squared;
}

/** More than what is lost in rounding, so that nothing is skipped that would count. */
const ROUNDING = 1e-3;

/** Square of the distance between two lines. */
function squaredGap(p: Line, q: Line): number {
  const [startOfQ, endOfQ] = [side(p, q.ax, q.ay), side(p, q.bx, q.by)];
  const [startOfP, endOfP] = [side(q, p.ax, p.ay), side(q, p.bx, p.by)];
  if (startOfQ > 0 !== endOfQ > 0 && startOfP > 0 !== endOfP > 0) return 0;
  return Math.min(
    squaredDistance(p, q.ax, q.ay),
    squaredDistance(p, q.bx, q.by),
    squaredDistance(q, p.ax, p.ay),
    squaredDistance(q, p.bx, p.by),
  );
}

/** Positive on the left of the line. */
function side({ ax, ay, bx, by }: Line, x: number, y: number): number {
  return (bx - ax) * (y - ay) - (by - ay) * (x - ax);
}

function squaredDistance({ ax, ay, bx, by }: Line, px: number, py: number): number {
  const [x, y] = [bx - ax, by - ay];
  const squared = x * x + y * y;
  const along = squared === 0 ? 0 : Math.max(0, Math.min(1, ((px - ax) * x + (py - ay) * y) / squared));
  const [gx, gy] = [ax + along * x - px, ay + along * y - py];
  return gx * gx + gy * gy;
}
