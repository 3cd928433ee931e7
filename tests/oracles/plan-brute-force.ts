/**
 * The best plan of a tiny instance by trying everything: every choice of bindings, every place for every need, every set of
 * turns, every hand and every whole second for each turn. Times must be whole seconds. It shares with the planner what a need
 * is and which bindings there are, and nothing else.
 */

import type { PlanInstance } from '#model/pages/planner/instance.ts';
import { needsOf, type Need } from '#model/pages/planner/needs.ts';
import { optionsOf, type StationOption } from '#model/pages/planner/options.ts';

export interface BruteCost {
  readonly turns: number;
  readonly stations: number;
  readonly width: number;
  readonly panels: number;
}

/** null: there is no plan with at most `mostTurns`. */
export function bruteForce(instance: PlanInstance, mostTurns: number): BruteCost | null {
  const needs = needsOf(instance);
  for (let turns = 0; turns <= mostTurns; turns++) {
    let best: BruteCost | null = null;
    for (const setting of settings(instance))
      for (const assignment of assignments(instance, needs, setting)) {
        const found = withTurns(instance, needs, setting, assignment, turns);
        if (found && (!best || compare(found, best) < 0)) best = found;
      }
    if (best) return best;
  }
  return null;
}

type Choice = (StationOption | null)[];

function settings(instance: PlanInstance): Choice[] {
  let all: Choice[] = [[]];
  for (const station of instance.stations)
    all = all.flatMap((so) => [null, ...optionsOf(station)].map((option) => [...so, option]));
  return all;
}

function compare(a: BruteCost, b: BruteCost): number {
  return a.turns - b.turns || a.stations - b.stations || a.width - b.width || a.panels - b.panels;
}

/** Station and side for every need. */
function* assignments(
  instance: PlanInstance,
  needs: readonly Need[],
  setting: Choice,
): Generator<[number, number][]> {
  const places = needs.map(({ player }) =>
    instance.stations.flatMap(({ sides }, station) =>
      setting[station]
        ? sides.flatMap(({ reader }, side): [number, number][] =>
            reader === instance.players[player]!.id ? [[station, side]] : [],
          )
        : [],
    ),
  );
  const walk = function* (index: number, so: [number, number][]): Generator<[number, number][]> {
    if (index === needs.length) yield so;
    else for (const place of places[index]!) yield* walk(index + 1, [...so, place]);
  };
  yield* walk(0, []);
}

interface Gap {
  readonly station: number;
  readonly from: number;
  readonly to: number;
  /** Position among the needs of the station before which the turns are made. */
  readonly before: number;
}

function withTurns(
  instance: PlanInstance,
  needs: readonly Need[],
  setting: Choice,
  assignment: readonly [number, number][],
  turns: number,
): BruteCost | null {
  const gaps: Gap[] = [];
  for (const [station, option] of setting.entries()) {
    if (!option?.turning) continue;
    const own = needs.filter((_, index) => assignment[index]![0] === station);
    own.forEach((need, before) => {
      if (before === 0) return;
      const from = Math.max(...own.slice(0, before).map(({ to }) => to));
      if (from < need.start) gaps.push({ station, from, to: need.start, before });
    });
  }
  let best: BruteCost | null = null;
  for (const walk of walks(gaps.length, turns)) {
    for (const stacks of stackChoices(setting)) {
      const panels = panelsOf(needs, setting, assignment, gaps, walk);
      if (panels === null) continue;
      const cost: BruteCost = {
        turns,
        stations: setting.filter(Boolean).length,
        width: widthOf(instance, setting),
        panels,
      };
      if (best && compare(cost, best) >= 0) continue;
      if (canBeMade(instance, setting, gaps, walk, stacks)) best = cost;
    }
  }
  return best;
}

/** The planner's own rule: leaves go back only where a page comes back after others, among those who share stations. */
function mayGoBack({ players, stations }: PlanInstance, setting: Choice): boolean[] {
  const returns = (id: string): boolean => {
    const readings = players.find((player) => player.id === id)!.readings.map(({ page }) => page);
    return readings.some((page, index) => {
      const before = readings.slice(0, index).lastIndexOf(page);
      return before >= 0 && before < index - 1;
    });
  };
  const together = (id: string): string[] => {
    const found = new Set([id]);
    for (let grown = -1; grown !== found.size;) {
      grown = found.size;
      for (const { sides } of stations) {
        const readers = sides.flatMap(({ reader }) => (reader === null ? [] : [reader]));
        if (readers.some((reader) => found.has(reader))) for (const reader of readers) found.add(reader);
      }
    }
    return [...found];
  };
  return setting.map((_, station) =>
    stations[station]!.sides.some(({ reader }) => reader !== null && together(reader).some(returns)),
  );
}

/** For each gap the number of leaves taken on (or back, below 0), `turns` in all. */
function* walks(gaps: number, turns: number): Generator<number[]> {
  if (gaps === 0) {
    if (turns === 0) yield [];
    return;
  }
  for (let first = -turns; first <= turns; first++)
    for (const rest of walks(gaps - 1, turns - Math.abs(first))) yield [first, ...rest];
}

function* stackChoices(setting: Choice): Generator<number[]> {
  const ridges = setting.map((option) => option?.kind === 'ridge');
  for (let bits = 0; bits < 2 ** setting.length; bits++) {
    const stacks = setting.map((_, station) => (bits >> station) & 1);
    if (stacks.every((stack, station) => stack === 0 || ridges[station])) yield stacks;
  }
}

function panelsOf(
  needs: readonly Need[],
  setting: Choice,
  assignment: readonly [number, number][],
  gaps: readonly Gap[],
  walk: readonly number[],
): number | null {
  let panels = 0;
  for (const [station, option] of setting.entries()) {
    if (!option) continue;
    if (option.kind === 'concertina') {
      const row = concertinaPages(needs, station, assignment, gaps, walk);
      const least = row && leastPrints(row, option.across[0]!);
      if (least === null) return null;
      panels += least;
      continue;
    }
    const views = new Map<string, Set<number>>();
    let [state, place] = [0, 0];
    for (const [index, need] of needs.entries()) {
      const [own, side] = assignment[index]!;
      if (own !== station) continue;
      gaps.forEach((gap, number) => {
        if (gap.station === station && gap.before === place) state += walk[number]!;
      });
      if (state < 0) return null;
      const key = `${side} ${state}`;
      const view = views.get(key) ?? new Set<number>();
      views.set(key, view.add(need.page));
      if (view.size > option.across[side]!) return null;
      place++;
    }
    for (const view of views.values()) panels += option.kind === 'ridge' ? 1 : view.size;
  }
  return panels;
}

interface Read {
  readonly page: number;
  readonly state: number;
}

/** What is read at a station and in which state; null: leaves would go back behind the first. */
function concertinaPages(
  needs: readonly Need[],
  station: number,
  assignment: readonly [number, number][],
  gaps: readonly Gap[],
  walk: readonly number[],
): Read[] | null {
  const reads: Read[] = [];
  let state = 0;
  for (const [index, { page }] of needs.entries()) {
    if (assignment[index]![0] !== station) continue;
    gaps.forEach((gap, number) => {
      if (gap.station === station && gap.before === reads.length) state += walk[number]!;
    });
    if (state < 0) return null;
    reads.push({ page, state });
  }
  return reads;
}

/** Pages taped in a row, of which places 2s to 2s + across - 1 are seen in state s: the fewest prints with which all is read. */
function leastPrints(reads: readonly Read[], across: number): number | null {
  const row = new Map<number, number>();
  const walk = (index: number): number => {
    const read = reads[index];
    if (!read) return 0;
    let least = Infinity;
    for (let place = 2 * read.state; place < 2 * read.state + across; place++) {
      if (row.get(place) === read.page) least = Math.min(least, walk(index + 1));
      if (row.has(place)) continue;
      row.set(place, read.page);
      least = Math.min(least, 1 + walk(index + 1));
      row.delete(place);
    }
    return least;
  };
  const least = walk(0);
  return least === Infinity ? null : least;
}

function widthOf(instance: PlanInstance, setting: Choice): number {
  return Math.max(
    ...instance.players.map(({ id }) =>
      instance.stations.reduce(
        (sum, { sides }, station) =>
          sum +
          sides.reduce(
            (so, { reader }, side) => so + (reader === id ? (setting[station]?.across[side] ?? 0) : 0),
            0,
          ),
        0,
      ),
    ),
  );
}

interface Wanted {
  readonly station: number;
  readonly side: number;
  readonly from: number;
  readonly to: number;
  readonly gap: number;
}

function canBeMade(
  instance: PlanInstance,
  setting: Choice,
  gaps: readonly Gap[],
  walk: readonly number[],
  stacks: readonly number[],
): boolean {
  const back = mayGoBack(instance, setting);
  if (walk.some((leaves, index) => leaves < 0 && !back[gaps[index]!.station])) return false;
  const wanted: Wanted[] = gaps.flatMap(({ station, from, to }, gap) =>
    Array.from({ length: Math.abs(walk[gap]!) }, () => {
      const stack = stacks[station]!;
      const isRidge = setting[station]!.kind === 'ridge';
      return { station, from, to, gap, side: isRidge ? (walk[gap]! > 0 ? stack : 1 - stack) : 0 };
    }),
  );
  return place(instance, wanted, []);
}

interface Done {
  readonly player: string;
  readonly gap: number;
  readonly from: number;
  readonly to: number;
}

function place(instance: PlanInstance, wanted: readonly Wanted[], done: readonly Done[]): boolean {
  const [first, ...rest] = wanted;
  if (!first) return true;
  for (const { player, hand, side, seconds } of instance.stations[first.station]!.reach) {
    if (side !== first.side) continue;
    const owner = instance.players.find(({ id }) => id === player)!;
    for (let at = Math.max(first.from, -2); at + seconds <= first.to; at++) {
      const span = { player, gap: first.gap, from: at, to: at + seconds };
      const clash = done.some(
        (other) =>
          (other.player === player || other.gap === first.gap) &&
          other.from < span.to &&
          span.from < other.to,
      );
      if (clash || !isFree(owner.free, hand, at, at + seconds)) continue;
      if (place(instance, rest, [...done, span])) return true;
    }
  }
  return false;
}

/** Second by second. */
function isFree(
  free: PlanInstance['players'][number]['free'],
  hand: 'left' | 'right',
  from: number,
  to: number,
): boolean {
  for (let second = from; second < to; second++)
    if (
      !free.some((window) => window.hands.includes(hand) && window.from <= second && window.to >= second + 1)
    )
      return false;
  return true;
}
