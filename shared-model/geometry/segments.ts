/** Points and straight segments in the plane. */

import type { Vec2 } from './frame.ts';

/** A pair of points, one on each of two things, and how far apart they are. */
export interface Gap {
  readonly distance: number;
  readonly a: Vec2;
  readonly b: Vec2;
}

/** Twice the signed area of the triangle a, b, c: positive when c lies left of the line from a to b. */
export function turn(a: Vec2, b: Vec2, c: Vec2): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

/** The point of the segment a-b that is nearest to `point`; a when the segment has no length. */
export function nearestOnSegment(point: Vec2, a: Vec2, b: Vec2): Vec2 {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const squared = dx * dx + dy * dy;
  if (squared === 0) return a;
  const along = ((point.x - a.x) * dx + (point.y - a.y) * dy) / squared;
  if (along <= 0) return a;
  if (along >= 1) return b;
  return { x: a.x + along * dx, y: a.y + along * dy };
}

export function distancePointToSegment(point: Vec2, a: Vec2, b: Vec2): number {
  const near = nearestOnSegment(point, a, b);
  return Math.hypot(point.x - near.x, point.y - near.y);
}

/** Whether the segments a-b and c-d have a point in common, ends included. */
export function segmentsMeet(a: Vec2, b: Vec2, c: Vec2, d: Vec2): boolean {
  const [abc, abd] = [turn(a, b, c), turn(a, b, d)];
  const [cda, cdb] = [turn(c, d, a), turn(c, d, b)];
  if (((abc > 0 && abd < 0) || (abc < 0 && abd > 0)) && ((cda > 0 && cdb < 0) || (cda < 0 && cdb > 0))) {
    return true;
  }
  return (
    (abc === 0 && inBoxOf(a, b, c)) ||
    (abd === 0 && inBoxOf(a, b, d)) ||
    (cda === 0 && inBoxOf(c, d, a)) ||
    (cdb === 0 && inBoxOf(c, d, b))
  );
}

/** Where the segments a-b and c-d are nearest to each other. */
export function gapBetweenSegments(a: Vec2, b: Vec2, c: Vec2, d: Vec2): Gap {
  if (segmentsMeet(a, b, c, d)) {
    const point = meetingPoint(a, b, c, d);
    return { distance: 0, a: point, b: point };
  }
  // Two segments that do not meet are nearest at an end of one of them.
  const candidates: [Vec2, Vec2][] = [
    [a, nearestOnSegment(a, c, d)],
    [b, nearestOnSegment(b, c, d)],
    [nearestOnSegment(c, a, b), c],
    [nearestOnSegment(d, a, b), d],
  ];
  let best: Gap = { distance: Infinity, a, b: c };
  for (const [p, q] of candidates) {
    const distance = Math.hypot(p.x - q.x, p.y - q.y);
    if (distance < best.distance) best = { distance, a: p, b: q };
  }
  return best;
}

/** A common point of two segments that meet. */
function meetingPoint(a: Vec2, b: Vec2, c: Vec2, d: Vec2): Vec2 {
  const [abc, abd] = [turn(a, b, c), turn(a, b, d)];
  if (abc !== abd) {
    const along = abc / (abc - abd);
    return { x: c.x + along * (d.x - c.x), y: c.y + along * (d.y - c.y) };
  }
  // They lie on one line: an end of one lies on the other.
  return [c, d].find((end) => inBoxOf(a, b, end)) ?? a;
}

function inBoxOf(a: Vec2, b: Vec2, point: Vec2): boolean {
  return (
    Math.min(a.x, b.x) <= point.x &&
    point.x <= Math.max(a.x, b.x) &&
    Math.min(a.y, b.y) <= point.y &&
    point.y <= Math.max(a.y, b.y)
  );
}
