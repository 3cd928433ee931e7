/** Parts of a player's window. */

import type { Scene, Target } from '../scene.ts';
import { visibleShares } from './visible-shares.ts';

/** The face window: the window from the chin up. */
export function faceWindow(target: Target): Target {
  return { ...target, z0: Math.max(target.z0, Math.min(target.chin, target.z1)) };
}

/** Shares of the faces, as `visibleShares` gives those of the windows: seat s and target t at `s * targets + t`. */
export function faceShares(scene: Scene): Float64Array {
  return visibleShares({ ...scene, targets: scene.targets.map(faceWindow) });
}

/** Lower, middle and upper third of the window. */
export function thirdsOf(target: Target): [Target, Target, Target] {
  const height = (target.z1 - target.z0) / 3;
  const from = (third: number): Target => ({
    ...target,
    z0: target.z0 + third * height,
    z1: third === 2 ? target.z1 : target.z0 + (third + 1) * height,
  });
  return [from(0), from(1), from(2)];
}
