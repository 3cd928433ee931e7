/** A walk as a line of points: how narrow it gets, and the same walk without needless corners. */

import type { Segment } from '../../document/openings.ts';
import type { Vec2 } from '../../geometry/frame.ts';
import { depthInPolygon } from '../../geometry/polygon.ts';
import { clearanceAlong, FARTHEST, type Clearances } from './clearance.ts';
import { FIRST_STEP, isInFirstStep, type Start } from './first-step.ts';
import type { Gait } from './gait.ts';
import { between } from './walls.ts';

/** Who goes, from where, past what. */
export interface Walker extends Start {
  readonly clearances: Clearances;
  readonly onWheels: boolean;
}

export interface Surroundings {
  readonly clearances: Clearances;
  readonly gait: Gait;
}

export function walkerFrom({ x, y }: Vec2, id: string, { clearances, gait }: Surroundings): Walker {
  const spot = { x, y };
  const free = new Set([id]);
  clearances.grid.forEachTouching({ minX: x, minY: y, maxX: x, maxY: y }, (index) => {
    const thing = clearances.outlines[index];
    if (thing && thing.owner !== '' && depthInPolygon(spot, thing.outline) > 0) free.add(thing.owner);
  });
  const there = 2 * clearanceAlong(clearances, { a: spot, b: spot }, free, gait.squeeze);
  // He may sit closer to his own stand than he could squeeze past it.
  const squeeze = Math.min(gait.squeeze, 0.99 * there);
  return { spot, free, clearances, squeeze, onWheels: gait.onWheels };
}

/**
 * Twice the least clearance of a walk beyond the first step, at most `most`. When it cannot even be squeezed through
 * within the first step: 0 on foot, on wheels how wide it is there.
 */
export function widthOfWalk(walker: Walker, path: readonly Vec2[], most: number = 2 * FARTHEST): number {
  let least = most;
  for (let index = 1; index < path.length; index++) {
    const [a, b] = [path[index - 1], path[index]];
    if (a && b) least = widthOfLeg(walker, { a, b }, least);
  }
  return least;
}

/**
 * The walk drawn taut as long as it stays `width` wide: needless corners go, and the others are cut finer and finer.
 * A walk that is not so wide keeps its course.
 */
export function tautened(walker: Walker, path: readonly Vec2[], width: number): Vec2[] {
  let taut = withoutNeedless(walker, path, width);
  for (let round = 0; round < ROUNDS; round++) {
    // From either end in turn: a corner that cannot be cut from one side often can from the other.
    taut = withoutNeedless(walker, subdivided(taut).reverse(), width);
    taut = withoutNeedless(walker, subdivided(taut).reverse(), width);
  }
  return taut;
}

const ROUNDS = 2;
const PARTS = 6;

function subdivided(path: readonly Vec2[]): Vec2[] {
  return path.flatMap((a, index) => {
    const b = path[index + 1];
    if (!b) return [a];
    return Array.from({ length: PARTS }, (_, part) => between({ a, b }, part / PARTS));
  });
}

function withoutNeedless(walker: Walker, path: readonly Vec2[], width: number): Vec2[] {
  const isWide = (from: number, to: number): boolean => {
    const [a, b] = [path[from], path[to]];
    return a !== undefined && b !== undefined && widthOfLeg(walker, { a, b }, width) >= width;
  };
  const kept: Vec2[] = [];
  for (let at = 0; at < path.length;) {
    const corner = path[at];
    if (corner) kept.push(corner);
    at = farthest(at, path.length - 1, isWide);
  }
  return kept;
}

/** The last point that can be walked to straight from `at`, by doubling and halving; at least the next one. */
function farthest(at: number, last: number, isWide: (from: number, to: number) => boolean): number {
  if (at >= last) return last + 1;
  let good = at + 1;
  let step = 1;
  while (good + step <= last && isWide(at, good + step)) {
    good += step;
    step *= 2;
  }
  for (; step >= 1; step = Math.floor(step / 2)) {
    if (good + step <= last && isWide(at, good + step)) good += step;
  }
  return good;
}

/** The width of a leg, at most `most`. */
function widthOfLeg(walker: Walker, leg: Segment, most: number): number {
  const crossing = chordWithin(leg, walker.spot);
  if (!crossing) return widthAlong(walker, leg, most);
  const [from, to] = crossing;
  const part = (start: number, end: number): Segment => ({ a: between(leg, start), b: between(leg, end) });
  const atFirst = widthAlong(walker, part(from, to), walker.squeeze);
  if (atFirst < walker.squeeze) return walker.onWheels ? Math.min(atFirst, most) : 0;
  const before = from > 0 ? widthAlong(walker, part(0, from), most) : most;
  return to < 1 ? widthAlong(walker, part(to, 1), before) : before;
}

function widthAlong({ clearances, free }: Walker, leg: Segment, most: number): number {
  return 2 * clearanceAlong(clearances, leg, free, most / 2);
}

/** The shares of the leg between which it lies within the first step; null when nowhere. */
function chordWithin(leg: Segment, spot: Vec2): readonly [number, number] | null {
  const [dx, dy] = [leg.b.x - leg.a.x, leg.b.y - leg.a.y];
  const [ox, oy] = [leg.a.x - spot.x, leg.a.y - spot.y];
  const squared = dx * dx + dy * dy;
  if (squared === 0) return isInFirstStep(leg.a, spot) ? [0, 1] : null;
  const along = (dx * ox + dy * oy) / squared;
  const root = along * along - (ox * ox + oy * oy - FIRST_STEP * FIRST_STEP) / squared;
  if (!(root > 0)) return null;
  const half = Math.sqrt(root);
  const [from, to] = [Math.max(0, -along - half), Math.min(1, -along + half)];
  return from < to ? [from, to] : null;
}
