/** Points along a B-spline, by de Boor's algorithm ("A Practical Guide to Splines", C. de Boor, 1978). Weights count as one. */

import type { Vec2 } from '../geometry/frame.ts';
import type { DxfEntity } from './dxf-entities.ts';

/** Straight pieces from one knot to the next. */
const STEPS_PER_SPAN = 12;
const HIGHEST_DEGREE = 10;

/** Null: knots, points and degree do not belong together. Without control points, the points that it goes through. */
export function splinePoints(entity: DxfEntity): Vec2[] | null {
  const { controlPoints = [], fitPoints = [], knotValues = [], degreeOfSplineCurve: degree = 3 } = entity;
  if (controlPoints.length === 0) return fitPoints.map(({ x, y }) => ({ x, y }));
  const fits = knotValues.length === controlPoints.length + degree + 1;
  if (!fits || !(degree >= 1 && degree <= HIGHEST_DEGREE) || !isAscending(knotValues)) return null;
  const spline = { controlPoints, knots: knotValues, degree };
  const points: Vec2[] = [];
  for (let span = degree; span < controlPoints.length; span++) {
    const [from = NaN, to = NaN] = [knotValues[span], knotValues[span + 1]];
    if (!(to > from)) continue;
    // Each piece begins where the one before it ends.
    for (let step = points.length === 0 ? 0 : 1; step <= STEPS_PER_SPAN; step++)
      points.push(pointAt(spline, span, from + ((to - from) * step) / STEPS_PER_SPAN));
  }
  return points;
}

function isAscending(knots: readonly number[]): boolean {
  return knots.every((knot, index) => Number.isFinite(knot) && knot >= (knots[index - 1] ?? -Infinity));
}

interface Spline {
  readonly controlPoints: readonly Vec2[];
  readonly knots: readonly number[];
  readonly degree: number;
}

/** Between the control points that matter in the span, again between what that gives, until one point is left. */
function pointAt({ controlPoints, knots, degree }: Spline, span: number, at: number): Vec2 {
  let between = controlPoints.slice(span - degree, span + 1);
  for (let round = 1; round <= degree; round++) {
    between = between.slice(1).map((point, index) => {
      const low = knots[span - degree + round + index] ?? NaN;
      const high = knots[span + 1 + index] ?? NaN;
      const share = high > low ? (at - low) / (high - low) : 0;
      const before = between[index] ?? point;
      return { x: before.x + (point.x - before.x) * share, y: before.y + (point.y - before.y) * share };
    });
  }
  return between[0] ?? { x: NaN, y: NaN };
}
