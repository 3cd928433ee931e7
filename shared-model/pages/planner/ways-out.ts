/**
 * Who has no plan, and what would make one. Players who share a station are blocked together; where several such groups are
 * blocked no single change makes a plan, so each of them is told its own.
 */

import type { Seconds } from '../../score/time-line.ts';
import { groupsOf, type Group } from './group.ts';
import { limitsOf, MOMENT, type PlanInstance } from './instance.ts';
import { needsOf, type Need } from './needs.ts';
import { planning, type PlanProgress, type PlanResult } from './planner.ts';
import { remediesFor, STATES_A_TRIAL, type Remedy } from './remedies.ts';

/** The first page that a player has to begin without having it in view. */
export interface Without {
  readonly player: string;
  readonly page: number;
  readonly at: Seconds;
}

/** Players who read together and have no plan, whatever the others do. */
export interface Blocked {
  readonly players: readonly string[];
  /** Each of them would make a plan for these players; pins by their index in the whole instance. */
  readonly remedies: readonly Remedy[];
  /** Told where there is no remedy; null: not asked, or not known for certain. */
  readonly without: Without | null;
}

export interface WaysOut {
  /** Each of them alone would make a plan. */
  readonly remedies: readonly Remedy[];
  readonly blocked: readonly Blocked[];
}

type Steps<T> = Generator<PlanProgress, T>;

/** Of an instance without a plan. */
export function* waysOutOf(instance: PlanInstance): Steps<WaysOut> {
  const groups = groupsOf(instance);
  const blocked: Group[] = [];
  for (const group of groups)
    if (groups.length === 1 || (yield* planning(alone(instance, group))).status === 'none')
      blocked.push(group);
  if (blocked.length > 1) {
    const each: Blocked[] = [];
    for (const group of blocked) {
      const remedies = yield* remediesFor(alone(instance, group));
      each.push(yield* told(instance, group, wholePins(instance, group, remedies)));
    }
    return { remedies: [], blocked: each };
  }
  const remedies = yield* remediesFor(instance);
  const [group] = blocked;
  return { remedies, blocked: group ? [yield* told(instance, group, remedies)] : [] };
}

function* told(instance: PlanInstance, group: Group, remedies: readonly Remedy[]): Steps<Blocked> {
  const players = instance.players.flatMap(({ id }, index) => (group.players.has(index) ? [id] : []));
  const without = remedies.length > 0 ? null : yield* firstWithout(alone(instance, group));
  return { players, remedies, without };
}

/** All others keep their hands, and read nothing. */
function alone(instance: PlanInstance, group: Group): PlanInstance {
  return {
    ...instance,
    players: instance.players.map((player, index) =>
      group.players.has(index) ? player : { ...player, pages: 0, readings: [] },
    ),
    stations: group.stations.flatMap((index) => instance.stations[index] ?? []),
    pins: ownPins(instance, group).flatMap((index) => instance.pins?.[index] ?? []),
  };
}

/** Indices of the pins at the group's stations. */
function ownPins({ pins = [], stations }: PlanInstance, group: Group): number[] {
  const own = new Set(group.stations.map((index) => stations[index]?.id));
  return pins.flatMap(({ station }, index) => (own.has(station) ? [index] : []));
}

function wholePins(instance: PlanInstance, group: Group, remedies: readonly Remedy[]): Remedy[] {
  const indices = ownPins(instance, group);
  return remedies.map((remedy) =>
    remedy.kind === 'pin' ? { ...remedy, index: indices[remedy.index] ?? remedy.index } : remedy,
  );
}

/** By halving: what is played up to a page can be planned only if all that comes before it can. Pins are left out. */
function* firstWithout(instance: PlanInstance): Steps<Without | null> {
  const needs = needsOf(instance).toSorted((a, b) => a.from - b.from);
  let [low, high] = [0, needs.length];
  let isProved = false;
  while (low < high) {
    const middle = (low + high) >> 1;
    const result = yield* untilBegun(instance, needs[middle]);
    if (result.status === 'none') [high, isProved] = [middle, result.proved];
    else low = middle + 1;
  }
  const first = needs[low];
  const player = first && instance.players[first.player]?.id;
  return first && player !== undefined && isProved ? { player, page: first.page, at: first.from } : null;
}

function* untilBegun(instance: PlanInstance, need: Need | undefined): Steps<PlanResult> {
  const end = (need?.from ?? 0) + 4 * MOMENT;
  const players = instance.players.map((player) => ({
    ...player,
    readings: player.readings.flatMap((reading) =>
      reading.from < end ? [{ ...reading, to: Math.min(reading.to, end) }] : [],
    ),
  }));
  const maxStates = Math.min(limitsOf(instance).maxStates, STATES_A_TRIAL);
  return yield* planning({ ...instance, players, pins: [], limits: { ...instance.limits, maxStates } });
}
