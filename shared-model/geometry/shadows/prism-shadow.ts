/** The shadow of an upright prism on a convex four-cornered foot: a box, turned or not. */

import { NEAR_EYE } from '../tolerances.ts';
import { clipToView, type Seen } from './clip-ring.ts';
import { hullColumns } from './hull-columns.ts';
import type { Outline } from './shadows.ts';
import type { View } from './view.ts';

/** Makes the shadow's outline. `shape[at]`: x, y of the four corners in order, then the lower and the upper z. */
export function prismShadow(view: View, shape: Float64Array, at: number, outline: Outline): void {
  const { eyeX, eyeY, eyeZ, aheadX, aheadY, perWidth, perHeight, foot } = view;
  const { u, lo, hi } = outline;
  const low = (shape[at + 8]! - eyeZ) * perHeight;
  const high = (shape[at + 9]! - eyeZ) * perHeight;
  for (let i = 0, k = at; i < 4; i++, k += 2) {
    const dx = shape[k]! - eyeX;
    const dy = shape[k + 1]! - eyeY;
    const depth = dx * aheadX + dy * aheadY;
    if (depth < NEAR_EYE || depth > view.depth) {
      cutPrismShadow(view, shape, at, outline);
      return;
    }
    u[i] = ((dx * aheadY - dy * aheadX) * perWidth) / depth + 0.5;
    lo[i] = low / depth - foot;
    hi[i] = high / depth - foot;
  }
  outline.size = 4;
  hullColumns(outline);
}

/**
 * The same for one that reaches behind the eye or past the window's plane. The planes that cut it are upright, so it
 * is enough to cut its foot. An eye inside it sees nothing: the cut just before the eye covers the whole window.
 */
function cutPrismShadow(view: View, shape: Float64Array, at: number, outline: Outline): void {
  const corners: Seen[] = [];
  for (let k = at; k < at + 8; k += 2) {
    const dx = shape[k]! - view.eyeX;
    const dy = shape[k + 1]! - view.eyeY;
    const across = dx * view.aheadY - dy * view.aheadX;
    corners.push({ across, up: 0, depth: dx * view.aheadX + dy * view.aheadY });
  }
  const low = (shape[at + 8]! - view.eyeZ) * view.perHeight;
  const high = (shape[at + 9]! - view.eyeZ) * view.perHeight;
  outline.size = 0;
  for (const { across, depth } of clipToView(corners, view)) {
    const i = outline.size++;
    outline.u[i] = (across * view.perWidth) / depth + 0.5;
    outline.lo[i] = low / depth - view.foot;
    outline.hi[i] = high / depth - view.foot;
  }
  hullColumns(outline);
}
