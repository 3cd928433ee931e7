/**
 * Cutting a flat convex outline to what lies between the eye and the window's plane, inside the view's left and
 * right edge. Needed only for the few bodies that reach behind the eye or past the window, so plain objects will do.
 */

import { NEAR_EYE } from '../tolerances.ts';
import type { View } from './view.ts';

/** A point as seen from the eye; see view.ts. */
export interface Seen {
  readonly across: number;
  readonly up: number;
  readonly depth: number;
}

/** Corners of what is left, in order; empty when nothing is. Cutting one edge after the other: Sutherland-Hodgman. */
export function clipToView(ring: readonly Seen[], view: View): Seen[] {
  const sides: ((point: Seen) => number)[] = [
    (point) => point.depth - NEAR_EYE,
    (point) => view.depth - point.depth,
    // The edges of the view pass through the eye; cut by them, even what is close to the eye stays within u = 0..1.
    (point) => view.spread * point.depth + point.across,
    (point) => view.spread * point.depth - point.across,
  ];
  return sides.reduce(keepInside, [...ring]);
}

/** Keeps what has a measure of at least 0. */
function keepInside(ring: readonly Seen[], measure: (point: Seen) => number): Seen[] {
  const kept: Seen[] = [];
  let before = ring.at(-1);
  for (const point of ring) {
    if (before) keepEdge(kept, before, point, measure);
    before = point;
  }
  return kept;
}

function keepEdge(kept: Seen[], from: Seen, to: Seen, measure: (point: Seen) => number): void {
  const start = measure(from);
  const end = measure(to);
  if (start >= 0 !== end >= 0) kept.push(between(from, to, start / (start - end)));
  if (end >= 0) kept.push(to);
}

function between(from: Seen, to: Seen, part: number): Seen {
  return {
    across: from.across + part * (to.across - from.across),
    up: from.up + part * (to.up - from.up),
    depth: from.depth + part * (to.depth - from.depth),
  };
}
