/** How far a turn of a plan could be moved about: nobody needs its station, and the hand is free. */

import type { Interval } from '../../score/time-line.ts';
import { stretchesOf } from '../planner/chances.ts';
import { MOMENT, type Hand, type PlanInstance, type PlanPlayer } from '../planner/instance.ts';
import { meets, type Sight } from '../planner/in-view.ts';
import type { Need } from '../planner/needs.ts';
import type { PlanView } from '../planner/plan.ts';

export interface WindowQuestion {
  readonly instance: PlanInstance;
  readonly needs: readonly Need[];
  readonly sights: readonly Sight[];
  readonly turner: PlanPlayer;
  readonly hand: Hand;
  readonly span: Interval;
  readonly station: string;
  /** What each side shows before and after it. */
  readonly around: readonly (readonly PlanView[])[];
}

/** Ends where it begins when the hand is not free at that time. */
export function turnWindow(question: WindowQuestion): Interval {
  const { turner, hand, span } = question;
  const free = stretchesOf(turner, hand).find(
    ({ from, to }) => from <= span.from + MOMENT && to > span.from + MOMENT,
  );
  if (!free) return { from: span.from, to: span.from };
  const needs = needsThere(question);
  const before = needs.filter(({ start }) => start < span.from - MOMENT);
  const after = needs.filter(({ start }) => start >= span.from - MOMENT);
  return {
    from: before.reduce((latest, { to }) => Math.max(latest, to), free.from),
    to: after.reduce((earliest, { start }) => Math.min(earliest, start), free.to),
  };
}

/** What is read from the station and nowhere else; also what the turn itself takes out of view. */
function needsThere({ instance, needs, sights, station, around }: WindowQuestion): Need[] {
  const sides = instance.stations.find(({ id }) => id === station)?.sides ?? [];
  return needs.filter((need) => {
    const reader = instance.players[need.player]?.id ?? '';
    const side = sides.findIndex((one) => one.reader === reader);
    if (side < 0) return false;
    const met = meets(need, reader, sights);
    if (met.length > 0) return met.every((sight) => sight.station === station);
    return around.some((views) => views[side]?.includes(need.page));
  });
}
