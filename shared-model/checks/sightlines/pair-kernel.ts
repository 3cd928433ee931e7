/** The visible share for one pair of eye and target, from candidates that may hide it. */

import { capsuleShadow } from '../../geometry/shadows/capsule-shadow.ts';
import { prismShadow } from '../../geometry/shadows/prism-shadow.ts';
import { quadShadow } from '../../geometry/shadows/quad-shadow.ts';
import {
  addShadow,
  createOutline,
  createShadows,
  NOTHING,
  type Cover,
  type Outline,
  type Shadows,
} from '../../geometry/shadows/shadows.ts';
import { createView, lookAt, mayHide, standAt, type View } from '../../geometry/shadows/view.ts';
import { PRISM, QUAD, SHAPE_STRIDE, type CompiledOccluders, type CompiledScene } from './compile-scene.ts';

/** Room to work in; make one and use it for all pairs. */
export interface Kernel {
  readonly view: View;
  readonly outline: Outline;
  readonly shadows: Shadows;
}

export function createKernel(): Kernel {
  return { view: createView(), outline: createOutline(), shadows: createShadows() };
}

/** Turns the kernel to a pair. False when the window has no area or no direction: then nothing hides it. */
export function aim(kernel: Kernel, scene: CompiledScene, seat: number, target: number): boolean {
  const { x, y, z } = scene.eyes;
  const window = scene.targets[target];
  if (!window) throw new Error(`no target ${target}`);
  standAt(kernel.view, x[seat] ?? 0, y[seat] ?? 0, z[seat] ?? 0);
  kernel.shadows.count = 0;
  return lookAt(kernel.view, window);
}

/** Adds the shadow of one occluder on the window that the kernel is aimed at. */
export function castShadow(kernel: Kernel, occluders: CompiledOccluders, index: number): Cover {
  const { view, outline } = kernel;
  if (!mayHide(view, occluders.x[index]!, occluders.y[index]!, occluders.r[index]!)) return NOTHING;
  const kind = occluders.kind[index]!;
  const at = index * SHAPE_STRIDE;
  if (kind === QUAD) quadShadow(view, occluders.shape, at, outline);
  else if (kind === PRISM) prismShadow(view, occluders.shape, at, outline);
  else capsuleShadow(view, occluders.shape, at, outline);
  return addShadow(kernel.shadows, outline);
}
