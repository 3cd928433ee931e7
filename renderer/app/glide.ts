/** Moves the camera there in a short, even motion; at once for those who asked for less motion. */

import type { Camera } from '../canvas/camera.ts';
import type { View } from '../state/view.svelte.ts';

const GLIDE_MS = 220;

let glides = 0;

export function glideTo(view: View, to: Camera): void {
  const glide = ++glides;
  const from = view.camera;
  const isStill = matchMedia('(prefers-reduced-motion: reduce)').matches || view.size.width === 0;
  if (isStill) return void (view.camera = to);
  const begun = performance.now();
  let last = from;
  const step = (now: number): void => {
    // A newer glide, or the user's own hand, takes over.
    if (glide !== glides || view.camera !== last) return;
    const share = Math.min(1, (now - begun) / GLIDE_MS);
    view.camera = last = share === 1 ? to : between(from, to, 1 - (1 - share) ** 3);
    if (share < 1) requestAnimationFrame(step);
  };
  requestAnimationFrame(step);
}

/** Scale in equal ratios, so that the motion looks even. */
function between(from: Camera, to: Camera, share: number): Camera {
  const mix = (a: number, b: number): number => a + (b - a) * share;
  return {
    scale: from.scale * (to.scale / from.scale) ** share,
    centre: { x: mix(from.centre.x, to.centre.x), y: mix(from.centre.y, to.centre.y) },
  };
}
