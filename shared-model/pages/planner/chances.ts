/** When somebody could turn a leaf at a station: his hand is free, and gets there. */

import type { Interval, Seconds } from '../../score/time-line.ts';
import type { SideIndex } from '../bindings/binding.ts';
import { MOMENT, type Hand, type PlanInstance, type PlanPlayer, type PlanStation } from './instance.ts';
import { joined } from './needs.ts';

/** A free stretch of a hand that is long enough for a turn. */
export interface Chance extends Interval {
  /** Index into the players. */
  readonly player: number;
  readonly hand: Hand;
  /** What the turn takes. */
  readonly seconds: Seconds;
}

/** For each station, for each side on which a leaf may lie: the chances in the order in which they begin. */
export type Chances = readonly (readonly [readonly Chance[], readonly Chance[]])[];

export function chancesOf(instance: PlanInstance): Chances {
  return instance.stations.map((station) => [
    chancesAt(instance, station, 0),
    chancesAt(instance, station, 1),
  ]);
}

function chancesAt({ players }: PlanInstance, station: PlanStation, side: SideIndex): Chance[] {
  return station.reach
    .filter((reach) => reach.side === side)
    .flatMap(({ player: id, hand, seconds }) => {
      const player = players.findIndex((candidate) => candidate.id === id);
      const owner = players[player];
      return owner ? stretchesOf(owner, hand).map((stretch) => ({ ...stretch, player, hand, seconds })) : [];
    })
    .filter(({ from, to, seconds }) => to - from >= seconds - MOMENT)
    .sort((a, b) => a.from - b.from || a.player - b.player || (a.hand < b.hand ? -1 : 1));
}

/** Where a hand is free without a break. */
export function stretchesOf(player: PlanPlayer, hand: Hand): Interval[] {
  return joined(player.free.filter(({ hands }) => hands.includes(hand)));
}

/** When a turn that may begin at `after` can be over at the earliest; Infinity: never. */
export function earliestEnd(chances: readonly Chance[], after: Seconds): Seconds {
  let earliest = Infinity;
  for (const { from, to, seconds } of chances) {
    if (from >= earliest) break;
    const end = Math.max(from, after) + seconds;
    if (end <= to + MOMENT && end < earliest) earliest = end;
  }
  return earliest;
}
