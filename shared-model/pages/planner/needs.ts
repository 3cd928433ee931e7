/**
 * When a page has to be in view. A reading is cut where its player is silent for so long that a leaf could be turned
 * meanwhile: he rests, so he needs no page until the look-ahead before he comes in again. A shorter rest does not take his
 * eyes off the page. A page that is all rests is needed at no time.
 */

import type { Interval, Seconds } from '../../score/time-line.ts';
import { lookAheadAt, MOMENT, type PlanInstance, type PlanPlayer } from './instance.ts';

export interface Need {
  /** Index into the players. */
  readonly player: number;
  readonly page: number;
  /** From here on it must be in view: the look-ahead before `from`. */
  readonly start: Seconds;
  /** From here to `to` it is read. */
  readonly from: Seconds;
  readonly to: Seconds;
}

/** Of all players, in the order of their starts. */
export function needsOf(instance: PlanInstance): Need[] {
  const shortest = shortestTurn(instance);
  return instance.players
    .flatMap((player, index) => needsOfPlayer(player, index, shortest))
    .sort((a, b) => a.start - b.start || a.player - b.player || a.from - b.from);
}

function shortestTurn({ stations }: PlanInstance): Seconds {
  return stations.reduce(
    (least, { reach }) => reach.reduce((so, { seconds }) => Math.min(so, seconds), least),
    Infinity,
  );
}

function needsOfPlayer(player: PlanPlayer, index: number, shortest: Seconds): Need[] {
  const rests = joined(player.free.filter(({ silent }) => silent)).filter(
    ({ from, to }) => to - from >= shortest + lookAheadAt(player, to) - MOMENT,
  );
  const needs: Need[] = [];
  for (const { page, from, to } of player.readings)
    for (const piece of without({ from, to }, rests)) {
      const last = needs.at(-1);
      if (last && last.page === page && piece.from - last.to < MOMENT)
        needs[needs.length - 1] = { ...last, to: piece.to };
      else needs.push({ player: index, page, start: piece.from - lookAheadAt(player, piece.from), ...piece });
    }
  return needs;
}

/** The union of intervals as disjoint ones, in order. */
export function joined(intervals: readonly Interval[]): Interval[] {
  const union: Interval[] = [];
  for (const { from, to } of intervals.toSorted((a, b) => a.from - b.from)) {
    const last = union.at(-1);
    if (last && from - last.to < MOMENT)
      union[union.length - 1] = { from: last.from, to: Math.max(last.to, to) };
    else union.push({ from, to });
  }
  return union;
}

/** What is left of an interval when disjoint ones, in order, are taken out. */
function without(interval: Interval, taken: readonly Interval[]): Interval[] {
  const left: Interval[] = [];
  let { from } = interval;
  for (const gap of taken) {
    if (gap.to <= from || gap.from >= interval.to) continue;
    if (gap.from - from > MOMENT) left.push({ from, to: gap.from });
    from = gap.to;
  }
  if (interval.to - from > MOMENT) left.push({ from, to: interval.to });
  return left;
}
