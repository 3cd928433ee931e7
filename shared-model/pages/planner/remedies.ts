/**
 * The smallest thing that would make a plan where there is none. Every remedy is tried: it is listed only when the planner finds
 * a plan with it. Printing a page more often is no remedy: plans do that anyway where it helps.
 */

import type { Seconds } from '../../score/time-line.ts';
import type { Pass } from '../../score/words/bar-words.ts';
import {
  barAt,
  BOTH_HANDS,
  limitsOf,
  lookAheadAt,
  type PlanInstance,
  type PlanPlayer,
  type PlanStation,
} from './instance.ts';
import { needsOf } from './needs.ts';
import { planning, type PlanProgress } from './planner.ts';

export type Remedy =
  /** The player rests from `at` on, where his page ends. */
  | {
      readonly kind: 'rest';
      readonly player: string;
      readonly at: Seconds;
      readonly seconds: Seconds;
      readonly afterPage: number;
      /** The bar it begins with, and which time through it; left out: the player has no bars. */
      readonly bar?: string;
      readonly pass?: Pass;
    }
  /** The station holds one page more before each reader. */
  | { readonly kind: 'wider'; readonly station: string; readonly pages: number }
  /** One more station like this one. */
  | { readonly kind: 'station'; readonly like: string }
  /** The pin lets go. */
  | { readonly kind: 'pin'; readonly index: number };

/** Of a desk in a concert. */
const MOST_WIDE = 3;
/** A trial need not be the best plan, so it is not given long. */
export const STATES_A_TRIAL = 50_000;

/** Remedies that do by themselves: pins let go, rests (the shortest first), wider stations, one station more. */
export function* remediesFor(instance: PlanInstance): Generator<PlanProgress, Remedy[]> {
  const found: Remedy[] = [];
  for (const trials of TRIALS)
    for (const [remedy, changed] of trials(instance)) {
      const helps = yield* hasPlan(changed);
      if (helps) found.push(remedy);
      // Of rests only the shortest that do are of interest; they come in order.
      if (helps && remedy.kind === 'rest') break;
    }
  return found;
}

/** A change, and the instance with it. */
export type Trial = readonly [Remedy, PlanInstance];

/** One kind of change each. */
export const TRIALS: readonly ((instance: PlanInstance) => Trial[])[] = [
  (instance) => pinRemedies(instance),
  (instance) => restRemedies(instance),
  (instance) => wideRemedies(instance),
  (instance) => stationRemedies(instance),
];

function* hasPlan(instance: PlanInstance): Generator<PlanProgress, boolean> {
  const { maxStates } = limitsOf(instance);
  const limits = { ...instance.limits, maxStates: Math.min(maxStates, STATES_A_TRIAL) };
  const result = yield* planning({ ...instance, limits });
  return result.status === 'planned';
}

function pinRemedies(instance: PlanInstance): Trial[] {
  const { pins = [] } = instance;
  return pins.map((_, index): Trial => [
    { kind: 'pin', index },
    { ...instance, pins: pins.filter((__, other) => other !== index) },
  ]);
}

/** Where a page ends and the next begins without a rest: one just long enough to turn and to look ahead. */
function restRemedies(instance: PlanInstance): Trial[] {
  const needs = needsOf(instance);
  const shortest = instance.stations
    .flatMap(({ reach }) => reach)
    .reduce((least, { seconds }) => Math.min(least, seconds), Infinity);
  if (!Number.isFinite(shortest)) return [];
  return instance.players
    .flatMap((player, index) => {
      const own = needs.filter((need) => need.player === index);
      return own.slice(0, -1).flatMap((need, place) => {
        const next = own[place + 1];
        if (!next || next.page === need.page) return [];
        const seconds = shortest + lookAheadAt(player, need.to);
        return [restAfter(instance, { index, at: need.to, seconds, afterPage: need.page })];
      });
    })
    .sort(([a], [b]) => (a.kind === 'rest' && b.kind === 'rest' ? a.seconds - b.seconds || a.at - b.at : 0));
}

interface Rest {
  readonly index: number;
  readonly at: Seconds;
  readonly seconds: Seconds;
  readonly afterPage: number;
}

function restAfter(instance: PlanInstance, { index, at, seconds, afterPage }: Rest): Trial {
  const rest = { from: at, to: at + seconds, hands: BOTH_HANDS, silent: true };
  const players = instance.players.map((player, place) =>
    place === index ? { ...player, free: [...player.free, rest] } : player,
  );
  const player = instance.players[index]?.id ?? '';
  return [
    { kind: 'rest', player, at, seconds, afterPage, ...barOf(instance.players[index], at) },
    { ...instance, players },
  ];
}

function barOf(player: PlanPlayer | undefined, at: Seconds): { readonly bar?: string; readonly pass?: Pass } {
  const found = player && barAt(player, at);
  if (!found) return {};
  return { bar: found.label, ...(found.pass ? { pass: found.pass } : {}) };
}

function wideRemedies(instance: PlanInstance): Trial[] {
  return instance.stations.flatMap((station, index): Trial[] => {
    const wider = widened(station);
    const pages = Math.max(wider.sides[0].width, wider.sides[1]?.width ?? 0);
    if (wider.sides.every(({ width }, side) => width === station.sides[side]?.width)) return [];
    return [
      [
        { kind: 'wider', station: station.id, pages },
        { ...instance, stations: instance.stations.with(index, wider) },
      ],
    ];
  });
}

function widened(station: PlanStation): PlanStation {
  const wider = (side: PlanStation['sides'][0]) => ({ ...side, width: Math.min(MOST_WIDE, side.width + 1) });
  const [first, second] = station.sides;
  return { ...station, sides: second ? [wider(first), wider(second)] : [wider(first)] };
}

function stationRemedies(instance: PlanInstance): Trial[] {
  const { maxStations } = limitsOf(instance);
  const order = instance.stations.reduce((most, station) => Math.max(most, station.order), 0) + 1;
  return instance.stations.map((station): Trial => {
    const more = { ...station, id: furtherId(instance, station.id), order };
    const limits = { ...instance.limits, maxStations: maxStations + 1 };
    return [
      { kind: 'station', like: station.id },
      { ...instance, stations: [...instance.stations, more], limits },
    ];
  });
}

function furtherId({ stations }: PlanInstance, like: string): string {
  const id = `${like}+`;
  return stations.some((station) => station.id === id) ? furtherId({ players: [], stations }, id) : id;
}
