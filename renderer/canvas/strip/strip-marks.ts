/** Which turn of a time strip is under the pointer. */

import type { Run } from '#model/pages/running/run.ts';
import type { Turn } from '#model/pages/planner/plan.ts';
import { STRIP } from './strip-sizes.ts';
import { pixelOf, type TimeWindow } from './time-window.ts';

export interface StripSpot {
  readonly x: number;
  /** From the top of the first lane. */
  readonly y: number;
}

export function turnNear(run: Run, window: TimeWindow, width: number, { x, y }: StripSpot): Turn | null {
  const lane = run.players[Math.floor(y / STRIP.lane)];
  let nearest: { turn: Turn; away: number } | null = null;
  for (const turn of lane?.turns ?? []) {
    const [from, to] = [turn.at, turn.at + turn.seconds].map((time) => pixelOf(window, width, time));
    const away = Math.max((from ?? 0) - x, x - (to ?? 0), 0);
    if (away <= STRIP.near && (!nearest || away < nearest.away)) nearest = { turn, away };
  }
  return nearest?.turn ?? null;
}
