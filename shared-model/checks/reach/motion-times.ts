/** How long hands and feet take, in seconds, by the published tables in `published.ts`. */

import {
  CARE,
  REACH_BEYOND,
  REACH_TABLE,
  SIDESTEP,
  START,
  TMU,
  TURN_BODY,
  WALKING,
  type ReachCase,
} from './published.ts';

/** A time as it usually is, and the least and the most it may be; seconds. */
export interface Span {
  readonly usual: number;
  readonly least: number;
  readonly most: number;
}

export const NO_TIME: Span = { usual: 0, least: 0, most: 0 };

export function sumOf(...spans: readonly Span[]): Span {
  return spans.reduce(
    (sum, span) => ({
      usual: sum.usual + span.usual,
      least: sum.least + span.least,
      most: sum.most + span.most,
    }),
    NO_TIME,
  );
}

/** TMU of a reach over `distance` mm, straight between the table's rows; below the first row the first holds. */
export function reachUnits(reachCase: ReachCase, distance: number): number {
  let before = REACH_TABLE[0];
  if (!before || distance <= before.distance) return before?.[reachCase] ?? 0;
  for (const next of REACH_TABLE) {
    if (distance <= next.distance) {
      const share = (distance - before.distance) / (next.distance - before.distance);
      return before[reachCase] + (next[reachCase] - before[reachCase]) * share;
    }
    before = next;
  }
  return before[reachCase] + (distance - before.distance) * REACH_BEYOND[reachCase];
}

/** A reach with a hand: at best as if its goal never moved (case A), at most half as long again as case C. */
export function reachTime(reachCase: ReachCase, distance: number): Span {
  return {
    usual: reachUnits(reachCase, distance) * TMU,
    least: reachUnits('A', distance) * TMU,
    most: reachUnits('C', distance) * TMU * CARE,
  };
}

/** A turn of the whole body by an angle in degrees: none up to 45, one up to 135, two beyond. */
export function turnTime(angle: number): Span {
  const size = Math.abs(angle);
  const turns = size <= 45 ? 0 : size <= 135 ? 1 : 2;
  const [leading, both] = [turns * TURN_BODY.leading * TMU, turns * TURN_BODY.both * TMU];
  return { usual: both, least: leading, most: both * CARE };
}

/** One step of `length` mm: the leading foot lands, or both do. */
export function stepTime(length: number): Span {
  const beyond = Math.max(0, length - SIDESTEP.length);
  const units = ({ base, beyond: more }: { base: number; beyond: number }) => (base + more * beyond) * TMU;
  const [leading, both] = [units(SIDESTEP.leading), units(SIDESTEP.both)];
  return { usual: both, least: leading, most: both * CARE };
}

/** A walk of `distance` mm one way, with getting going. */
export function walkTime(distance: number): Span {
  const at = (start: number, speed: number) => start + walkingSeconds(distance, speed);
  return {
    usual: at(START.usual, WALKING.usual),
    least: at(START.brisk, WALKING.brisk),
    most: at(START.slow, WALKING.slow),
  };
}

/** Distance in mm at a speed in m/s. */
export function walkingSeconds(distance: number, speed: number): number {
  return distance / 1000 / speed;
}

/** A motion of the table with nothing to vary, such as getting up. */
export function motionTime(units: number): Span {
  return { usual: units * TMU, least: units * TMU, most: units * TMU * CARE };
}
