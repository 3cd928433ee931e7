/** With turns and stations settled: the narrowest row, then the fewest panels, then the fewest jumps of the eye. */

import { countedOf, numberOf, TURN } from './costs.ts';
import { limitOf, type Answer, type GroupSolver } from './group.ts';
import type { PlanInstance } from './instance.ts';
import { widthOf, type Setting } from './options.ts';
import type { Bound } from './plan.ts';
import type { Sketch } from './sketch.ts';

export interface Settled {
  readonly stations: number;
  readonly turns: number;
  /** A plan with these, whatever the rest. */
  readonly sketch: Sketch;
}

/** The least width in front of the reader who has most with which so many turns are enough. */
export function* narrowest(
  solver: GroupSolver,
  instance: PlanInstance,
  { stations, turns, sketch }: Settled,
): Generator<number, Bound> {
  let atLeast = Infinity;
  const settings = solver
    .settings(stations, false)
    .map((setting) => ({ setting, width: widthOf(instance, setting) }));
  for (const { setting, width } of settings.sort((a, b) => a.width - b.width)) {
    if (!solver.isFirstOfTwins(setting)) continue;
    const answer = yield* solver.fewest(setting, { limit: limitOf(turns) });
    if (mayDo(answer, turns)) atLeast = Math.min(atLeast, width);
    if (answer.found) return { value: width, atLeast };
  }
  // The steps allowed are used up: what was found before has to do.
  const value = widthOf(instance, sketch.setting);
  return { value, atLeast: Math.min(atLeast, value) };
}

/** It was not shown that so many turns are too few. */
function mayDo({ bound }: Answer, turns: number): boolean {
  return bound < limitOf(turns);
}

export interface Refined {
  readonly sketch: Sketch;
  /** There are no fewer printed panels, nor jumps with that many. */
  readonly leastPanels: number;
  readonly leastJumps: number;
}

export interface RefineOrder extends Settled {
  readonly solver: GroupSolver;
  readonly instance: PlanInstance;
  readonly width: number;
}

interface Candidate {
  readonly setting: Setting;
  readonly panels: Bound;
  /** null: none was found, nor shown not to be. */
  readonly sketch: Sketch | null;
}

export function* refine(order: RefineOrder): Generator<number, Refined> {
  const { solver, instance, width, stations } = order;
  const settings = solver.settings(stations, false).filter((setting) => widthOf(instance, setting) <= width);
  const candidates: Candidate[] = [];
  for (const setting of settings) {
    const candidate = yield* fewestPanels(order, setting);
    if (candidate) candidates.push(candidate);
  }
  const cheapest = candidates
    .filter(({ sketch }) => sketch !== null)
    .reduce<Candidate | null>((so, own) => (so && so.panels.value <= own.panels.value ? so : own), null);
  const leastPanels = candidates.reduce((so, { panels }) => Math.min(so, panels.atLeast), Infinity);
  if (!cheapest) return { sketch: order.sketch, leastPanels: Math.min(leastPanels, 0), leastJumps: 0 };
  const { sketch, atLeast } = yield* fewestJumps(order, candidates, cheapest.panels.value);
  return { sketch: sketch ?? cheapest.sketch ?? order.sketch, leastPanels, leastJumps: atLeast };
}

/** null: this choice takes more turns. */
function* fewestPanels(
  { solver, turns }: RefineOrder,
  setting: Setting,
): Generator<number, Candidate | null> {
  const first = yield* forwardAnswer(solver, setting, turns);
  if (!first.found && !mayDo(first, turns)) return null;
  const floor = solver.floor(setting).panels;
  const value = first.found?.counted.panels ?? Infinity;
  const { sketch = null } = first.found ?? {};
  if (value <= floor) return { setting, sketch, panels: { value, atLeast: value } };
  if (!solver.hasReturns) {
    const atLeast = Math.max(floor, panelsShown(first.bound, turns, value));
    return { setting, sketch, panels: { value, atLeast } };
  }
  const limit = first.found ? limitOf(turns, value) : limitOf(turns);
  const back = yield* solver.solve(setting, { back: true, limit });
  const better = back.found?.counted.panels ?? value;
  const atLeast = Math.max(floor, panelsShown(back.bound, turns, better));
  return { setting, sketch: back.found?.sketch ?? sketch, panels: { value: better, atLeast } };
}

/** Of plans with so many turns none has fewer panels. */
function panelsShown(bound: number, turns: number, value: number): number {
  return bound >= turns * TURN
    ? countedOf(Math.min(bound, numberOf({ turns, panels: Math.min(value, 1e4), jumps: 0 }))).panels
    : 0;
}

/** Stations that serve alike give the same figures in any order. */
function* forwardAnswer(solver: GroupSolver, setting: Setting, turns: number): Generator<number, Answer> {
  return yield* solver.fewest(solver.firstOfTwins(setting), { limit: limitOf(turns) });
}

function* fewestJumps(
  { solver, turns }: RefineOrder,
  candidates: readonly Candidate[],
  panels: number,
): Generator<number, { sketch: Sketch | null; atLeast: number }> {
  let found: Answer['found'] = null;
  let atLeast = Infinity;
  for (const { setting, panels: own } of candidates) {
    if (own.atLeast > panels) continue;
    const limit: number = found
      ? numberOf({ turns, panels, jumps: found.counted.jumps })
      : limitOf(turns, panels + 1);
    const forward: Answer = yield* solver.solve(setting, { slots: true, limit });
    const answer: Answer = solver.hasReturns ? yield* withBack(solver, setting, forward, limit) : forward;
    found = answer.found ?? found;
    atLeast = Math.min(atLeast, jumpsShown(answer.bound, turns, panels));
  }
  return { sketch: found?.sketch ?? null, atLeast };
}

/** Leaves that go back may do with the same panels and fewer jumps. */
function* withBack(
  solver: GroupSolver,
  setting: Setting,
  forward: Answer,
  limit: number,
): Generator<number, Answer> {
  const below = Math.min(limit, forward.found ? numberOf(forward.found.counted) : Infinity);
  const back = yield* solver.solve(setting, { slots: true, back: true, limit: below });
  return { found: back.found ?? forward.found, bound: back.bound };
}

function jumpsShown(bound: number, turns: number, panels: number): number {
  const rest = bound - numberOf({ turns, panels, jumps: 0 });
  return Math.max(0, rest);
}
