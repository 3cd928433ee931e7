/** Which part of a player one thing hides, and from which places: what a sentence about it names. */

import type { Occluder, Scene, SeatPoint, Target } from '../scene.ts';
import { thirdsOf } from './windows.ts';
import { visibleShares } from './visible-shares.ts';

/** Thirds of the window from below, when each is mostly hidden on average; `some` when none is. */
export type HiddenPart =
  'lower third' | 'middle' | 'upper third' | 'lower two thirds' | 'upper two thirds' | 'whole' | 'some';

export interface Hiding {
  readonly part: HiddenPart;
  /** The places from which the thing alone leaves less than the player asks for, in the order of the scene. */
  readonly from: readonly SeatPoint[];
}

/** A third is hidden when the thing covers at least this much of it, on average over the places it hides him from. */
const MOSTLY = 0.5;

/**
 * What the record alone hides of the target, as if nothing else stood there. A place counts when the record leaves it
 * less than `seesWell` (0..1) of the window. Null: the record is in nobody's way.
 */
export function hidingOf(scene: Scene, target: Target, record: string, seesWell: number): Hiding | null {
  const occluders = scene.occluders.filter((occluder) => occluder.record === record);
  const alone = visibleShares({ seats: scene.seats, targets: [target], occluders });
  const from = scene.seats.filter((_, seat) => (alone[seat] ?? 1) < seesWell);
  return from.length === 0 ? null : { part: partOf(hiddenThirds(from, target, occluders)), from };
}

type Thirds = readonly [boolean, boolean, boolean];

function hiddenThirds(seats: readonly SeatPoint[], target: Target, occluders: readonly Occluder[]): Thirds {
  const shares = visibleShares({ seats, targets: thirdsOf(target), occluders });
  const isHidden = (third: number): boolean => {
    let seen = 0;
    for (let seat = 0; seat < seats.length; seat++) seen += shares[seat * 3 + third] ?? 1;
    return 1 - seen / seats.length >= MOSTLY;
  };
  return [isHidden(0), isHidden(1), isHidden(2)];
}

function partOf([lower, middle, upper]: Thirds): HiddenPart {
  if (lower && middle) return upper ? 'whole' : 'lower two thirds';
  if (upper && middle) return 'upper two thirds';
  if (lower) return upper ? 'some' : 'lower third';
  if (middle) return 'middle';
  return upper ? 'upper third' : 'some';
}
