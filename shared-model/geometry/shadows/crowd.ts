/**
 * The uncovered share of a window with very many shadows. The sweep of uncovered.ts grows with the square of their
 * number; so a crowded window is cut into quarters until each has few, and a quarter that one shadow covers is done.
 */

import {
  addShadow,
  createOutline,
  createShadows,
  EVERYTHING,
  type Outline,
  type Shadows,
} from './shadows.ts';
import { uncoveredShare } from './uncovered.ts';

/** The sweep copes well with as many. */
export const CROWD = 48;

/** Quarters of quarters: beyond this, what is still crowded lies on top of each other and the sweep has to do it. */
const DEEPEST = 10;

const outline = createOutline();
/** Shadows of the quarter that is looked into at each depth. */
const rooms: Shadows[] = [];

/** As `uncoveredShare`, and the same but for rounding. */
export function uncoveredInCrowd(shadows: Shadows, depth = 0): number {
  if (shadows.count <= CROWD || depth === DEEPEST) return uncoveredShare(shadows);
  const room = (rooms[depth] ??= createShadows());
  let share = 0;
  for (const u of [0, 0.5]) {
    for (const v of [0, 0.5]) {
      if (!fillQuarter(room, shadows, u, v)) share += uncoveredInCrowd(room, depth + 1) / 4;
    }
  }
  return share;
}

/** Puts the parts of all shadows that lie in a quarter into `room`. True when one of them covers it. */
function fillQuarter(room: Shadows, shadows: Shadows, u: number, v: number): boolean {
  room.count = 0;
  for (let shadow = 0; shadow < shadows.count; shadow++) {
    enlarge(outline, shadows, shadow, [u, v]);
    if (addShadow(room, outline) === EVERYTHING) return true;
  }
  return false;
}

/** The shadow in the coordinates of the quarter whose lower left corner is at (u, v). */
function enlarge(into: Outline, shadows: Shadows, shadow: number, [u, v]: readonly [number, number]): void {
  const start = shadows.starts[shadow]!;
  into.size = shadows.starts[shadow + 1]! - start;
  for (let i = 0; i < into.size; i++) {
    into.u[i] = (shadows.u[start + i]! - u) * 2;
    into.lo[i] = (shadows.lo[start + i]! - v) * 2;
    into.hi[i] = (shadows.hi[start + i]! - v) * 2;
  }
}
