/** The first step out of a player's own place, where a squeeze past his own stand or a neighbour will do. */

import type { Vec2 } from '../../geometry/frame.ts';
import type { Disc, Narrow } from './way-graph.ts';

/** So far from the player's axis things may be close. Common practice, no source. */
export const FIRST_STEP = 600;
/** A person still gets through sideways. Common practice, no source. */
export const SQUEEZE = 300;

/** Whose first step it is. */
export interface Start {
  readonly spot: Vec2;
  /** Owners of what is not in his way: he himself, and whatever he is in the middle of. */
  readonly free: ReadonlySet<string>;
  /** Width that will do within the first step. */
  readonly squeeze: number;
}

export function isInFirstStep(point: Vec2, spot: Vec2): boolean {
  return Math.hypot(point.x - spot.x, point.y - spot.y) <= FIRST_STEP;
}

/** A way between two discs through a gap. */
export interface WayThrough {
  readonly narrow: Narrow;
  /** Either site of the gap: every point of the way is as far from the one as from the other. */
  readonly site: Vec2;
  readonly ends: readonly [Disc, Disc];
}

/** How wide a way has to be taken for: within the first step a squeeze will do, beyond it its own width counts. */
export function widthFrom({ spot, squeeze }: Start, { narrow, site, ends }: WayThrough): number {
  if (!isInFirstStep(narrow.at, spot) || narrow.width < squeeze) return narrow.width;
  return ends.reduce((least, end) => {
    if (isInFirstStep(end, spot)) return least;
    const border = onBorder(spot, narrow.at, end);
    return Math.min(least, 2 * Math.hypot(border.x - site.x, border.y - site.y));
  }, Infinity);
}

/** Where the line from a point within the first step to one beyond it crosses the border. */
function onBorder(spot: Vec2, inner: Vec2, outer: Vec2): Vec2 {
  const [dx, dy] = [outer.x - inner.x, outer.y - inner.y];
  const [ox, oy] = [inner.x - spot.x, inner.y - spot.y];
  const squared = dx * dx + dy * dy;
  const along = dx * ox + dy * oy;
  const root = Math.sqrt(along * along - squared * (ox * ox + oy * oy - FIRST_STEP * FIRST_STEP));
  const share = (root - along) / squared;
  return { x: inner.x + share * dx, y: inner.y + share * dy };
}
