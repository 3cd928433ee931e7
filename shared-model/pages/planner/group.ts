/** Players whose pages hang together because they read at the same stations, and the best that can be done for them. */

import { boundAhead } from './bound.ts';
import { countedOf, numberOf, TURN, type Counted } from './costs.ts';
import type { PlanInstance } from './instance.ts';
import {
  isStrip,
  mostCapable,
  optionsOf,
  servesAlike,
  settingKey,
  stationsIn,
  type Setting,
  type StationOption,
} from './options.ts';
import { problemOf, type Compiled, type Problem } from './problem.ts';
import { schedule } from './schedule.ts';
import { search, type Budget, type Outcome, type SearchMode } from './search.ts';
import { sketchOf, type Sketch } from './sketch.ts';
import { layoutOf } from './state.ts';

export interface Group {
  /** Indices of the players who read. */
  readonly players: ReadonlySet<number>;
  /** Indices of the stations at which they read. */
  readonly stations: readonly number[];
}

export interface Wanted {
  /** Leaves may go back. */
  readonly back?: boolean;
  readonly slots?: boolean;
  readonly anySide?: boolean;
  readonly maxPanels?: number;
  /** Only what costs less (see costs.ts). */
  readonly limit?: number;
}

export interface Answer {
  readonly found: { readonly sketch: Sketch; readonly counted: Counted } | null;
  /** Nothing costs less than this. */
  readonly bound: number;
}

/** How many states of each layer the first, quick run keeps. */
const QUICK_BEAM = 24;
/** Views of a station that are kept in mind when leaves may go back. */
const MOST_VIEWS_IN_MIND = 8;
/** Jumps weigh least: the proof that there are no fewer may take one part in so many of the states allowed. */
const SHARE_FOR_JUMPS = 4;

const NOTHING: StationOption = { kind: 'loose', turning: false, across: [] };

/** Every player with pages is in one group; who only turns is in none. */
export function groupsOf(instance: PlanInstance): Group[] {
  const groups: { players: Set<number>; stations: number[] }[] = [];
  for (const [index, { readings }] of instance.players.entries())
    if (readings.length > 0) groups.push({ players: new Set([index]), stations: [] });
  for (const [station, { sides }] of instance.stations.entries()) {
    const readers = instance.players.flatMap(({ id }, index) =>
      sides.some(({ reader }) => reader === id) ? [index] : [],
    );
    const touched = groups.filter(({ players }) => readers.some((reader) => players.has(reader)));
    const [first, ...others] = touched;
    if (!first) continue;
    first.stations.push(station, ...others.flatMap((group) => group.stations));
    for (const { players } of others) for (const player of players) first.players.add(player);
    groups.splice(0, groups.length, ...groups.filter((group) => !others.includes(group)));
  }
  return groups.map(({ players, stations }) => ({ players, stations: stations.sort((a, b) => a - b) }));
}

export class GroupSolver {
  readonly group: Group;
  readonly #compiled: Compiled;
  readonly #budget: Budget;
  readonly #jumpBudget: Budget;
  readonly #known = new Map<string, Answer>();

  constructor(compiled: Compiled, group: Group, budget: Budget) {
    this.group = group;
    this.#compiled = compiled;
    this.#budget = budget;
    this.#jumpBudget = { left: Math.floor(budget.left / SHARE_FOR_JUMPS) };
  }

  /**
   * A page comes back after others. Only then are leaves taken back: otherwise that could do no more than fill a blank,
   * which nobody would look for there.
   */
  get hasReturns(): boolean {
    const own = this.#compiled.instance.players.filter((_, index) => this.group.players.has(index));
    return own.some(({ readings }) =>
      readings.some(({ page }, index) => {
        const before = readings.findLastIndex((other, place) => place < index && other.page === page);
        return before >= 0 && before < index - 1;
      }),
    );
  }

  /** Choices of exactly `count` stations; `capable`: only with what each does best. Those that come first in order are first. */
  settings(count: number, capable: boolean): Setting[] {
    const { stations } = this.#compiled.instance;
    let settings: Setting[] = [stations.map(() => null)];
    for (const index of this.group.stations) {
      const station = stations[index];
      if (!station) continue;
      const all = optionsOf(station);
      const options = capable ? mostCapable(all) : all;
      settings = settings.flatMap((setting) => [
        ...options.map((option) => setting.with(index, option)),
        setting,
      ]);
    }
    return settings
      .filter((setting) => stationsIn(setting) === count && this.#keepsPins(setting))
      .sort((a, b) => this.#orderOf(a) - this.#orderOf(b));
  }

  /** Of stations that serve alike the first take the wider bindings: the others would do the same in another place. */
  isFirstOfTwins(setting: Setting): boolean {
    const { stations } = this.#compiled.instance;
    return this.group.stations.every((a) =>
      this.group.stations.every((b) => {
        const [first, second] = [stations[a], stations[b]];
        if (a >= b || !first || !second || this.#isPinned(a) || this.#isPinned(b)) return true;
        if (!servesAlike(first, second)) return true;
        return this.#rank(a, setting) <= this.#rank(b, setting);
      }),
    );
  }

  /** The choice with the same bindings that `isFirstOfTwins`. */
  firstOfTwins(setting: Setting): Setting {
    const { stations } = this.#compiled.instance;
    let sorted = setting;
    for (const a of this.group.stations)
      for (const b of this.group.stations) {
        const [first, second] = [stations[a], stations[b]];
        if (a >= b || !first || !second || this.#isPinned(a) || this.#isPinned(b)) continue;
        if (!servesAlike(first, second) || this.#rank(a, sorted) <= this.#rank(b, sorted)) continue;
        sorted = sorted.with(a, sorted[b] ?? null).with(b, sorted[a] ?? null);
      }
    return sorted;
  }

  /** Leaves of a ridge booklet can be lifted off either side, by whomever. */
  liftsFromBothSides(setting: Setting): boolean {
    return this.group.stations.some(
      (index) =>
        setting[index]?.kind === 'ridge' &&
        (this.#compiled.chances[index] ?? []).every((side) => side.length > 0),
    );
  }

  #rank(station: number, setting: Setting): number {
    const option = setting[station];
    const own = this.#compiled.instance.stations[station];
    if (!option || !own) return Infinity;
    return optionsOf(own).findIndex(
      ({ kind, across }) => kind === option.kind && across.join() === option.across.join(),
    );
  }

  #isPinned(index: number): boolean {
    const { pins = [], stations } = this.#compiled.instance;
    return pins.some(({ station }) => station === stations[index]?.id);
  }

  #keepsPins(setting: Setting): boolean {
    return this.group.stations.every((index) => setting[index] !== null || !this.#isPinned(index));
  }

  #orderOf(setting: Setting): number {
    return setting.reduce(
      (sum, option, index) => sum + (option ? (this.#compiled.instance.stations[index]?.order ?? 0) : 0),
      0,
    );
  }

  /** With `anySide` everybody who reaches a ridge may lift leaves off either side: as good as it can possibly get. */
  #problem(setting: Setting, anySide = false): Problem {
    const { chances } = this.#compiled;
    const merged = chances.map((sides): typeof sides => {
      const all = sides.flat().sort((a, b) => a.from - b.from);
      return [all, all];
    });
    return problemOf({ ...this.#compiled, chances: anySide ? merged : chances }, this.group.players, setting);
  }

  /** What no plan can have less of, by counting pages alone. */
  floor(setting: Setting): Counted {
    const problem = this.#problem(setting);
    const layout = layoutOf(problem, 1);
    return countedOf(boundAhead(problem, layout, new Uint16Array(layout.length), 0));
  }

  /** The cheapest plan for this choice, below the limit. */
  *solve(setting: Setting, wanted: Wanted = {}): Generator<number, Answer> {
    const key = `${settingKey(setting)} ${JSON.stringify(wanted)}`;
    const known = this.#known.get(key);
    if (known) return known;
    const answer = yield* this.#solveAnew(setting, wanted);
    this.#known.set(key, answer);
    return answer;
  }

  *#solveAnew(setting: Setting, wanted: Wanted): Generator<number, Answer> {
    const { limit = Infinity } = wanted;
    const problem = this.#problem(setting, wanted.anySide);
    if (this.#hasUnread(problem)) return { found: null, bound: Infinity };
    const layout = layoutOf(problem, 1);
    const floor = boundAhead(problem, layout, new Uint16Array(layout.length), 0);
    if (floor >= limit) return { found: null, bound: floor };
    const loose = yield* this.#twice(problem, wanted, { exact: false, limit });
    if (!loose.best) return { found: null, bound: loose.bound };
    const found = this.#made(problem, setting, loose);
    if (found) return { found, bound: loose.bound };
    const exact = yield* this.#twice(problem, wanted, { exact: true, limit });
    return {
      found: exact.best ? this.#made(problem, setting, exact) : null,
      bound: Math.max(loose.bound, exact.bound),
    };
  }

  /**
   * The cheapest plan, leaves going back only where that can save turns. A further leaf brings whatever going back would bring, unless
   * part of what is in view hangs together with it.
   */
  *fewest(setting: Setting, wanted: Wanted): Generator<number, Answer> {
    const forward = yield* this.solve(setting, wanted);
    const isWide = this.group.stations.some((index) => isStrip(setting[index] ?? NOTHING));
    if (!isWide || !this.hasReturns) return forward;
    const below = forward.found ? numberOf(forward.found.counted) : Infinity;
    const limit = Math.min(wanted.limit ?? Infinity, below);
    const back = yield* this.solve(setting, { ...wanted, back: true, limit });
    return { found: back.found ?? forward.found, bound: back.bound };
  }

  /** Somebody who reads has nowhere to read. */
  #hasUnread({ needs, places }: Problem): boolean {
    return needs.some(({ player }) => (places[player] ?? []).length === 0);
  }

  #made(problem: Problem, setting: Setting, { best }: Outcome): Answer['found'] {
    if (!best) return null;
    const sketch = sketchOf(problem, setting, best);
    const placed = schedule(sketch.stations.flatMap(({ turns }) => turns.map(({ job }) => job)));
    return typeof placed === 'string' ? null : { sketch, counted: countedOf(best.cost) };
  }

  /** A quick run that finds something, then one that finds the best or proves that there is nothing better. */
  *#twice(
    problem: Problem,
    { back = false, slots = false, maxPanels = Infinity }: Wanted,
    { exact, limit }: { readonly exact: boolean; readonly limit: number },
  ): Generator<number, Outcome> {
    const inMind = Math.floor(limit / TURN) + 1;
    const views = back ? Math.min(MOST_VIEWS_IN_MIND, inMind) : 1;
    const mode: SearchMode = { views, slots, exact, maxPanels };
    const quick = yield* search({ problem, mode, limit, beam: QUICK_BEAM, budget: this.#budget });
    const below = Math.min(limit, quick.best?.cost ?? Infinity);
    const budget = slots ? this.#jumpBudget : this.#budget;
    // With views out of mind nothing would be proved.
    const seesAll = !back || inMind <= MOST_VIEWS_IN_MIND;
    if (!seesAll) return { best: quick.best, bound: 0 };
    const whole = yield* search({ problem, mode, limit: below, beam: Infinity, budget });
    return { best: whole.best ?? quick.best, bound: whole.bound };
  }
}

/** Below which a plan has no more turns, and of panels fewer, than these. */
export function limitOf(turns: number, panels?: number): number {
  return panels === undefined ? (turns + 1) * TURN : numberOf({ turns, panels, jumps: 0 });
}
