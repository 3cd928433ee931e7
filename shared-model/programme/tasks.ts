/** The pieces of work of a changeover, and which has to wait for which. */

import { isSameSpot } from './changes.ts';
import type { Pair } from './assignment.ts';
import { isInTheWay, isInTheWayInPlace, restsOn } from './hindrances.ts';
import { carriersOf, type Unit } from './units.ts';

/** `aside` and `bring` are the halves of a move that cannot be made in one go, because what it waits for waits for it. */
export type Work = 'strike' | 'set' | 'move' | 'turn' | 'aside' | 'bring';

export interface Task {
  readonly work: Work;
  /** Where it stands before and after; null: away. */
  readonly from: Unit | null;
  readonly to: Unit | null;
  /** The pair that it is part of. */
  readonly pair: Pair;
}

/** `waitsFor[i]`: indices of the tasks that have to be done before task `i` is begun. */
export interface Plan {
  readonly tasks: readonly Task[];
  readonly waitsFor: readonly (readonly number[])[];
}

export function taskOf(pair: Pair): Task {
  const { from, to } = pair;
  const work = !from ? 'set' : !to ? 'strike' : isSameSpot(from, to) ? 'turn' : 'move';
  return { work, from, to, pair };
}

/** Tasks that can all be done: where some wait for each other in a ring, one thing is put aside and brought later. */
export function planOf(pairs: readonly Pair[]): Plan {
  let tasks = pairs.map(taskOf);
  for (;;) {
    const waitsFor = waitingLists(tasks);
    const ring = ringIn(waitsFor);
    if (!ring) return { tasks, waitsFor };
    const index = lightest(ring, tasks);
    const task = tasks[index];
    if (!task) throw new Error('a ring of tasks of which none can be parted');
    tasks = [...tasks.slice(0, index), ...parted(task), ...tasks.slice(index + 1)];
  }
}

function parted({ from, to, pair }: Task): Task[] {
  return [
    { work: 'aside', from, to: null, pair },
    { work: 'bring', from: null, to, pair },
  ];
}

function waitingLists(tasks: readonly Task[]): number[][] {
  return tasks.map((task) =>
    tasks.flatMap((other, index) => (other !== task && waits(task, other) ? [index] : [])),
  );
}

function waits(task: Task, other: Task): boolean {
  if (task.work === 'bring' && other.work === 'aside' && task.pair === other.pair) return true;
  const { from, to } = task;
  // Its own old place is in nobody's way but its own.
  const isOwn = task.pair === other.pair;
  return (
    (!isOwn && to !== null && blocks(other, to)) ||
    (from !== null && other.from !== null && restsOn(other.from, from)) ||
    (to !== null && other.to !== null && restsOn(to, other.to))
  );
}

/** Whether the task has to be done before something can be set there. */
function blocks({ work, from }: Task, coming: Unit): boolean {
  if (!from) return false;
  return work === 'turn' ? isInTheWayInPlace(from, coming) : isInTheWay(from, coming);
}

/** Some tasks that wait for each other in a ring; null when there are none. */
export function ringIn(waitsFor: readonly (readonly number[])[]): number[] | null {
  const state = new Uint8Array(waitsFor.length);
  const trail: number[] = [];
  const visit = (index: number): number[] | null => {
    if (state[index] === DONE) return null;
    if (state[index] === ON_TRAIL) return trail.slice(trail.indexOf(index));
    state[index] = ON_TRAIL;
    trail.push(index);
    for (const next of waitsFor[index] ?? []) {
      const ring = visit(next);
      if (ring) return ring;
    }
    trail.pop();
    state[index] = DONE;
    return null;
  };
  for (let index = 0; index < waitsFor.length; index++) {
    const ring = visit(index);
    if (ring) return ring;
  }
  return null;
}

const [ON_TRAIL, DONE] = [1, 2];

/** What both ends of its way are known of can be parted; of those the one that one person carries. */
function lightest(ring: readonly number[], tasks: readonly Task[]): number {
  const [best] = ring
    .filter((index) => {
      const task = tasks[index];
      return task !== undefined && task.from !== null && task.to !== null;
    })
    .sort((a, b) => weightOf(tasks[a]) - weightOf(tasks[b]) || a - b);
  if (best === undefined) throw new Error('tasks that wait for each other without a thing to put aside');
  return best;
}

function weightOf(task: Task | undefined): number {
  const unit: Unit | null | undefined = task?.from;
  return unit ? carriersOf(unit) : Infinity;
}
