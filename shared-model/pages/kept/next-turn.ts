/** Where a further turn at a station would come: a beginning for somebody who makes a plan by hand. */

import { stretchesOf } from '../planner/chances.ts';
import { MOMENT, type Hand, type PlanInstance } from '../planner/instance.ts';
import { liftedFrom, type Plan } from '../planner/plan.ts';
import type { Seconds } from '../../score/time-line.ts';

export interface NextTurn {
  readonly player: string;
  readonly hand: Hand;
  readonly at: Seconds;
}

/**
 * After the last turn there, in the first rest of somebody who gets to the leaf that is long enough; with nobody of that
 * kind right after the last turn, by whoever reads there. Null: nobody plays at all.
 */
export function nextTurn({ players, stations }: PlanInstance, plan: Plan, station: string): NextTurn | null {
  const there = stations.find(({ id }) => id === station);
  const own = plan.stations.find((one) => one.station === station);
  const after = plan.turns
    .filter((turn) => turn.station === station)
    .reduce((latest, turn) => Math.max(latest, turn.at + turn.seconds), 0);
  const side = own ? liftedFrom(own, 'forward') : 0;
  const ways = (there?.reach ?? [])
    .filter((reach) => reach.side === side)
    .flatMap(({ player: id, hand, seconds }): NextTurn[] => {
      const player = players.find((one) => one.id === id);
      const rest =
        player &&
        stretchesOf(player, hand).find(({ from, to }) => to - Math.max(from, after) >= seconds - MOMENT);
      return rest ? [{ player: id, hand, at: Math.max(rest.from, after) }] : [];
    });
  const [first] = ways.toSorted((a, b) => a.at - b.at);
  const reader = there?.sides.find((one) => one.reader !== null)?.reader ?? players[0]?.id;
  return first ?? (reader === undefined ? null : { player: reader, hand: 'right', at: after });
}
