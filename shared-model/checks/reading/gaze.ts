/** With what one turns to look so far to the side: the eyes, the head, or the whole body. */

import type { Degrees } from '../../document/records.ts';
import { facingTowards, type Vec2 } from '../../geometry/frame.ts';
import { SAME_POINT } from '../../geometry/tolerances.ts';

export type Turn = 'glance' | 'eyes' | 'head' | 'body';

/**
 * Greatest horizontal angle of each, to either side. Source: NUREG-0700 rev 3, 11.3.1.2-2, citing MIL-STD-1472G:
 * ±15° preferred, ±35° without turning the head, ±60° with it.
 */
export const TURN_LIMITS = { glance: 15, eyes: 35, head: 60 } as const satisfies Partial<
  Record<Turn, Degrees>
>;

/** Angles that differ by less are equal: turning a whole scene must not tip one over a limit by rounding. */
export const SAME_ANGLE: Degrees = 1e-9;

export function isBeyond(angle: Degrees, limit: Degrees): boolean {
  return angle > limit + SAME_ANGLE;
}

/** For an angle to either side; a limit itself belongs to the lesser turn. */
export function turnFor(angle: Degrees): Turn {
  const size = Math.abs(angle);
  if (!isBeyond(size, TURN_LIMITS.glance)) return 'glance';
  if (!isBeyond(size, TURN_LIMITS.eyes)) return 'eyes';
  return isBeyond(size, TURN_LIMITS.head) ? 'body' : 'head';
}

/** The facing that looks from one point to another; `otherwise` where one is straight above the other. */
export function lookFrom(from: Vec2, to: Vec2, otherwise: Degrees): Degrees {
  return Math.hypot(to.x - from.x, to.y - from.y) < SAME_POINT ? otherwise : facingTowards(from, to);
}
