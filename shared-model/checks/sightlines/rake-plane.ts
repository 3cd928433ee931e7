/** An upright plane through the house and the platform, on which rows are looked at from the side. */

import type { SeatBlock } from '../../document/records.ts';
import { facingVector, type Vec2 } from '../../geometry/frame.ts';
import { SAME_POINT } from '../../geometry/tolerances.ts';

export interface SightPlane {
  /** Where `out` is 0, in plan. */
  readonly at: Vec2;
  /** Unit vector in plan: along the plane, away from the platform. */
  readonly out: Vec2;
}

/** Through the centre line; `out` counts from the front edge. */
export const CENTRE_PLANE: SightPlane = { at: { x: 0, y: 0 }, out: { x: 0, y: -1 } };

/** Along the way the middle of a block's front row looks; `out` counts from there, so the platform lies below 0. */
export function planeOfBlock({ x, y, facing }: Pick<SeatBlock, 'x' | 'y' | 'facing'>): SightPlane {
  const ahead = facingVector(facing);
  return { at: { x, y }, out: { x: -ahead.x, y: -ahead.y } };
}

/** Through two spots in plan, with `out` from what is seen to the eye; null when they are one spot. */
export function planeThrough(eye: Vec2, seen: Vec2): SightPlane | null {
  const [dx, dy] = [eye.x - seen.x, eye.y - seen.y];
  const length = Math.hypot(dx, dy);
  if (length < SAME_POINT) return null;
  return { at: { x: seen.x, y: seen.y }, out: { x: dx / length, y: dy / length } };
}

/** A spot as somebody sees it who stands beside the plane and has the platform on his left and the house on his right. */
export interface OnPlane {
  readonly out: number;
  /** How far behind the plane it is; negative before it. */
  readonly beyond: number;
}

export function onPlane({ at, out }: SightPlane, { x, y }: Vec2): OnPlane {
  const [dx, dy] = [x - at.x, y - at.y];
  return { out: dx * out.x + dy * out.y, beyond: dy * out.x - dx * out.y };
}

/** The spot of the plane at a distance along it. */
export function spotOfPlane({ at, out }: SightPlane, distance: number): Vec2 {
  return { x: at.x + out.x * distance, y: at.y + out.y * distance };
}
