/** What an engine keeps of the scene that it has figures for. */

import type { Scene } from '../scene.ts';
import type { Backdrop } from './backdrop.ts';
import type { SeatsByBearing } from './bearings.ts';
import type { CompiledScene } from './compile-scene.ts';

export interface State {
  readonly scene: Scene;
  readonly compiled: CompiledScene;
  /** By target. */
  readonly orders: readonly SeatsByBearing[];
  readonly stretches: readonly Int32Array[];
  readonly visible: Float64Array;
  /** What is known of the scene without the records that were changed last. */
  backdrop: Backdrop | null;
}

/** Indices of the occluders that belong to one of the records. */
export function indicesOf({ occluders }: Scene, records: ReadonlySet<string>): number[] {
  return [...occluders.keys()].filter((index) => records.has(occluders[index]?.record ?? ''));
}
