/** What a path through the search means for each station: its views, and the turns that are to be made between them. */

import type { PagePin } from './instance.ts';
import type { Setting } from './options.ts';
import type { Problem } from './problem.ts';
import type { Job } from './schedule.ts';
import type { Node, Step } from './search.ts';
import { NOT_SETTLED } from './state.ts';

export interface SketchedTurn {
  readonly job: Job;
  readonly fromState: number;
  readonly toState: number;
}

export interface StationSketch {
  /** Index into the instance's stations. */
  readonly index: number;
  readonly stack: 0 | 1;
  /** By state, then by side, then by place. */
  readonly views: readonly (readonly (readonly (number | null)[])[])[];
  readonly turns: readonly SketchedTurn[];
}

export interface Sketch {
  readonly setting: Setting;
  readonly stations: readonly StationSketch[];
}

export function sketchOf(problem: Problem, setting: Setting, end: Node): Sketch {
  const drafts = problem.stations.map((_, station) => new Draft(problem, station));
  for (const [index, step] of stepsTo(end).entries()) {
    const need = problem.needs[index];
    if (need) drafts[step.place.station]?.read(step, need.page, { from: need.start, to: need.to });
  }
  return { setting, stations: drafts.map((draft) => draft.sketch()) };
}

function stepsTo(end: Node): Step[] {
  const steps: Step[] = [];
  for (let node: Node | null = end; node?.step; node = node.parent) steps.push(node.step);
  return steps.reverse();
}

type Grid = (number | null)[][];

class Draft {
  readonly #problem: Problem;
  readonly #station: number;
  readonly #views: Grid[] = [];
  readonly #turns: SketchedTurn[] = [];
  #state = 0;
  #stack: 0 | 1 = 0;
  /** Nobody has needed the station since. */
  #until = -Infinity;

  constructor(problem: Problem, station: number) {
    this.#problem = problem;
    this.#station = station;
    const states = (problem.stations[station]?.pins ?? []).reduce(
      (most, { state }) => Math.max(most, state),
      0,
    );
    this.#growTo(states);
  }

  read(step: Step, page: number, needed: { readonly from: number; readonly to: number }): void {
    if (step.jobs.length > 0 && step.stack !== NOT_SETTLED) this.#stack = step.stack === 1 ? 1 : 0;
    for (const job of step.jobs) this.#turn(job, step.direction, needed.from);
    this.#print(step, page);
    this.#until = Math.max(this.#until, needed.to);
  }

  sketch(): StationSketch {
    const index = this.#problem.stations[this.#station]?.index ?? 0;
    return { index, stack: this.#stack, views: this.#views, turns: this.#turns };
  }

  #turn(job: Job, direction: 1 | -1, before: number): void {
    const fromState = this.#state;
    this.#state += direction;
    this.#growTo(this.#state);
    const gap = { from: this.#until, to: before };
    this.#turns.push({ job: { ...job, gap }, fromState, toState: this.#state });
  }

  #print({ place, slot }: Step, page: number): void {
    const view = this.#views[this.#state]?.[place.side];
    if (!view || view.includes(page)) return;
    // Where places do not matter the search keeps them sorted, so its slot may be taken by another page.
    const free = view[slot] === null ? slot : view.indexOf(null);
    if (free < 0) throw new Error('the search put more pages into a view than it holds');
    this.#put(page, { state: this.#state, side: place.side, slot: free });
  }

  #growTo(state: number): void {
    const { offsets = [], pins = [] } = this.#problem.stations[this.#station] ?? {};
    while (this.#views.length <= state) {
      const made = this.#views.length;
      this.#views.push(offsets.slice(1).map((end, side) => this.#blank(side, end - (offsets[side] ?? 0))));
      for (const pin of pins) if (pin.state === made) this.#pin(pin);
    }
  }

  /** The next view of a side: what hangs together with the last one, then blanks. */
  #blank(side: number, across: number): (number | null)[] {
    const kept = this.#views.at(-1)?.[side]?.slice(this.#step(across)) ?? [];
    return Array.from({ length: across }, (_, slot) => kept[slot] ?? null);
  }

  #pin({ state, side, slot, page }: PagePin): void {
    const place = slot ?? this.#views[state]?.[side]?.indexOf(null) ?? -1;
    if (place >= 0) this.#put(page, { state, side, slot: place });
  }

  /** In every view that shows that piece of paper. */
  #put(page: number, { state, side, slot }: { state: number; side: number; slot: number }): void {
    for (const [index, { [side]: view }] of this.#views.entries()) {
      const place = slot + (state - index) * this.#step(view?.length ?? 0);
      if (view && place >= 0 && place < view.length) view[place] = page;
    }
  }

  /** Places of a side that a turn moves its view on by. */
  #step(across: number): number {
    return Math.min(across, this.#problem.stations[this.#station]?.step ?? across);
  }
}
