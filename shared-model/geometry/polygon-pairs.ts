/** Two simple polygons, possibly concave: whether they overlap, and how far apart they are. */

import type { Vec2 } from './frame.ts';
import {
  boundsOf,
  depthInPolygon,
  forEachEdge,
  interiorPoint,
  type Bounds,
  type Polygon,
} from './polygon.ts';
import { gapBetweenSegments, turn, type Gap } from './segments.ts';
import { TOUCHING } from './tolerances.ts';

/** Whether they share ground. Touching, or entering each other by less than TOUCHING, is not overlapping. */
export function polygonsOverlap(a: Polygon, b: Polygon): boolean {
  if (!boundsOverlap(boundsOf(a), boundsOf(b))) return false;
  return entersInside(a, b) || entersInside(b, a) || middleLiesIn(a, b) || middleLiesIn(b, a);
}

/** 0 when they overlap or touch; Infinity when one has no corners. */
export function distanceBetweenPolygons(a: Polygon, b: Polygon): number {
  return gapBetweenPolygons(a, b).distance;
}

/** Where they are nearest to each other. Inside one another: distance 0, at a point of the inner one. */
export function gapBetweenPolygons(a: Polygon, b: Polygon): Gap {
  const [firstA, firstB] = [a[0], b[0]];
  if (!firstA || !firstB) return { distance: Infinity, a: firstA ?? NOWHERE, b: firstB ?? NOWHERE };
  if (depthInPolygon(firstA, b) >= 0) return { distance: 0, a: firstA, b: firstA };
  if (depthInPolygon(firstB, a) >= 0) return { distance: 0, a: firstB, b: firstB };
  let best: Gap = { distance: Infinity, a: firstA, b: firstB };
  forEachEdge(a, (p, q) => {
    forEachEdge(b, (r, s) => {
      const gap = gapBetweenSegments(p, q, r, s);
      if (gap.distance < best.distance) best = gap;
    });
  });
  return best;
}

const NOWHERE: Vec2 = { x: NaN, y: NaN };

function boundsOverlap(a: Bounds, b: Bounds): boolean {
  return a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;
}

/**
 * Whether some stretch of `outline`'s boundary lies inside `ground`. Cut where it meets the other boundary, each
 * piece of an edge lies wholly inside, outside or on the boundary, so its middle speaks for it.
 */
function entersInside(outline: Polygon, ground: Polygon): boolean {
  let enters = false;
  forEachEdge(outline, (a, b) => {
    if (enters) return;
    const cuts = cutsOf(a, b, ground);
    enters = cuts.some((cut, index) => {
      const middle = (cut + (cuts[index + 1] ?? 1)) / 2;
      const point = { x: a.x + middle * (b.x - a.x), y: a.y + middle * (b.y - a.y) };
      return depthInPolygon(point, ground) > TOUCHING;
    });
  });
  return enters;
}

/** Where along a-b (0..1, sorted, from 0) it crosses the lines of the ring's edges or passes its corners. */
function cutsOf(a: Vec2, b: Vec2, ring: Polygon): number[] {
  const cuts = [0];
  forEachEdge(ring, (c, d) => {
    const [cda, cdb] = [turn(c, d, a), turn(c, d, b)];
    if (cda > 0 !== cdb > 0) cuts.push(cda / (cda - cdb));
    cuts.push(...alongSegment(a, b, c));
  });
  return cuts.filter((cut) => cut >= 0 && cut < 1).sort((p, q) => p - q);
}

/** Where `point` lies along a-b, if it lies on it: there a collinear edge begins or ends. */
function alongSegment(a: Vec2, b: Vec2, point: Vec2): number[] {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const squared = dx * dx + dy * dy;
  if (squared === 0 || Math.abs(turn(a, b, point)) > TOUCHING * Math.sqrt(squared)) return [];
  return [((point.x - a.x) * dx + (point.y - a.y) * dy) / squared];
}

/** Decides the case in which no boundary enters the other polygon: the same outline twice. */
function middleLiesIn(inner: Polygon, outer: Polygon): boolean {
  const middle = interiorPoint(inner);
  return middle !== null && depthInPolygon(middle, outer) > TOUCHING;
}
