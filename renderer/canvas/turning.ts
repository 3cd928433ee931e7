/** Where a turned item settles: facing something, or on a round number of degrees. */

import { facingTowards, normaliseFacing, type Vec2 } from '#model/geometry/frame.ts';
import type { Neighbour } from './snapping.ts';

export interface TurnRequest {
  readonly item: Vec2;
  /** The facing under the pointer, degrees. */
  readonly wanted: number;
  readonly neighbours: readonly Neighbour[];
}

export interface SettledTurn {
  readonly facing: number;
  /** The neighbour it faces, if that is what caught it. */
  readonly faces: string | null;
}

const CATCHES_WITHIN = 2.5;
const STEP = 5;

export function settleTurn({ item, wanted, neighbours }: TurnRequest): SettledTurn {
  let best: SettledTurn | null = null;
  let least = CATCHES_WITHIN;
  for (const neighbour of neighbours) {
    const facing = facingTowards(item, neighbour);
    const off = Math.abs(normaliseFacing(facing - wanted));
    if (off <= least) {
      best = { facing: Math.round(facing * 10) / 10, faces: neighbour.id };
      least = off;
    }
  }
  return best ?? { facing: normaliseFacing(Math.round(wanted / STEP) * STEP), faces: null };
}
