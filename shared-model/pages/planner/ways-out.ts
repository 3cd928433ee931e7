/**
 * Who has no plan, and what would make one. Players who share a station are blocked together; where several such groups are
 * blocked no single change makes a plan, so each of them is told its own.
 */

import { firstWithout, untilBegun, type Without } from './first-without.ts';
import { groupsOf, type Group } from './group.ts';
import type { PlanInstance } from './instance.ts';
import { planning, type PlanProgress } from './planner.ts';
import { remedyPairsFor, type RemedyPair } from './remedy-pairs.ts';
import { remediesFor, type Remedy } from './remedies.ts';

/** Players who read together and have no plan, whatever the others do. */
export interface Blocked {
  readonly players: readonly string[];
  /** Each of them would make a plan for these players; pins by their index in the whole instance. */
  readonly remedies: readonly Remedy[];
  /** Told where no single remedy is found: changes that make a plan together. */
  readonly pairs: readonly RemedyPair[];
  /** Where it fails and why; null: not known for certain, or it is the pins that leave no plan. */
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
  const without = yield* firstWithout(withoutOthers(instance, group));
  if (remedies.length > 0) return { players, remedies, pairs: [], without };
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
