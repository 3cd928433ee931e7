/**
 * Waits that keep ways open: what would shut a thing in is set after it, what shuts it in is struck before it. To what is
 * rolled a level is shut, too.
 */

import { FIRST_STEP } from '../checks/room/first-step.ts';
import type { Point } from '../document/records.ts';
import { forEachEdge, pointInPolygon } from '../geometry/polygon.ts';
import { nearestOnSegment } from '../geometry/segments.ts';
import type { Performance } from './performing.ts';
import type { Piece } from './pieces.ts';
import { ringIn, type Task } from './tasks.ts';
import { girthOf, isRolled, type Unit } from './units.ts';
import { LEAST_WAY } from './ways/carrying.ts';

interface Shut {
  readonly tasks: readonly Task[];
  /** The pieces with their ways past nothing but what stays. */
  readonly pieces: readonly Piece[];
  readonly waitsFor: readonly (readonly number[])[];
}

/** The waits with those that would open the ways that were shut; no more of them than leave an order in which all can be done. */
export function waitsThatClear({ tasks, pieces, waitsFor }: Shut, performance: Performance): number[][] {
  let waits = waitsFor.map((each) => [...each]);
  const place = new Map(performance.turns.map(({ job }, index) => [job, index]));
  for (const { job } of performance.turns) {
    const [piece, open] = [performance.pieces[job], pieces[job]];
    if (!piece || !open || !isHindered(piece, open)) continue;
    const isShut = piece.way.ease === 'none';
    for (const [other, { from, to }] of tasks.entries()) {
      if (other === job) continue;
      const isBegun = (place.get(other) ?? 0) < (place.get(job) ?? 0);
      const unit = isBegun ? to : from;
      if (!unit || (!isShut && unit.thing.item !== 'riser') || !stands(unit, open)) continue;
      const wait = isBegun ? { waiter: other, first: job } : { waiter: job, first: other };
      waits = withWait(waits, wait) ?? waits;
    }
  }
  return waits;
}

/** Whether something that might stand elsewhere at the time leaves it no way, or none on the level. */
export function isHindered(piece: Piece, open: Piece): boolean {
  if (open.way.ease === 'none') return false;
  return piece.way.ease === 'none' || (isRolledOverStep(piece) && !isRolledOverStep(open));
}

export function isRolledOverStep({ from, to, step }: Piece): boolean {
  const unit = from ?? to;
  return step > 0 && unit !== null && isRolled(unit);
}

interface Wait {
  readonly waiter: number;
  readonly first: number;
}

/** Null when then some would wait for each other in a ring. */
function withWait(waits: readonly number[][], { waiter, first }: Wait): number[][] | null {
  if (waits[waiter]?.includes(first)) return null;
  const more = waits.map((each, index) => (index === waiter ? [...each, first] : each));
  return ringIn(more) ? null : more;
}

/** Whether the unit stands where the thing would be carried. */
function stands({ outline }: Unit, { way, from, to }: Piece): boolean {
  const unit = from ?? to;
  const room = Math.max(LEAST_WAY, unit ? girthOf(unit) : 0) / 2;
  const ends = [from, to].flatMap((end) => (end ? [end.spot] : []));
  return alongWay(way.points).some(
    (point) =>
      ends.every((end) => Math.hypot(point.x - end.x, point.y - end.y) > FIRST_STEP) &&
      distanceFrom(outline, point) < room,
  );
}

/** The way is looked at so often, mm. */
const SPACING = 50;

function alongWay(points: readonly Point[]): Point[] {
  return points.flatMap((b, index) => {
    const a = points[index - 1];
    if (!a) return [];
    const count = Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / SPACING);
    return Array.from({ length: count }, (_, step) => ({
      x: a.x + (step / count) * (b.x - a.x),
      y: a.y + (step / count) * (b.y - a.y),
    }));
  });
}

function distanceFrom(outline: Unit['outline'], point: Point): number {
  if (pointInPolygon(point, outline)) return 0;
  let least = Infinity;
  forEachEdge(outline, (a, b) => {
    const { x, y } = nearestOnSegment(point, a, b);
    least = Math.min(least, Math.hypot(x - point.x, y - point.y));
  });
  return least;
}
