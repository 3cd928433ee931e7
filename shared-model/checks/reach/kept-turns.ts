/** Who turns by a page plan that is kept: with one, nobody has to turn anything else. */

import type { Id } from '../../document/ids.ts';
import type { KeptTurn } from '../../document/kept-plan.ts';
import type { PagePlanRecord } from '../../document/records.ts';

/** Who turns leaves that lie on a side of a stand before they are turned, each once. */
export function turnersOn(
  { stations, turns }: PagePlanRecord,
  stand: Id<'stand'>,
  side: 0 | 1,
): Id<'player'>[] {
  const station = stations.find((own) => own.station === stand);
  if (!station) return [];
  const sideOf = ({ fromState, toState }: KeptTurn): number =>
    station.kind !== 'ridge' ? 0 : toState > fromState ? station.stackSide : 1 - station.stackSide;
  return [
    ...new Set(
      turns.filter((turn) => turn.station === stand && sideOf(turn) === side).map(({ player }) => player),
    ),
  ];
}
