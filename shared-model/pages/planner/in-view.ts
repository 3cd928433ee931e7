/** What can be read where and when, from the plan alone. */

import type { Interval } from '../../score/time-line.ts';
import { isJump, type Glance } from './costs.ts';
import { MOMENT, type PlanInstance } from './instance.ts';
import { placesATurn, stationsIn, type Setting, type StationOption } from './options.ts';
import type { Plan, PlanCost, StationPlan, Turn } from './plan.ts';
import type { Need } from './needs.ts';

/** A page in sight of one reader, still, from one turn of its station to the next. */
export interface Sight extends Interval {
  readonly page: number;
  readonly reader: string;
  readonly station: string;
  /** Place in the reader's row, from 0 at his left. */
  readonly place: number;
  /** Pages side by side in the view. */
  readonly across: number;
}

export function sightsOf(instance: PlanInstance, plan: Plan): Sight[] {
  const offsets = rowOffsets(instance, plan);
  return plan.stations.flatMap((station) => {
    const sides = instance.stations.find(({ id }) => id === station.station)?.sides ?? [];
    return stillTimes(station, plan.turns).flatMap(({ state, from, to }) =>
      sides.flatMap(({ reader }, side) =>
        (reader === null ? [] : (station.views[side]?.[state] ?? [])).flatMap(
          (page, slot, { length: across }) => {
            const place = (offsets.get(`${station.station} ${side}`) ?? 0) + slot;
            return page === null || reader === null
              ? []
              : [{ page, reader, station: station.station, place, across, from, to }];
          },
        ),
      ),
    );
  });
}

interface Still extends Interval {
  readonly state: number;
}

/** While a leaf is in motion nothing at its station can be read. */
function stillTimes({ station }: StationPlan, turns: readonly Turn[]): Still[] {
  const own = turns.filter((turn) => turn.station === station).toSorted((a, b) => a.at - b.at);
  const still: Still[] = [];
  let [state, from] = [0, -Infinity];
  for (const turn of own) {
    still.push({ state, from, to: turn.at });
    [state, from] = [turn.toState, turn.at + turn.seconds];
  }
  return [...still, { state, from, to: Infinity }];
}

function rowOffsets(instance: PlanInstance, plan: Plan): Map<string, number> {
  const offsets = new Map<string, number>();
  for (const { id } of instance.players) {
    let row = 0;
    for (const { station, side, width } of rowSides(instance, plan, id)) {
      offsets.set(`${station} ${side}`, row);
      row += width;
    }
  }
  return offsets;
}

function rowSides(instance: PlanInstance, plan: Plan, reader: string) {
  return instance.stations
    .flatMap((station) => {
      const own = plan.stations.find((candidate) => candidate.station === station.id);
      return station.sides.flatMap((side, index) =>
        own && side.reader === reader
          ? [
              {
                station: station.id,
                side: index,
                position: side.position,
                width: own.pagesAcross[index] ?? 0,
              },
            ]
          : [],
      );
    })
    .sort((a, b) => a.position - b.position);
}

/** The sights in which a need can be met. */
export function meets({ page, start, to }: Need, reader: string, sights: readonly Sight[]): Sight[] {
  return sights.filter(
    (sight) =>
      sight.reader === reader &&
      sight.page === page &&
      sight.from <= start + MOMENT &&
      sight.to >= to - MOMENT,
  );
}

/** What a plan costs, whoever made it. Jumps: as few as its readers can do with. */
export function costOf(instance: PlanInstance, plan: Plan, needs: readonly Need[]): PlanCost {
  const sights = sightsOf(instance, plan);
  return {
    turns: plan.turns.length,
    stations: stationsIn(settingOf(instance, plan)),
    width: instance.players.reduce((most, { id }) => {
      const row = rowSides(instance, plan, id).reduce((sum, { width }) => sum + width, 0);
      return Math.max(most, row);
    }, 0),
    panels: plan.stations.reduce((sum, station) => sum + panelsOf(station), 0),
    jumps: instance.players.reduce(
      (sum, { id }, player) =>
        sum + jumpsOf(needs.filter((need) => need.player === player).map((need) => meets(need, id, sights))),
      0,
    ),
  };
}

function settingOf(instance: PlanInstance, plan: Plan): Setting {
  return instance.stations.map(({ id }): StationOption | null => {
    const own = plan.stations.find(({ station }) => station === id);
    return own ? { kind: own.kind, turning: own.leaves > 0, across: own.pagesAcross } : null;
  });
}

function panelsOf({ kind, views, pagesAcross }: StationPlan): number {
  const step = placesATurn({ kind, across: pagesAcross });
  return views
    .flatMap((states) => states.map((view, state) => (state === 0 ? view : view.slice(-step))))
    .map((view) => view.filter((page) => page !== null).length)
    .reduce((sum, pages) => sum + (kind === 'ridge' ? Math.min(1, pages) : pages), 0);
}

/** Fewest jumps of one reader: for each place he may read a need at, the fewest on the way there. */
function jumpsOf(choices: readonly (readonly Sight[])[]): number {
  let fewest = new Map<number, number>();
  let before: number | null = null;
  for (const sights of choices) {
    const page = sights[0]?.page;
    if (page === undefined) continue;
    const isSamePage = page === before;
    before = page;
    const next = new Map<number, number>();
    for (const { place, across } of sights) {
      const fewestThere = fewestTo({ place, across, isSamePage }, fewest);
      next.set(place, Math.min(fewestThere, next.get(place) ?? Infinity));
    }
    fewest = next;
  }
  if (fewest.size === 0) return 0;
  return [...fewest.values()].reduce((least, jumps) => Math.min(least, jumps), Infinity);
}

function fewestTo(glance: Glance, before: ReadonlyMap<number, number>): number {
  if (before.size === 0) return 0;
  let fewest = Infinity;
  for (const [from, jumps] of before) fewest = Math.min(fewest, jumps + (isJump(from, glance) ? 1 : 0));
  return fewest;
}
