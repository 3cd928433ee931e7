/**
 * An upright window as one eye sees it.
 *
 * From the eye, a point is `across` to the right of the line to the window's axis, `up` above the eye and `depth`
 * away along that line. Its shadow on the window's plane has the coordinates
 *
 *     u = perWidth * across / depth + 1/2        0 at the window's left edge, 1 at its right edge
 *     v = perHeight * up / depth - foot          0 at the window's lower edge, 1 at its upper edge
 *
 * so that areas in (u, v) are shares of the window.
 */

import { NEAR_EYE } from '../tolerances.ts';

export interface View {
  eyeX: number;
  eyeY: number;
  eyeZ: number;
  /** The horizontal direction from the eye to the window's axis. */
  aheadX: number;
  aheadY: number;
  /** Horizontal distance from the eye to the window's plane. */
  depth: number;
  perWidth: number;
  perHeight: number;
  foot: number;
  /** Half the window's width over its distance: the slope of the two edges of the view in plan. */
  spread: number;
  /** Length of (1, spread): a disc of radius r is beside the view when it is more than r * slant outside an edge. */
  slant: number;
}

/** An upright window: `width` wide about the axis at (x, y), from z0 to z1. */
export interface UprightWindow {
  readonly x: number;
  readonly y: number;
  readonly z0: number;
  readonly z1: number;
  readonly width: number;
}

export function createView(): View {
  return {
    eyeX: 0,
    eyeY: 0,
    eyeZ: 0,
    aheadX: 0,
    aheadY: 1,
    depth: 1,
    perWidth: 1,
    perHeight: 1,
    foot: 0,
    spread: 0.5,
    slant: 1,
  };
}

export function standAt(view: View, x: number, y: number, z: number): void {
  view.eyeX = x;
  view.eyeY = y;
  view.eyeZ = z;
}

/**
 * Turns the view to a window. False when there is nothing to look at: the eye is on the window's axis, so that the
 * window has no direction, or the window has no area.
 */
export function lookAt(view: View, window: UprightWindow): boolean {
  const dx = window.x - view.eyeX;
  const dy = window.y - view.eyeY;
  const depth = Math.sqrt(dx * dx + dy * dy);
  const height = window.z1 - window.z0;
  if (!(depth > NEAR_EYE && height > 0 && window.width > 0)) return false;
  view.aheadX = dx / depth;
  view.aheadY = dy / depth;
  view.depth = depth;
  view.perWidth = depth / window.width;
  view.perHeight = depth / height;
  view.foot = (window.z0 - view.eyeZ) / height;
  view.spread = window.width / (2 * depth);
  view.slant = Math.sqrt(1 + view.spread * view.spread);
  return true;
}

/** Whether a disc in plan may throw a shadow on the window: false is certain, true is not. */
export function mayHide(view: View, x: number, y: number, r: number): boolean {
  const dx = x - view.eyeX;
  const dy = y - view.eyeY;
  const depth = dx * view.aheadX + dy * view.aheadY;
  if (depth - r >= view.depth || depth + r <= 0) return false;
  const beside = Math.abs(dx * view.aheadY - dy * view.aheadX);
  if (beside - view.spread * depth > r * view.slant) return false;
  // Every line of the view moves away from a disc behind the eye; it meets one only if the eye is inside.
  return depth + beside * view.spread > 0 || dx * dx + dy * dy < r * r;
}
