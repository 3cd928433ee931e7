/** What keeps an instance from being planned at all. */

import { t } from '../../words/say.ts';
import type { PlanInstance, PlanPlayer, PlanStation } from './instance.ts';

/** A desk of the concert holds up to three; those who plan without one may set wider. */
const MOST_WIDE = 6;
const MOST_STATIONS = 12;
const MOST_PAGES = 999;
/** They are kept as bits. */
const MOST_TURN_PINS = 12;

/** One sentence each; empty: it can be planned. */
export function faultsOf(instance: PlanInstance): string[] {
  const { players, stations, pins = [] } = instance;
  const ids = new Set(players.map(({ id }) => id));
  const faults = [
    ...players.flatMap(playerFaults),
    ...stations.flatMap((station) => stationFaults(station, ids)),
  ];
  if (ids.size < players.length) faults.push(t`two players have the same id`);
  if (new Set(stations.map(({ id }) => id)).size < stations.length)
    faults.push(t`two stations have the same id`);
  if (stations.length > MOST_STATIONS)
    faults.push(t`${stations.length} stations; give at most ${MOST_STATIONS}`);
  for (const { station } of pins)
    if (!stations.some(({ id }) => id === station))
      faults.push(t`a pin names station ${station}, which is not there`);
  if (pins.filter(({ kind }) => kind === 'turn').length > MOST_TURN_PINS)
    faults.push(t`more than ${MOST_TURN_PINS} turns are pinned`);
  return faults;
}

function playerFaults({ id, pages, readings, free, lookAhead = 0 }: PlanPlayer): string[] {
  const faults: string[] = [];
  if (!(pages >= 0 && pages <= MOST_PAGES))
    faults.push(t`the part of ${id} has ${pages} pages; give 0 to ${MOST_PAGES}`);
  if (!(lookAhead >= 0)) faults.push(t`the look-ahead of ${id} is ${lookAhead} s`);
  if (readings.some(({ page }) => !Number.isInteger(page) || page < 1 || page > pages))
    faults.push(t`${id} reads a page that the part does not have`);
  if ([...readings, ...free].some(({ from, to }) => !(from <= to) || !Number.isFinite(to - from)))
    faults.push(t`${id} has a stretch of time that ends before it begins`);
  if (readings.some(({ from }, index) => from < (readings[index - 1]?.to ?? -Infinity) - 1e-6))
    faults.push(t`${id} reads two pages at the same time`);
  return faults;
}

function stationFaults({ id, sides, reach }: PlanStation, players: ReadonlySet<string>): string[] {
  const faults: string[] = [];
  for (const { reader, width } of sides) {
    if (reader !== null && !players.has(reader))
      faults.push(t`${reader} reads at station ${id} but does not play`);
    if (!(Number.isInteger(width) && width >= 0 && width <= MOST_WIDE))
      faults.push(t`station ${id} is ${width} pages wide; give 0 to ${MOST_WIDE}`);
  }
  if (sides.length === 2 && sides[0].reader !== null && sides[0].reader === sides[1].reader)
    faults.push(t`${sides[0].reader} cannot read on both sides of station ${id}`);
  for (const { player, seconds } of reach) {
    if (!players.has(player)) faults.push(t`${player} turns at station ${id} but does not play`);
    if (!(seconds > 0 && Number.isFinite(seconds)))
      faults.push(t`a turn at station ${id} takes ${seconds} s`);
  }
  return faults;
}
