/**
 * The planner: which binding at which station, which page where, which turns, when, by whom. Fewest turns; of those the fewest
 * stations; the narrowest row; the fewest printed panels; the fewest jumps of the eye. Each figure comes with a bound.
 *
 * Players who share a station are planned together, others apart; turns are then given to hands for all at once.
 */

import { assemble } from './assemble.ts';
import { chancesOf } from './chances.ts';
import { groupsOf, GroupSolver, type Group } from './group.ts';
import { limitsOf, type PlanInstance } from './instance.ts';
import { faultsOf } from './instance-faults.ts';
import { costOf } from './in-view.ts';
import { needsOf } from './needs.ts';
import { compareCosts, type Plan, type PlanCost, type Proof } from './plan.ts';
import type { Compiled } from './problem.ts';
import { narrowest, refine } from './refine.ts';
import { rowsOf, thriftyRows, type Row, type RowsFound } from './rows.ts';
import type { Budget } from './search.ts';
import type { Sketch } from './sketch.ts';

/** A plan that no other beats in turns, stations and panels at once. */
export interface Candidate {
  readonly plan: Plan;
  readonly cost: PlanCost;
  /** No plan with so many stations and no more panels has fewer turns. */
  readonly proved: boolean;
}

export type PlanResult =
  | {
      readonly status: 'planned';
      readonly plan: Plan;
      readonly cost: PlanCost;
      readonly proof: Proof;
      readonly front: readonly Candidate[];
    }
  /** `proved`: there is none; otherwise none was found in the steps allowed. */
  | { readonly status: 'none'; readonly proved: boolean }
  | { readonly status: 'faulty'; readonly faults: readonly string[] };

export interface PlanProgress {
  readonly stage: 'turns' | 'panels' | 'width' | 'jumps';
  /** States looked at so far, of those allowed. */
  readonly states: number;
  readonly allowed: number;
}

export type Planning = Generator<PlanProgress, PlanResult>;

/** Runs step by step: take the next progress as often as you like, or stop asking. */
export function* planning(instance: PlanInstance): Planning {
  const faults = faultsOf(instance);
  if (faults.length > 0) return { status: 'faulty', faults };
  const compiled: Compiled = { instance, needs: needsOf(instance), chances: chancesOf(instance) };
  const apart = yield* planGroups(compiled, groupsOf(instance));
  return apart === 'clash' ? yield* planTogether(compiled) : apart;
}

export function planNow(instance: PlanInstance): PlanResult {
  const steps = planning(instance);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** Groups got in each other's way at one person's hands: now all are one group. */
function* planTogether(compiled: Compiled): Planning {
  const groups = groupsOf(compiled.instance);
  const one: Group = {
    players: new Set(groups.flatMap(({ players }) => [...players])),
    stations: groups.flatMap(({ stations }) => stations).sort((a, b) => a - b),
  };
  const together = yield* planGroups(compiled, [one]);
  return together === 'clash' ? { status: 'none', proved: false } : together;
}

interface Work {
  readonly compiled: Compiled;
  readonly solvers: readonly GroupSolver[];
  readonly budget: Budget;
  readonly maxStations: number;
}

function* planGroups(
  compiled: Compiled,
  groups: readonly Group[],
): Generator<PlanProgress, PlanResult | 'clash'> {
  const { maxStates, maxStations } = limitsOf(compiled.instance);
  const budget: Budget = { left: maxStates };
  const solvers = groups.map((group) => new GroupSolver(compiled, group, budget));
  const work: Work = { compiled, solvers, budget, maxStations };
  const tables: RowsFound[] = [];
  for (const solver of solvers) tables.push(yield* reported(work, 'turns', rowsOf(solver, maxStations)));
  const choices = bestChoices(tables, maxStations);
  if (choices.length === 0) return { status: 'none', proved: leastOf(tables, maxStations) === Infinity };
  const best = yield* bestPlan(work, tables, choices);
  if (best === 'clash') return 'clash';
  const front = yield* frontOf(work, tables, best);
  return front === 'clash' ? 'clash' : { status: 'planned', ...best, front };
}

function* reported<T>(
  { budget, compiled }: Work,
  stage: PlanProgress['stage'],
  steps: Generator<number, T>,
): Generator<PlanProgress, T> {
  const allowed = limitsOf(compiled.instance).maxStates;
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    yield { stage, states: allowed - Math.max(0, budget.left), allowed };
  }
}

/** One row of each table, with no more stations than allowed. */
function combinations<T extends { readonly stations: number }>(
  tables: readonly (readonly T[])[],
  maxStations: number,
): T[][] {
  let chosen: T[][] = [[]];
  for (const rows of tables) chosen = chosen.flatMap((so) => rows.map((row) => [...so, row]));
  return chosen.filter((rows) => total(rows, ({ stations }) => stations) <= maxStations);
}

function total<T>(items: readonly T[], figure: (item: T) => number): number {
  return items.reduce((sum, item) => sum + figure(item), 0);
}

/** Fewest turns, then fewest stations; several when they can be shared out in more than one way. */
function bestChoices(tables: readonly RowsFound[], maxStations: number): Row[][] {
  const all = combinations(
    tables.map(({ rows }) => rows),
    maxStations,
  );
  const figure = (rows: Row[]): number =>
    total(rows, ({ turns }) => turns) * 1e3 + total(rows, ({ stations }) => stations);
  const least = all.reduce((so, rows) => Math.min(so, figure(rows)), Infinity);
  return all.filter((rows) => figure(rows) === least);
}

/** No plan has fewer turns with so many stations in all. */
function leastOf(tables: readonly RowsFound[], stations: number): number {
  const columns = tables.map(({ leastTurns }) =>
    leastTurns.map((turns, count) => ({ stations: count, turns })),
  );
  return combinations(columns, stations).reduce(
    (least, rows) =>
      Math.min(
        least,
        total(rows, ({ turns }) => turns),
      ),
    Infinity,
  );
}

type Best = Omit<Extract<PlanResult, { status: 'planned' }>, 'status' | 'front'>;

function* bestPlan(
  work: Work,
  tables: readonly RowsFound[],
  choices: readonly Row[][],
): Generator<PlanProgress, Best | 'clash'> {
  const { instance, needs } = work.compiled;
  let best: Omit<Best, 'proof'> | null = null;
  const shown: Shown[] = [];
  for (const rows of choices) {
    const { sketches, bounds } = yield* refineAll(work, rows);
    const plan = assemble(instance, needs, sketches);
    if (typeof plan === 'string') return 'clash';
    shown.push(bounds);
    const cost = costOf(instance, plan, needs);
    if (!best || isBetter(cost, best.cost)) best = { plan, cost };
  }
  if (!best) return 'clash';
  return { ...best, proof: proofOf(best.cost, tables, shown, work.maxStations) };
}

interface Shown {
  readonly width: number;
  readonly panels: number;
  readonly jumps: number;
}

function* refineAll(
  work: Work,
  rows: readonly Row[],
): Generator<PlanProgress, { sketches: Sketch[]; bounds: Shown }> {
  const { compiled, solvers } = work;
  const { instance } = compiled;
  let [width, least] = [0, 0];
  for (const [index, solver] of solvers.entries()) {
    const row = rows[index];
    if (!row) continue;
    const bound = yield* reported(work, 'width', narrowest(solver, instance, row));
    [width, least] = [Math.max(width, bound.value), Math.max(least, bound.atLeast)];
  }
  const sketches: Sketch[] = [];
  let [panels, jumps] = [0, 0];
  for (const [index, solver] of solvers.entries()) {
    const row = rows[index];
    if (!row) continue;
    const { stations, turns, sketch } = row;
    const order = { solver, instance, width, stations, turns, sketch };
    const refined = yield* reported(work, 'jumps', refine(order));
    sketches.push(refined.sketch);
    panels += refined.leastPanels;
    jumps += refined.leastJumps;
  }
  return { sketches, bounds: { width: least, panels, jumps } };
}

function isBetter(a: PlanCost, b: PlanCost): boolean {
  return compareCosts(a, b) < 0;
}

/** Once a figure has a gap the graver one may still fall, so those after it are bounded only by what is always true. */
function proofOf(
  cost: PlanCost,
  tables: readonly RowsFound[],
  shown: readonly Shown[],
  maxStations: number,
): Proof {
  const turns = leastOf(tables, maxStations);
  let stations = 1;
  while (stations < cost.stations && leastOf(tables, stations) > cost.turns) stations++;
  const least = (figure: keyof Shown): number =>
    shown.reduce((so, bounds) => Math.min(so, bounds[figure]), Infinity);
  const bounds = { turns, stations, width: least('width'), panels: least('panels'), jumps: least('jumps') };
  let open = false;
  const bound = (figure: keyof PlanCost) => {
    const atLeast = open ? 0 : Math.min(bounds[figure], cost[figure]);
    open ||= atLeast < cost[figure];
    return { value: cost[figure], atLeast };
  };
  return {
    turns: bound('turns'),
    stations: bound('stations'),
    width: bound('width'),
    panels: bound('panels'),
    jumps: bound('jumps'),
  };
}

/** The plans that none beats in turns, stations and panels at once, those with the fewest turns first. */
function* frontOf(
  work: Work,
  tables: readonly RowsFound[],
  best: Best,
): Generator<PlanProgress, Candidate[] | 'clash'> {
  const { instance, needs } = work.compiled;
  const wide: Row[][] = [];
  for (const [index, solver] of work.solvers.entries()) {
    const rows: Row[] = [];
    for (const row of tables[index]?.rows ?? [])
      rows.push(row, ...(yield* reported(work, 'panels', thriftyRows(solver, row))));
    wide.push(rows);
  }
  const isWhole = work.budget.left > 0;
  const candidates: Candidate[] = [{ plan: best.plan, cost: best.cost, proved: isWhole }];
  for (const rows of combinations(wide, work.maxStations)) {
    const plan = assemble(
      instance,
      needs,
      rows.map(({ sketch }) => sketch),
    );
    if (typeof plan === 'string') continue;
    candidates.push({ plan, cost: costOf(instance, plan, needs), proved: isWhole });
  }
  return unbeaten(candidates);
}

function unbeaten(candidates: readonly Candidate[]): Candidate[] {
  const kept: Candidate[] = [];
  for (const candidate of candidates.toSorted(
    (a, b) =>
      a.cost.turns - b.cost.turns || a.cost.stations - b.cost.stations || a.cost.panels - b.cost.panels,
  ))
    if (!kept.some(({ cost }) => isNoWorse(cost, candidate.cost))) kept.push(candidate);
  return kept;
}

function isNoWorse(a: PlanCost, b: PlanCost): boolean {
  return a.turns <= b.turns && a.stations <= b.stations && a.panels <= b.panels;
}
