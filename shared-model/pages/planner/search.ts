/**
 * The search: needs in the order of their starts; for each the places where its reader could read it, with or without turning there
 * first. A turn is made only when a need asks for it, in the gap since its station was last needed. States that have the
 * same future are one, states that are worse in every respect than another are dropped, and so is what cannot get below the
 * best known cost. What is left is the optimum.
 *
 * Turns at one gap are taken to be possible whenever somebody could make them, without regard for other turns that the same person
 * makes: the scheduler looks at that, and when it fails the search runs again, `exact`, with the scheduler asked at every step.
 */

import { boundAhead } from './bound.ts';
import { isDominated } from './dominance.ts';
import { movesAt, type Move } from './moves.ts';
import { openJobs, type OpenJobs } from './open-jobs.ts';
import { isJump, JUMP, PANEL, TURN } from './costs.ts';
import type { Problem, ReadingPlace } from './problem.ts';
import type { Job } from './schedule.ts';
import {
  FREE,
  keyOf,
  layoutOf,
  MADE,
  POSITION,
  READY,
  sortCells,
  SPENT,
  STACK,
  keepsPlaces,
  viewSize,
  viewStart,
  NOT_SETTLED,
  type Cells,
  type Layout,
} from './state.ts';

export interface SearchMode {
  /** Leaves may go back, so views that are out of sight are kept in mind: at most this many a station; 1: they may not. */
  readonly views: number;
  /** Jumps of the eye count, so places within a view differ. */
  readonly slots: boolean;
  /** The scheduler is asked at every step. */
  readonly exact: boolean;
  /** More panels than this are not wanted. */
  readonly maxPanels: number;
}

export interface Step {
  readonly place: ReadingPlace;
  readonly slot: number;
  readonly jobs: readonly Job[];
  /** -1 for each of the jobs that takes a leaf back. */
  readonly direction: 1 | -1;
  readonly stack: number;
}

export interface Node {
  readonly cells: Cells;
  readonly cost: number;
  readonly panels: number;
  readonly parent: Node | null;
  readonly step: Step | null;
  readonly open: OpenJobs;
}

export interface Outcome {
  /** After the last need; null: nothing below the limit was found. */
  readonly best: Node | null;
  /** No plan costs less than this, nor than the limit. */
  readonly bound: number;
}

/** States that may still be looked at, by all runs together. */
export interface Budget {
  left: number;
}

export interface SearchOrder {
  readonly problem: Problem;
  readonly mode: SearchMode;
  /** Only plans that cost less. */
  readonly limit: number;
  /** States kept after each need: Infinity proves, a small number finds something quickly. */
  readonly beam: number;
  readonly budget: Budget;
}

/** Yields the share done after each need. */
export function* search(order: SearchOrder): Generator<number, Outcome> {
  const run = new Run(order);
  let layer: Node[] = [run.start()];
  for (let index = 0; index < order.problem.needs.length; index++) {
    if (order.budget.left <= 0)
      return { best: null, bound: lowest(layer, (node) => run.worthOf(node, index)) };
    layer = run.after(layer, index);
    yield (index + 1) / order.problem.needs.length;
  }
  const ends = layer.filter((node) => run.keepsPins(node));
  const best = ends.reduce<Node | null>(
    (least, node) => (least && least.cost <= node.cost ? least : node),
    null,
  );
  const whole = run.cut ? 0 : Math.min(order.limit, best?.cost ?? Infinity);
  return { best, bound: whole };
}

function lowest(nodes: readonly Node[], worth: (node: Node) => number): number {
  return nodes.reduce((least, node) => Math.min(least, worth(node)), Infinity);
}

class Run {
  /** Something was left out that might have led to a better plan. */
  cut = false;
  readonly #order: SearchOrder;
  readonly #layout: Layout;

  constructor(order: SearchOrder) {
    this.#order = order;
    this.#layout = layoutOf(order.problem, order.mode.views);
  }

  start(): Node {
    const { problem, mode } = this.#order;
    const cells = new Uint16Array(this.#layout.length);
    let panels = 0;
    for (const [station, shape] of problem.stations.entries()) {
      const base = this.#layout.bases[station] ?? 0;
      const isSettled = !shape.option.turning || shape.option.kind !== 'ridge';
      cells[base + STACK] = isSettled ? 0 : NOT_SETTLED;
      cells[base + READY] = mode.exact ? 0 : (shape.readyClass[0] ?? 0);
      cells[base + MADE] = mode.views === 1 ? 0 : 1;
      panels += this.#preset(cells, station, 0, 0);
    }
    return { cells, cost: panels * PANEL, panels, parent: null, step: null, open: [] };
  }

  keepsPins({ cells }: Node): boolean {
    return cells[this.#layout.pinBits] === 2 ** this.#order.problem.turnPins.length - 1;
  }

  worthOf(node: Node, need: number): number {
    return node.cost + boundAhead(this.#order.problem, this.#layout, node.cells, need);
  }

  /** The states after a need, from those before it. */
  after(layer: readonly Node[], index: number): Node[] {
    const { mode, beam, limit } = this.#order;
    const found = new Map<string, Node>();
    const capped = Number.isFinite(mode.maxPanels);
    for (const node of layer)
      this.#expand(node, index, (child) => {
        if (child.panels > mode.maxPanels) return;
        if (this.worthOf(child, index + 1) >= limit) return;
        const key =
          keyOf(child.cells) +
          (capped ? ` ${child.panels}` : '') +
          child.open.map((job) => jobKey(job)).join();
        const known = found.get(key);
        if (!known || known.cost > child.cost) found.set(key, child);
      });
    const nodes = [...found.values()].sort((a, b) => a.cost - b.cost);
    const kept = mode.views === 1 && !mode.slots && !mode.exact ? this.#undominated(nodes) : nodes;
    if (kept.length <= beam) return kept;
    this.cut = true;
    const worth = new Map(kept.map((node) => [node, this.worthOf(node, index + 1)]));
    return kept.sort((a, b) => (worth.get(a) ?? 0) - (worth.get(b) ?? 0)).slice(0, beam);
  }

  #undominated(nodes: readonly Node[]): Node[] {
    const kept: Node[] = [];
    const countsPanels = Number.isFinite(this.#order.mode.maxPanels);
    const shape = { problem: this.#order.problem, layout: this.#layout, countsPanels };
    for (const node of nodes) if (!isDominated(node, kept, shape)) kept.push(node);
    return kept;
  }

  #expand(node: Node, index: number, add: (child: Node) => void): void {
    const { problem } = this.#order;
    const need = problem.needs[index];
    if (!need) return;
    for (const place of problem.places[need.player] ?? []) {
      if (this.#isTwinLater(node, place.station)) continue;
      this.#fill(node, { index, place, move: null }, add);
      for (const move of movesAt({ problem, layout: this.#layout, cells: node.cells }, place, index))
        this.#fill(node, { index, place, move }, add);
    }
  }

  /** Of stations that serve alike the first is used first; where they stand matters only for jumps. */
  #isTwinLater({ cells }: Node, station: number): boolean {
    const { problem, mode } = this.#order;
    if (mode.slots || !problem.stations[station]?.afterTwin) return false;
    const untouched = mode.exact ? 0 : (problem.stations[station - 1]?.readyClass[0] ?? 0);
    return !this.#isTouched(cells, station - 1, untouched);
  }

  #isTouched(cells: Cells, station: number, untouched: number): boolean {
    const shape = this.#order.problem.stations[station];
    if (cells[(this.#layout.bases[station] ?? 0) + READY] !== untouched) return true;
    const start = viewStart(this.#layout, this.#order.problem, station, 0);
    for (let cell = start; cell < start + (shape?.offsets.at(-1) ?? 0); cell++)
      if (cells[cell] !== FREE) return true;
    return false;
  }

  /** All ways to read a need in the view that a move (or none) brings. */
  #fill(node: Node, wish: Wish, add: (child: Node) => void): void {
    const { problem, mode } = this.#order;
    const { place, index, move } = wish;
    const need = problem.needs[index];
    const shape = problem.stations[place.station];
    if (!need || !shape) return;
    const open = move ? this.#opened(node, move, place.station) : node.open;
    if (!open) return;
    const cells = move ? this.#moved(node.cells, place.station, move) : node.cells;
    const preset = move?.isNew ? this.#preset(cells, place.station, move.view, move.made) : 0;
    const current = mode.views === 1 ? 0 : (cells[(this.#layout.bases[place.station] ?? 0) + POSITION] ?? 0);
    const start = viewStart(this.#layout, problem, place.station, current);
    const [first, end] = [
      start + (shape.offsets[place.side] ?? 0),
      start + (shape.offsets[place.side + 1] ?? 0),
    ];
    const placesDiffer = mode.slots || keepsPlaces(shape);
    for (const cell of cellsFor(cells, need.page, { first, end, placesDiffer })) {
      const child = cells.slice();
      const isPrinted = child[cell] !== FREE;
      const isNewPanel = shape.option.kind !== 'ridge' || isBlank(cells, first, end);
      const panels = preset + (!isPrinted && isNewPanel ? 1 : 0);
      child[cell] = need.page;
      const jumps = mode.slots ? this.#look(child, wish, cell - first) : 0;
      this.#settle(child, wish, { cell, first, end });
      const turns = move?.jobs.length ?? 0;
      add({
        cells: child,
        cost: node.cost + turns * TURN + panels * PANEL + jumps * JUMP,
        panels: node.panels + panels,
        parent: node,
        step: {
          place,
          slot: cell - first,
          jobs: move?.jobs ?? [],
          direction: move?.direction ?? 1,
          stack: move?.stack ?? NOT_SETTLED,
        },
        open,
      });
      if (--this.#order.budget.left < 0) this.cut = true;
    }
  }

  #opened(node: Node, move: Move, station: number): OpenJobs | null {
    if (!this.#order.mode.exact) return node.open;
    const { problem } = this.#order;
    const result = openJobs(node.open, move.jobs, {
      problem,
      layout: this.#layout,
      cells: node.cells,
      station,
    });
    if (result === 'unknown') this.cut = true;
    return typeof result === 'string' ? null : result;
  }

  #moved(before: Cells, station: number, move: Move): Cells {
    const cells = before.slice();
    const base = this.#layout.bases[station] ?? 0;
    cells[base + STACK] = move.stack;
    if (this.#order.mode.views > 1) {
      cells[base + POSITION] = move.view;
      if (move.isNew) cells[base + MADE] = move.view + 1;
    } else {
      this.#moveOn(cells, station, move.jobs.length);
      // Only pins ask which view it is.
      if (this.#order.problem.stations[station]?.pins.length) cells[base + MADE] = move.made;
    }
    if (move.pin >= 0) cells[this.#layout.pinBits] = (cells[this.#layout.pinBits] ?? 0) | (1 << move.pin);
    return cells;
  }

  /** The only view that is kept loses its first places, and gets as many blank ones behind the others. */
  #moveOn(cells: Cells, station: number, turns: number): void {
    const shape = this.#order.problem.stations[station];
    if (!shape) return;
    const size = viewSize(shape);
    const start = viewStart(this.#layout, this.#order.problem, station, 0);
    const gone = Math.min(size, turns * shape.step);
    cells.copyWithin(start, start + gone, start + size);
    cells.fill(FREE, start + size - gone, start + size);
  }

  /** Prints the pages that pins ask for on a new view; returns the panels it takes. */
  #preset(cells: Cells, station: number, view: number, made: number): number {
    const shape = this.#order.problem.stations[station];
    if (!shape || shape.pins.length === 0) return 0;
    if (keepsPlaces(shape)) return this.#presetStrip(cells, station, view, made);
    const start = viewStart(
      this.#layout,
      this.#order.problem,
      station,
      this.#order.mode.views === 1 ? 0 : view,
    );
    let panels = 0;
    for (const { side, slot, page, state } of shape.pins) {
      if (state !== made) continue;
      const [first, end] = [start + (shape.offsets[side] ?? 0), start + (shape.offsets[side + 1] ?? 0)];
      if (shape.option.kind !== 'ridge' || isBlank(cells, first, end)) panels++;
      let cell = first + (slot ?? 0);
      while (slot === null && cell < end && cells[cell] !== FREE) cell++;
      if (cell < end) cells[cell] = page;
    }
    return panels;
  }

  /** Of a wide concertina also those that are pinned to another view and lie in this one, too. */
  #presetStrip(cells: Cells, station: number, view: number, made: number): number {
    const shape = this.#order.problem.stations[station];
    if (!shape) return 0;
    const kept = this.#order.mode.views === 1 ? 0 : view;
    const start = viewStart(this.#layout, this.#order.problem, station, kept);
    let panels = 0;
    for (const { state, slot, page } of shape.pins) {
      const place = (state - made) * shape.step + (slot ?? 0);
      if (place < 0 || place >= viewSize(shape) || cells[start + place] !== FREE) continue;
      cells[start + place] = page;
      panels++;
    }
    return panels;
  }

  /** The eye goes to a place; returns 1 when it has to jump. */
  #look(cells: Cells, { index, place }: Wish, slot: number): number {
    const { problem } = this.#order;
    const eye = this.#layout.eyes + (problem.needs[index]?.player ?? 0);
    const [before, now] = [cells[eye] ?? 0, place.offset + slot];
    cells[eye] = now + 1;
    const glance = { place: now, across: place.across, isSamePage: problem.isSamePage[index] ?? false };
    return before !== 0 && isJump(before - 1, glance) ? 1 : 0;
  }

  /** After the need is read: its station is needed until its end, and a page for the last time takes up its place only. */
  #settle(
    cells: Cells,
    { index, place }: Wish,
    { first, end }: { cell: number; first: number; end: number },
  ): void {
    const { problem, mode } = this.#order;
    const need = problem.needs[index];
    const base = this.#layout.bases[place.station] ?? 0;
    const until = Math.max(cells[base + READY] ?? 0, problem.endIndex[index] ?? 0);
    cells[base + READY] = mode.exact ? until : (problem.stations[place.station]?.readyClass[until] ?? until);
    if (need && problem.isLast[index]) this.#spend(cells, need.player, need.page);
    const shape = problem.stations[place.station];
    if (!mode.slots && shape && !keepsPlaces(shape)) sortCells(cells, first, end);
  }

  #spend(cells: Cells, player: number, page: number): void {
    const { problem } = this.#order;
    for (const { station, side } of problem.places[player] ?? []) {
      const shape = problem.stations[station];
      if (!shape) continue;
      const [first, end] = [shape.offsets[side] ?? 0, shape.offsets[side + 1] ?? 0];
      const placesDiffer = this.#order.mode.slots || keepsPlaces(shape);
      for (let view = 0; view < this.#layout.views; view++) {
        const start = viewStart(this.#layout, problem, station, view);
        for (let cell = start + first; cell < start + end; cell++)
          if (cells[cell] === page) cells[cell] = SPENT;
        if (!placesDiffer) sortCells(cells, start + first, start + end);
      }
    }
  }
}

interface Wish {
  /** Of the need. */
  readonly index: number;
  readonly place: ReadingPlace;
  readonly move: Move | null;
}

interface Places {
  readonly first: number;
  readonly end: number;
  readonly placesDiffer: boolean;
}

/** The page itself when it is in view, else the free places: all of them when they differ. */
function cellsFor(cells: Cells, page: number, { first, end, placesDiffer }: Places): number[] {
  const free: number[] = [];
  for (let cell = first; cell < end; cell++) {
    if (cells[cell] === page) return [cell];
    if (cells[cell] === FREE && (placesDiffer || free.length === 0)) free.push(cell);
  }
  return free;
}

function isBlank(cells: Cells, first: number, end: number): boolean {
  for (let cell = first; cell < end; cell++) if (cells[cell] !== FREE) return false;
  return true;
}

function jobKey({ station, liftedFrom, gap }: Job): string {
  return ` ${station}/${liftedFrom}/${gap.from}/${gap.to}`;
}
