/**
 * How far away, in plan, a point may be from a shoulder joint and still be got to by the hand.
 *
 * The arm is a sphere about the shoulder joint. To lean is to tip the trunk about the waist towards the point, by any angle up
 * to a greatest one, with the shoulder pushed forward. To stoop is to bring the shoulder straight down. Something that
 * is nearer than a posture's limit counts as reached: to be too near is never to be too far.
 */

import { radians } from '../../geometry/frame.ts';
import { SHOULDER_PUSH, STOOPED_SHOULDERS } from './published.ts';

/** All in mm; heights above the floor that the feet are on. */
export interface Arm {
  readonly length: number;
  readonly shoulderHeight: number;
  readonly waistHeight: number;
}

/** Greatest distance in plan of a point at `height` that the arm alone reaches; null: none at that height. */
export function armLimit(arm: Arm, height: number): number | null {
  return sideOf(arm.length, arm.shoulderHeight - height);
}

/** The same with the shoulder pushed forward and the trunk leaning by up to `lean` degrees. */
export function leanLimit(arm: Arm, height: number, lean: number): number | null {
  const trunk = arm.shoulderHeight - arm.waistHeight;
  const length = arm.length + SHOULDER_PUSH;
  const limit = radians(lean);
  const overWaist = height - arm.waistHeight;
  if (overWaist > trunk + length) return null;
  // Farthest of all is trunk and arm in one line, if so much lean is allowed; the reach grows up to there.
  const straight = Math.acos(Math.max(-1, overWaist / (trunk + length)));
  if (straight <= limit) return sideOf(trunk + length, overWaist);
  const shoulder = arm.waistHeight + trunk * Math.cos(limit);
  const side = sideOf(length, shoulder - height);
  return side === null ? null : trunk * Math.sin(limit) + side;
}

/** The same by stooping or squatting, for points below the shoulder. */
export function stoopLimit(arm: Arm, height: number): number | null {
  const shoulder = Math.max(Math.min(height, arm.shoulderHeight), STOOPED_SHOULDERS);
  if (shoulder > arm.shoulderHeight) return armLimit(arm, height);
  return sideOf(arm.length, shoulder - height);
}

/** The other side of a right triangle; null when `side` is longer than the hypotenuse. */
function sideOf(hypotenuse: number, side: number): number | null {
  const squared = hypotenuse * hypotenuse - side * side;
  return squared < 0 ? null : Math.sqrt(squared);
}
