/**
 * The shadow of an upright capsule: every point within r of a vertical segment. A head, a body, a column.
 *
 * Seen from the eye, the two end spheres have elliptic outlines with the same left and right edge, because the
 * planes that touch the capsule's sides are upright; the shadow is the upper half of the upper ellipse over the lower
 * half of the lower one. With the axis `across` and `depth` away in plan, an end `up` above the eye,
 * t^2 = across^2 + depth^2 - r^2 and k = 1 / (depth^2 - r^2), a sphere's outline in the tangents (across / depth,
 * up / depth) is, for all angles a,
 *
 *     across depth k + r t k cos a
 *     up depth k + (up r across k / t) cos a + (r sqrt((up^2 + t^2) k) / t) sin a
 *
 * (the tangent cone of a sphere cut by a plane, written by conjugate half-axes, one of them upright).
 *
 * The curve is replaced by ARC_STEPS chords at equal steps of a. The ends of the arc stay on the curve, so that the
 * upright sides are exact, and the corners between are moved outwards until the area under the chords equals that
 * under the arc. What is left is how far a chord strays from its arc: less than 0.1 % of r^2 for each half.
 */

import { NEAR_EYE, PAST_WINDOW } from '../tolerances.ts';
import { cutCapsuleShadow } from './cut-capsule-shadow.ts';
import type { Outline } from './shadows.ts';
import type { View } from './view.ts';

const ARC_STEPS = 12;

/** Where the capsule is, as seen from the eye. Filled anew for each one. */
export interface SeenCapsule {
  across: number;
  depth: number;
  /** Heights of the ends of its axis above the eye. */
  low: number;
  high: number;
  r: number;
}

const capsule: SeenCapsule = { across: 0, depth: 0, low: 0, high: 0, r: 0 };

/** Makes the outline of the shadow of the capsule at `shape[at]`: x, y, z0, z1, r. */
export function capsuleShadow(view: View, shape: Float64Array, at: number, outline: Outline): void {
  const dx = shape[at]! - view.eyeX;
  const dy = shape[at + 1]! - view.eyeY;
  capsule.across = dx * view.aheadY - dy * view.aheadX;
  capsule.depth = dx * view.aheadX + dy * view.aheadY;
  capsule.low = shape[at + 2]! - view.eyeZ;
  capsule.high = shape[at + 3]! - view.eyeZ;
  capsule.r = shape[at + 4]!;
  if (capsule.depth - capsule.r < NEAR_EYE || capsule.depth + capsule.r > view.depth + PAST_WINDOW) {
    cutCapsuleShadow(view, capsule, outline);
  } else {
    wholeCapsuleShadow(view, capsule, outline);
  }
}

/** The shadow of a capsule that lies wholly between the eye and the window's plane. */
export function wholeCapsuleShadow(view: View, seen: SeenCapsule, outline: Outline): void {
  const { across, depth, low, high, r } = seen;
  const k = 1 / (depth * depth - r * r);
  const t2 = across * across + depth * depth - r * r;
  const t = Math.sqrt(t2);
  const middle = across * depth * k * view.perWidth + 0.5;
  const half = r * t * k * view.perWidth;
  outline.size = 0;
  if (middle + half <= 0 || middle - half >= 1) return;
  const steps =
    middle - half >= 0 && middle + half <= 1 ? WHOLE_ARC : arcBetween(-middle / half, (1 - middle) / half);
  const rise = depth * k * view.perHeight;
  const lean = ((r * across * k) / t) * view.perHeight;
  const bulge = (r / t) * view.perHeight;
  const upperBulge = bulge * Math.sqrt((high * high + t2) * k);
  const lowerBulge = bulge * Math.sqrt((low * low + t2) * k);
  for (let i = 0; i <= ARC_STEPS; i++) {
    const c = steps.cosines[i]!;
    const s = steps.sines[i]!;
    outline.u[i] = middle + half * c;
    outline.hi[i] = high * (rise + lean * c) + upperBulge * s - view.foot;
    outline.lo[i] = low * (rise + lean * c) - lowerBulge * s - view.foot;
  }
  outline.size = ARC_STEPS + 1;
}

/** Corners of the chords of an arc of the unit circle, from its left to its right end. */
interface Arc {
  readonly cosines: Float64Array;
  readonly sines: Float64Array;
}

const WHOLE_ARC = fillArc(createArc(), -1, 1);
const partArc = createArc();

function createArc(): Arc {
  return { cosines: new Float64Array(ARC_STEPS + 1), sines: new Float64Array(ARC_STEPS + 1) };
}

/** The arc over the part of -1..1 that the window shows. */
function arcBetween(left: number, right: number): Arc {
  return fillArc(partArc, Math.max(-1, left), Math.min(1, right));
}

function fillArc(arc: Arc, left: number, right: number): Arc {
  const { cosines, sines } = arc;
  const end = Math.acos(right);
  const step = (Math.acos(left) - end) / ARC_STEPS;
  // Sectors: two of area sin(step) / 2 * f and the others of sin(step) / 2 * f^2 make up the arc's.
  const wanted = (ARC_STEPS * step) / Math.sin(step);
  const f = (Math.sqrt(1 + (ARC_STEPS - 2) * wanted) - 1) / (ARC_STEPS - 2);
  const turnCos = Math.cos(step);
  const turnSin = Math.sin(step);
  let c = right;
  let s = Math.sqrt(1 - right * right);
  for (let i = ARC_STEPS - 1; i > 0; i--) {
    const turned = c * turnCos - s * turnSin;
    s = s * turnCos + c * turnSin;
    c = turned;
    cosines[i] = c * f;
    sines[i] = s * f;
  }
  cosines[0] = left;
  sines[0] = Math.sqrt(1 - left * left);
  cosines[ARC_STEPS] = right;
  sines[ARC_STEPS] = Math.sqrt(1 - right * right);
  return arc;
}
