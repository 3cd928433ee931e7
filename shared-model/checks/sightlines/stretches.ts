/**
 * The places in a target's order of seats from which an occluder may hide it: four numbers for each occluder of the
 * scene (see Stretches in bearings.ts), all 0 for one that never does.
 */

import { stretchesOf, wedgeOf, type SeatsByBearing, type Stretches } from './bearings.ts';
import type { CompiledScene } from './compile-scene.ts';

export function allStretches(scene: CompiledScene, target: number, seats: SeatsByBearing): Int32Array {
  const all = new Int32Array(4 * scene.occluders.count);
  for (let index = 0; index < scene.occluders.count; index++)
    placeStretches(all, scene, { target, seats, index });
  return all;
}

export interface Concern {
  readonly target: number;
  readonly seats: SeatsByBearing;
  readonly index: number;
}

/** Sets the numbers of one occluder. */
export function placeStretches(
  into: Int32Array,
  scene: CompiledScene,
  { target, seats, index }: Concern,
): void {
  const { occluders } = scene;
  const window = scene.targets[target];
  if (!window) throw new Error(`no target ${target}`);
  const stretches: Stretches = [0, 0, 0, 0];
  if (occluders.owner[index] !== window.owner && occluders.nested[index] === 0) {
    const axis = { x: window.x, y: window.y, margin: window.width / 2 };
    stretchesOf(seats, wedgeOf(occluders, index, axis), stretches);
  }
  into.set(stretches, 4 * index);
}

/** Whether the occluder may hide the target from the seat at `place`. */
export function concerns(all: Int32Array, index: number, place: number): boolean {
  const at = 4 * index;
  return (place >= all[at]! && place < all[at + 1]!) || (place >= all[at + 2]! && place < all[at + 3]!);
}
