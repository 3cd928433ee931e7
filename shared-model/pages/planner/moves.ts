/** The turns that can be made at a station before a need: one to a new view, or as many as it takes to one that was there before. */

import type { SideIndex } from '../bindings/binding.ts';
import { earliestEnd } from './chances.ts';
import { MOMENT, type TurnPin } from './instance.ts';
import type { Problem, ProblemStation, ReadingPlace } from './problem.ts';
import type { Job } from './schedule.ts';
import { MADE, NOT_SETTLED, POSITION, READY, STACK, viewSize, type Cells, type Layout } from './state.ts';

export interface Move {
  /** Of the kept views the one it leads to. */
  readonly view: number;
  /** Its number among all views of the station as far as that is kept. */
  readonly made: number;
  readonly isNew: boolean;
  readonly direction: 1 | -1;
  readonly stack: number;
  readonly jobs: readonly Job[];
  /** Index of the turn pin that it fulfils; -1: none. */
  readonly pin: number;
}

export interface Position {
  readonly problem: Problem;
  readonly layout: Layout;
  readonly cells: Cells;
}

export function movesAt(position: Position, { station }: ReadingPlace, need: number): Move[] {
  const { problem, layout, cells } = position;
  const shape = problem.stations[station];
  const before = problem.needs[need]?.start ?? 0;
  if (!shape?.option.turning) return [];
  const base = layout.bases[station] ?? 0;
  const gap = { from: problem.times[cells[base + READY] ?? 0] ?? -Infinity, to: before };
  if (gap.to <= gap.from) return [];
  const stack = cells[base + STACK] ?? 0;
  const stacks = stack === NOT_SETTLED ? [0, 1] : [stack];
  return stacks.flatMap((side) =>
    targetsOf(position, station, shape).flatMap((target) => {
      const trip = { shape, gap, stack: side, target };
      return isPossible(trip) ? [moveOf(trip, null, -1), ...pinnedMoves(trip, position)] : [];
    }),
  );
}

interface Target {
  readonly view: number;
  readonly made: number;
  readonly isNew: boolean;
  readonly distance: number;
}

function targetsOf({ layout, cells }: Position, station: number, shape: ProblemStation): Target[] {
  const base = layout.bases[station] ?? 0;
  const made = cells[base + MADE] ?? 0;
  // As many turns at once as it takes until nothing of what is in view now is left.
  const most = Math.ceil(viewSize(shape) / shape.step);
  if (layout.views === 1)
    return Array.from({ length: most }, (_, index) => {
      const distance = index + 1;
      return { view: 0, made: made + distance, isNew: true, distance };
    });
  const now = cells[base + POSITION] ?? 0;
  const count = Math.min(made + most, layout.views);
  return Array.from({ length: count }, (_, view) => ({
    view,
    made: view,
    isNew: view >= made,
    distance: view - now,
  })).filter(({ distance }) => distance !== 0);
}

interface Trip {
  readonly shape: ProblemStation;
  readonly gap: Job['gap'];
  readonly stack: number;
  readonly target: Target;
}

/** Of a ridge booklet leaves go on from the stack side and come back from the other; at a single desk all is on its only side. */
function liftedFrom({ shape, stack, target }: Trip): SideIndex {
  if (shape.option.kind !== 'ridge') return 0;
  return (target.distance > 0 ? stack : 1 - stack) as SideIndex;
}

/** One after the other, each as early as can be. */
function isPossible(trip: Trip): boolean {
  const chances = trip.shape.chances[liftedFrom(trip)];
  let time = trip.gap.from;
  for (let turn = 0; turn < Math.abs(trip.target.distance); turn++) time = earliestEnd(chances, time);
  return time <= trip.gap.to + MOMENT;
}

function moveOf(trip: Trip, pin: TurnPin | null, pinIndex: number): Move {
  const { shape, gap, stack, target } = trip;
  const side = liftedFrom(trip);
  const jobs = Array.from({ length: Math.abs(target.distance) }, (_, order): Job => {
    const chances = shape.chances[side];
    return { station: shape.index, liftedFrom: side, gap, order, pin, chances };
  });
  const { view, made, isNew, distance } = target;
  return { view, made, isNew, direction: distance > 0 ? 1 : -1, stack, jobs, pin: pinIndex };
}

/** The same turn as one that a pin asks for, by its player in its window. */
function pinnedMoves(trip: Trip, { problem, layout, cells }: Position): Move[] {
  const { shape, gap, target } = trip;
  if (Math.abs(target.distance) !== 1) return [];
  const done = cells[layout.pinBits] ?? 0;
  return problem.turnPins.flatMap((pin, index) => {
    const player = problem.instance.players.findIndex(({ id }) => id === pin.player);
    const isOpen = (done & (1 << index)) === 0 && problem.instance.stations[shape.index]?.id === pin.station;
    if (!isOpen) return [];
    const chances = shape.chances[liftedFrom(trip)].filter((chance) => chance.player === player);
    const [from, to] = [Math.max(gap.from, pin.from), Math.min(gap.to, pin.to)];
    if (earliestEnd(chances, from) > to + MOMENT) return [];
    const pinned = { ...shape, chances: [chances, chances] as const };
    return [moveOf({ ...trip, shape: pinned }, pin, index)];
  });
}
