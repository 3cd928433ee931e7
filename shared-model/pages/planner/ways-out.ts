/**
 * Who has no plan, and what would make one. Players who share a station are blocked together; where several such groups are
 * blocked no single change makes a plan, so each of them is told its own.
 */

import type { Seconds } from '../../score/time-line.ts';
import { groupsOf, type Group } from './group.ts';
import { limitsOf, MOMENT, type PlanInstance } from './instance.ts';
import { needsOf } from './needs.ts';
import { planning, type PlanProgress, type PlanResult } from './planner.ts';
import { remedyPairsFor, type RemedyPair } from './remedy-pairs.ts';
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
  /** Told where no single remedy is found: changes that make a plan together. */
  readonly pairs: readonly RemedyPair[];
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
      const own = alone(instance, group);
      const { remedies, pairs, without } = yield* told(own, group, yield* remediesFor(own));
      const players = playersOf(instance, group);
      const whole = (changes: readonly Remedy[]): Remedy[] => wholePins(instance, group, changes);
      each.push({ players, remedies: whole(remedies), pairs: pairs.map(whole), without });
    }
    return { remedies: [], blocked: each };
  }
  const remedies = yield* remediesFor(instance);
  const [group] = blocked;
  return { remedies, blocked: group ? [yield* told(instance, group, remedies)] : [] };
}

/** Indices of pins are those of `instance`. */
function* told(instance: PlanInstance, group: Group, remedies: readonly Remedy[]): Steps<Blocked> {
  const players = playersOf(instance, group);
  if (remedies.length > 0) return { players, remedies, pairs: [], without: null };
  const without = yield* firstWithout(withoutOthers(instance, group));
  const upTo = without && { at: without.at, cut: (changed: PlanInstance) => untilBegun(changed, without.at) };
  return { players, remedies, pairs: yield* remedyPairsFor(instance, upTo), without };
}

function playersOf({ players }: PlanInstance, group: Group): string[] {
  return players.flatMap(({ id }, index) => (group.players.has(index) ? [id] : []));
}

/** All others keep their hands, and read nothing. */
function withoutOthers(instance: PlanInstance, group: Group): PlanInstance {
  const players = instance.players.map((player, index) =>
    group.players.has(index) ? player : { ...player, pages: 0, readings: [] },
  );
  return { ...instance, players };
}

/** Nor have they any stations. */
function alone(instance: PlanInstance, group: Group): PlanInstance {
  return {
    ...withoutOthers(instance, group),
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
    const result = yield* briefly(untilBegun(instance, needs[middle]?.from ?? 0));
    if (result.status === 'none') [high, isProved] = [middle, result.proved];
    else low = middle + 1;
  }
  const first = needs[low];
  const player = first && instance.players[first.player]?.id;
  return first && player !== undefined && isProved ? { player, page: first.page, at: first.from } : null;
}

/** What is played until then; without pins. */
function untilBegun(instance: PlanInstance, time: Seconds): PlanInstance {
  const end = time + 4 * MOMENT;
  const players = instance.players.map((player) => ({
    ...player,
    readings: player.readings.flatMap((reading) =>
      reading.from < end ? [{ ...reading, to: Math.min(reading.to, end) }] : [],
    ),
  }));
  return { ...instance, players, pins: [] };
}

function* briefly(instance: PlanInstance): Steps<PlanResult> {
  const maxStates = Math.min(limitsOf(instance).maxStates, STATES_A_TRIAL);
  return yield* planning({ ...instance, limits: { ...instance.limits, maxStates } });
}
