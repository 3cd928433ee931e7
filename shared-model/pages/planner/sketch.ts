/** What a path through the search means for each station: its views, and the turns that are to be made between them. */

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
    view[free] = page;
  }

  #growTo(state: number): void {
    const { offsets = [], pins = [] } = this.#problem.stations[this.#station] ?? {};
    while (this.#views.length <= state) {
      const made = this.#views.length;
      const sides: Grid = offsets
        .slice(1)
        .map((end, side) => Array.from({ length: end - (offsets[side] ?? 0) }, () => null));
      for (const pin of pins) if (pin.state === made) pinPage(sides[pin.side], pin.slot, pin.page);
      this.#views.push(sides);
    }
  }
}

function pinPage(view: (number | null)[] | undefined, slot: number | null, page: number): void {
  const place = slot ?? view?.indexOf(null) ?? -1;
  if (view && place >= 0 && place < view.length) view[place] = page;
}
