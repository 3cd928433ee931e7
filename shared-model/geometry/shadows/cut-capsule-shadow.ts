/**
 * The shadow of an upright capsule of which only a part lies between the eye and the window's plane.
 *
 * At each of many columns across the window the upright plane through the eye cuts the capsule in a stadium (two half
 * discs and the strip between), of which the slopes of the lines that touch it, or of the ends where the window's
 * plane cuts it, are the ends of the shadow. Each column is exact; the chords between them lose less than 0.02 % of
 * the shadow of a round end. Slower than the closed form of capsule-shadow.ts, and rarely needed.
 */

import { NEAR_EYE, PAST_WINDOW } from '../tolerances.ts';
import type { SeenCapsule } from './capsule-shadow.ts';
import type { Outline } from './shadows.ts';
import type { View } from './view.ts';

const COLUMNS = 128;

/** Columns that are open above or below end this far outside the window. */
const FAR_OUTSIDE = 4;

/** Ends of a column as up / depth. */
interface Slopes {
  readonly low: number;
  readonly high: number;
}

/** Makes the outline. An eye inside the capsule sees nothing of the window. */
export function cutCapsuleShadow(view: View, seen: SeenCapsule, outline: Outline): void {
  outline.size = 0;
  if (eyeIsInside(seen)) {
    setColumn(outline, 0, EVERY_SLOPE, view);
    setColumn(outline, 1, EVERY_SLOPE, view);
    return;
  }
  const sides = sidesOf(view, seen);
  if (!sides) return;
  const left = Math.max(0, sides.left * view.perWidth + 0.5);
  const right = Math.min(1, sides.right * view.perWidth + 0.5);
  if (left >= right) return;
  for (let i = 0; i <= COLUMNS; i++) {
    // Columns stand closer towards the sides, where a round outline turns upright.
    const u = i === COLUMNS ? right : left + ((right - left) * (1 - Math.cos((Math.PI * i) / COLUMNS))) / 2;
    const slopes = slopesAt((u - 0.5) / view.perWidth, view, seen);
    if (slopes) setColumn(outline, u, slopes, view);
  }
}

const EVERY_SLOPE: Slopes = { low: -Infinity, high: Infinity };

function eyeIsInside({ across, depth, low, high, r }: SeenCapsule): boolean {
  const up = Math.max(low, Math.min(high, 0));
  return across * across + depth * depth + up * up <= r * r;
}

function setColumn(outline: Outline, u: number, { low, high }: Slopes, view: View): void {
  const i = outline.size++;
  const heightAt = (slope: number): number =>
    Math.max(-FAR_OUTSIDE, Math.min(1 + FAR_OUTSIDE, slope * view.perHeight - view.foot));
  outline.u[i] = u;
  outline.lo[i] = heightAt(low);
  outline.hi[i] = heightAt(high);
}

/** The range of across / depth over the part of the capsule between eye and window; null when there is none. */
function sidesOf(view: View, seen: SeenCapsule): { left: number; right: number } | null {
  const { across, depth, r } = seen;
  if (depth - r >= view.depth || depth + r <= NEAR_EYE) return null;
  const fromEye = across * across + depth * depth;
  // Seen from straight above or below, it lies all round the eye.
  if (fromEye <= r * r) return { left: -Infinity, right: Infinity };
  const t = Math.sqrt(fromEye - r * r);
  return { left: -side(view, seen, t, -1), right: side(view, seen, t, 1) };
}

/** How far to one side (1 right, -1 left) it reaches, as across / depth to that side. */
function side(view: View, { across, depth, r }: SeenCapsule, t: number, sign: 1 | -1): number {
  const sideways = across * sign;
  // Beside the eye on this side it reaches to where the view is level with the eye.
  if (depth <= r && sideways > 0) return Infinity;
  const touch = (t * (t * depth - r * sideways)) / (sideways * sideways + depth * depth);
  if (touch <= view.depth) return (t * sideways + r * depth) / (t * depth - r * sideways);
  return (sideways + halfChord(r, view.depth - depth)) / view.depth;
}

/** The ends of the column in which across / depth = `tangent`; null when nothing of the capsule is there. */
function slopesAt(tangent: number, view: View, { across, depth, low, high, r }: SeenCapsule): Slopes | null {
  // In the upright plane through the eye, x runs away from the eye: depth is x / slant.
  const slant = Math.sqrt(1 + tangent * tangent);
  const x = (across * tangent + depth) / slant;
  const end = view.depth * slant;
  const half = halfChord(r, (across - depth * tangent) / slant);
  if (x + half <= NEAR_EYE || x - half > end + PAST_WINDOW) return null;
  return { low: -slant * steepest(x, -low, half, end), high: slant * steepest(x, high, half, end) };
}

/** The steepest line from the eye to the part of a disc at (x, up) that lies before `end`. */
function steepest(x: number, up: number, r: number, end: number): number {
  // Right above the eye: the view up to it is upright.
  if (x < r && up + halfChord(r, x) > 0) return Infinity;
  const t = Math.sqrt(Math.max(0, x * x + up * up - r * r));
  const touch = (t * (x * t - up * r)) / (x * x + up * up);
  if (touch <= end) return (up * t + x * r) / (x * t - up * r);
  return (up + halfChord(r, end - x)) / end;
}

/** Half the chord of a circle at a distance from its centre; 0 outside. */
function halfChord(r: number, distance: number): number {
  return Math.sqrt(Math.max(0, r * r - distance * distance));
}
