/** The first page that a player has to begin without having it in view, and what is in the way of it. */

import type { Seconds } from '../../score/time-line.ts';
import type { Pass } from '../../score/words/bar-words.ts';
import { barAt, BOTH_HANDS, limitsOf, lookAheadAt, MOMENT, type PlanInstance } from './instance.ts';
import { needsOf, type Need } from './needs.ts';
import { planning, type PlanProgress, type PlanResult } from './planner.ts';
import { STATES_A_TRIAL } from './remedies.ts';

export interface Without {
  readonly player: string;
  readonly page: number;
  readonly at: Seconds;
  /** The player's own bar there; null: not known. */
  readonly bar: string | null;
  readonly pass: Pass | null;
  readonly reason: Reason;
}

/** The first of these that holds. */
export type Reason =
  /** Who is free to turn gets at no leaf there. */
  | { readonly kind: 'reach' }
  /** Whoever gets at a leaf has no hand free while nobody reads there. */
  | { readonly kind: 'hand' }
  /** So many pages have to be in view at once, and there is room for fewer. */
  | { readonly kind: 'wide'; readonly pages: number; readonly room: number }
  /**
   * From the page `since` on there is no rest of `seconds`, in which a turn and the look ahead fit; the longest is `longest`.
   * `shared`: the reader has one, and others read on at the same stands.
   */
  | {
      readonly kind: 'rest';
      readonly seconds: Seconds;
      readonly longest: Seconds;
      readonly since: number;
      readonly room: number;
      readonly shared: boolean;
    };

type Steps<T> = Generator<PlanProgress, T>;

/**
 * By halving: what is played up to a page can be planned only if all that comes before it can. Pins are left out. Null: not
 * known for certain.
 */
export function* firstWithout(instance: PlanInstance): Steps<Without | null> {
  const needs = needsOf(instance).toSorted((a, b) => a.from - b.from);
  let [low, high] = [0, needs.length];
  let isProved = false;
  while (low < high) {
    const middle = (low + high) >> 1;
    const result = yield* briefly(untilBegun(instance, needs[middle]?.from ?? 0));
    if (result.status === 'none') [high, isProved] = [middle, result.proved];
    else low = middle + 1;
  }
  const need = needs[low];
  const player = need && instance.players[need.player];
  if (!player || !isProved) return null;
  const { page, from: at } = need;
  const bar = barAt(player, at);
  const reason = yield* reasonFor(instance, need);
  return { player: player.id, page, at, bar: bar?.label ?? null, pass: bar?.pass ?? null, reason };
}

/** What is played until then; without pins. */
export function untilBegun(instance: PlanInstance, time: Seconds): PlanInstance {
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

/** Each is tried: with that alone out of the way there has to be a plan as far as that page. */
function* reasonFor(instance: PlanInstance, need: Need): Steps<Reason> {
  const cut = untilBegun(instance, need.from);
  const stations = stationsOf(instance, need);
  if (stations.every(({ reach }) => reach.length === 0)) return { kind: 'reach' };
  if ((yield* briefly(withHandsFree(cut))).status === 'planned') return { kind: 'hand' };
  if ((yield* briefly(withinReach(cut))).status === 'planned') return { kind: 'reach' };
  const own = needsOf(instance).filter(({ player }) => player === need.player);
  const room = roomOf(instance, need);
  const pages = new Set(own.filter(({ start, to }) => start <= need.start && to > need.start).map(pageOf))
    .size;
  return pages > room ? { kind: 'wide', pages, room } : restReason(instance, need, own);
}

/** At which the reader reads. */
function stationsOf({ players, stations }: PlanInstance, need: Need): PlanInstance['stations'] {
  const reader = players[need.player]?.id;
  return stations.filter(({ sides }) => sides.some((side) => side.reader === reader));
}

function roomOf(instance: PlanInstance, need: Need): number {
  const reader = instance.players[need.player]?.id;
  return stationsOf(instance, need)
    .flatMap(({ sides }) => sides.filter((side) => side.reader === reader))
    .reduce((sum, { width }) => sum + width, 0);
}

function pageOf({ page }: Need): number {
  return page;
}

function withHandsFree(instance: PlanInstance): PlanInstance {
  const to = instance.players.reduce((end, { readings }) => Math.max(end, readings.at(-1)?.to ?? 0), 0);
  const always = { from: 0, to, hands: BOTH_HANDS, silent: false };
  const players = instance.players.map((player) => ({ ...player, free: [...player.free, always] }));
  return { ...instance, players };
}

/** Everybody gets at every leaf with either hand as fast as anybody does anywhere. */
function withinReach(instance: PlanInstance): PlanInstance {
  const seconds = shortestTurn(instance.stations);
  const stations = instance.stations.map((station) => ({
    ...station,
    reach: station.sides.flatMap((_, side) =>
      instance.players.flatMap(({ id }) =>
        BOTH_HANDS.map((hand) => ({
          player: id,
          hand,
          side: side === 0 ? (0 as const) : (1 as const),
          seconds,
        })),
      ),
    ),
  }));
  return { ...instance, stations };
}

function shortestTurn(stations: PlanInstance['stations']): Seconds {
  return stations
    .flatMap(({ reach }) => reach)
    .reduce((least, { seconds }) => Math.min(least, seconds), Infinity);
}

/** `own`: all that the reader needs, in order. */
function restReason(instance: PlanInstance, need: Need, own: readonly Need[]): Reason {
  const player = instance.players[need.player];
  const run = runBefore(need, own);
  const [first = need] = run;
  const silent = (player?.free ?? []).filter(
    (window) => window.silent && window.to > first.from && window.from < need.from,
  );
  const seconds = shortestTurn(stationsOf(instance, need)) + (player ? lookAheadAt(player, need.from) : 0);
  return {
    kind: 'rest',
    seconds,
    longest: silent.reduce((most, { from, to }) => Math.max(most, to - from), 0),
    since: first.page,
    room: roomOf(instance, need),
    shared: run.length === 1 && need !== own[0],
  };
}

/** With the need itself those before it that follow one another without a gap. */
function runBefore(need: Need, own: readonly Need[]): readonly Need[] {
  const last = own.findIndex(({ from, page }) => from === need.from && page === need.page);
  let first = last;
  while (first > 0 && (own[first]?.from ?? 0) - (own[first - 1]?.to ?? 0) < MOMENT) first -= 1;
  return own.slice(first, last + 1);
}
