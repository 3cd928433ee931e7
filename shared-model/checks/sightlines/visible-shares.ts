/** The visible share of every target from every seat. */

import type { Scene } from '../scene.ts';
import { sortSeats } from './bearings.ts';
import { compileScene } from './compile-scene.ts';
import { computeTarget, createWork } from './compute-target.ts';
import { allStretches } from './stretches.ts';

/**
 * Shares in 0..1, row-major: seat s and target t at `s * targets + t`. The share is the area of the target's window
 * that is not covered by the union of the shadows which the occluders between eye and window throw on its plane,
 * divided by the window's area. Exact for flat and box-shaped occluders, then rounded to the next step of 2^-30 (about
 * 1e-9); the outline of a capsule is a polygon of the same area. An occluder does not hide the target that owns it.
 *
 * Odd input has a defined result: an eye inside an occluder sees nothing (0); a window without width or height, or
 * seen from its own axis so that it has no direction, is hidden by nothing (1); an occluder without area hides nothing.
 */
export function visibleShares(scene: Scene): Float64Array {
  const compiled = compileScene(scene);
  const visible = new Float64Array(scene.seats.length * scene.targets.length);
  const work = createWork(compiled);
  compiled.targets.forEach(({ x, y }, target) => {
    const seats = sortSeats(compiled, x, y);
    computeTarget(
      { compiled, seats, stretches: allStretches(compiled, target, seats), target, visible },
      work,
    );
  });
  return visible;
}
