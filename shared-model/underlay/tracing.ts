/** Where the next corner of a traced outline settles, and why. */

import type { Vec2 } from '../geometry/frame.ts';
import type { Near } from './nearest.ts';

/** `close`: on the first corner, so that the outline is whole. */
export type TraceReason = 'close' | 'corner' | 'line' | 'square' | 'free';

export interface TracedSpot extends Vec2 {
  readonly reason: TraceReason;
}

export interface TraceRequest {
  readonly wanted: Vec2;
  /** The corners so far. */
  readonly corners: readonly Vec2[];
  /** What of the underlays is near a spot of the stage. */
  readonly near: (spot: Vec2) => Near | null;
  /** How near something has to be to catch, mm. */
  readonly within: number;
  /** Lengths are rounded to this many mm where nothing of an underlay catches; 0: not at all. */
  readonly roundTo: number;
}

/** A whole outline has at least three corners. */
const LEAST_CORNERS = 3;

/**
 * On the first corner; else on a corner of an underlay; else square to the edge before or along the stage's axes, there on
 * the underlay's line that crosses or at a round length; else on a line; else at a round length from the last corner.
 */
export function settleTrace(request: TraceRequest): TracedSpot {
  const { wanted, corners, near, within } = request;
  const [first] = corners;
  if (first && corners.length >= LEAST_CORNERS && distance(wanted, first) <= within)
    return { ...first, reason: 'close' };
  const found = near(wanted);
  if (found?.what === 'corner') return { ...found.at, reason: 'corner' };
  const last = corners.at(-1);
  const square = last ? squareTo(request, last) : null;
  if (last && square) return onSquare(request, last, square);
  if (found) return { ...found.at, reason: 'line' };
  return { ...rounded(request, last), reason: 'free' };
}

/** The unit direction from the last corner that the wanted spot is nearly in; null: none. */
function squareTo({ wanted, corners, within }: TraceRequest, last: Vec2): Vec2 | null {
  const before = corners.at(-2);
  const own = before && directionOf(before, last);
  const directions = [...(own ? [own, { x: -own.y, y: own.x }] : []), { x: 1, y: 0 }, { x: 0, y: 1 }];
  const off = (way: Vec2) => Math.abs((wanted.x - last.x) * way.y - (wanted.y - last.y) * way.x);
  return directions.find((way) => off(way) <= within) ?? null;
}

/** Along the direction, on a line of the underlay that is near there, or at a round length. */
function onSquare({ wanted, near, within, roundTo }: TraceRequest, last: Vec2, way: Vec2): TracedSpot {
  const along = (wanted.x - last.x) * way.x + (wanted.y - last.y) * way.y;
  const spot = at(last, way, along);
  const found = near(spot);
  const caught = found && (found.at.x - last.x) * way.x + (found.at.y - last.y) * way.y;
  // The crossing lies where the near point does, as long as the line is not the one that is being traced.
  if (caught !== null && Math.abs(caught - along) > 1e-6 && Math.abs(caught - along) <= within)
    return { ...at(last, way, caught), reason: 'square' };
  return { ...at(last, way, roundTo > 0 ? Math.round(along / roundTo) * roundTo : along), reason: 'square' };
}

function rounded({ wanted, roundTo }: TraceRequest, last: Vec2 | undefined): Vec2 {
  if (roundTo <= 0) return wanted;
  if (!last)
    return {
      x: Math.round(wanted.x / roundTo) * roundTo || 0,
      y: Math.round(wanted.y / roundTo) * roundTo || 0,
    };
  const length = distance(last, wanted);
  if (length === 0) return wanted;
  return at(last, directionOf(last, wanted), Math.round(length / roundTo) * roundTo);
}

function at({ x, y }: Vec2, way: Vec2, along: number): Vec2 {
  return { x: x + way.x * along, y: y + way.y * along };
}

function directionOf(from: Vec2, to: Vec2): Vec2 {
  const length = distance(from, to) || 1;
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}

function distance(a: Vec2, b: Vec2): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}
