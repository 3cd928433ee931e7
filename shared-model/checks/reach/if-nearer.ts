/** What bringing a thing nearer to its player, at the height it has, would do for a grip. */

import type { Millimetres, Point, Seconds } from '../../document/records.ts';

export interface IfNearer {
  /** How far it has to come, straight from its spot to the player's, so that no step is needed; null: that way it never does. */
  readonly by: Millimetres | null;
  /** What the grip takes at the least at any distance, usually; null: nobody gets to that height from his place. */
  readonly seconds: Seconds | null;
  /** He stoops for it at any distance. */
  readonly stoops: boolean;
}

/** A thing at `from` with its grip, and the player at `to` with the shoulder that gets `limit` far in plan, mm. */
export interface Approach {
  readonly from: Point;
  readonly to: Point;
  readonly grip: Point;
  readonly shoulder: Point;
  readonly limit: Millimetres;
}

/** The least move of thing and grip from `from` towards `to` that brings the grip within the limit of the shoulder. */
export function approachNeeded({ from, to, grip, shoulder, limit }: Approach): Millimetres | null {
  const way = Math.hypot(to.x - from.x, to.y - from.y);
  if (way === 0 || limit < 0) return null;
  const [ux, uy] = [(to.x - from.x) / way, (to.y - from.y) / way];
  const [dx, dy] = [grip.x - shoulder.x, grip.y - shoulder.y];
  const along = dx * ux + dy * uy;
  // |d + m u| = limit, the nearer root; negative when it is within the limit already.
  const under = along * along - (dx * dx + dy * dy) + limit * limit;
  if (under < 0) return null;
  const by = -along - Math.sqrt(under);
  return by <= way && by + 2 * Math.sqrt(under) >= 0 ? Math.max(0, by) : null;
}
