/** The shadow of a flat quadrilateral: a desk, a page, a wall, a rail. */

import { NEAR_EYE } from '../tolerances.ts';
import { clipToView, type Seen } from './clip-ring.ts';
import { hullColumns } from './hull-columns.ts';
import type { Outline } from './shadows.ts';
import type { View } from './view.ts';

/**
 * Makes the outline of the shadow of the quadrilateral whose corners are at `shape[at]`: x, y, z four times, in
 * order. Repeated corners make a triangle, a stroke or nothing. Corners that are not in one plane throw the shadow of
 * their hull.
 */
export function quadShadow(view: View, shape: Float64Array, at: number, outline: Outline): void {
  const { eyeX, eyeY, eyeZ, aheadX, aheadY, perWidth, perHeight, foot } = view;
  const { u, lo, hi } = outline;
  for (let i = 0, k = at; i < 4; i++, k += 3) {
    const dx = shape[k]! - eyeX;
    const dy = shape[k + 1]! - eyeY;
    const depth = dx * aheadX + dy * aheadY;
    if (depth < NEAR_EYE || depth > view.depth) {
      cutQuadShadow(view, shape, at, outline);
      return;
    }
    u[i] = ((dx * aheadY - dy * aheadX) * perWidth) / depth + 0.5;
    const v = ((shape[k + 2]! - eyeZ) * perHeight) / depth - foot;
    lo[i] = v;
    hi[i] = v;
  }
  outline.size = 4;
  hullColumns(outline);
}

/** The same for one that reaches behind the eye or past the window's plane. */
function cutQuadShadow(view: View, shape: Float64Array, at: number, outline: Outline): void {
  const corners: Seen[] = [];
  for (let k = at; k < at + 12; k += 3) {
    const dx = shape[k]! - view.eyeX;
    const dy = shape[k + 1]! - view.eyeY;
    corners.push({
      across: dx * view.aheadY - dy * view.aheadX,
      up: shape[k + 2]! - view.eyeZ,
      depth: dx * view.aheadX + dy * view.aheadY,
    });
  }
  outline.size = 0;
  for (const { across, up, depth } of clipToView(corners, view)) {
    const i = outline.size++;
    outline.u[i] = (across * view.perWidth) / depth + 0.5;
    outline.lo[i] = outline.hi[i] = (up * view.perHeight) / depth - view.foot;
  }
  hullColumns(outline);
}
