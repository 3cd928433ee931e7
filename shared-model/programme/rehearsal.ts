/** The best of a few orders, each played through with what stands at every moment. */

import { isHindered, isRolledOverStep, waitsThatClear } from './clearing.ts';
import { standingOf, unitsStanding } from './moments.ts';
import { performed, type Performance } from './performing.ts';
import { pieceOf, stopsOf, type Piece } from './pieces.ts';
import { routeAgain } from './routing.ts';
import { ordersFor, type Job, type Walk } from './schedule.ts';
import type { Plan } from './tasks.ts';
import type { Unit } from './units.ts';
import type { CarryingFloor } from './ways/carrying.ts';

export interface Rehearsal {
  readonly plan: Plan;
  /** By task: with the way past nothing but what stays. */
  readonly pieces: readonly Piece[];
  readonly walk: Walk;
  /** What nobody touches. */
  readonly staying: readonly Unit[];
  readonly floor: CarryingFloor;
}

interface Rehearsed extends Performance {
  readonly jobs: readonly Job[];
  readonly waitsFor: Plan['waitsFor'];
}

/** So many orders are played through, and then as often one with further waits while a thing is shut in. */
const [ORDERS, FURTHER] = [2, 2];

/** First that everything has a way, then that nothing is rolled over a step, then the end: that no other order does better is not promised. */
export function bestPerformance(rehearsal: Rehearsal): Rehearsed {
  let best: Rehearsed | null = null;
  let { waitsFor } = rehearsal.plan;
  for (let round = 0; round <= FURTHER; round++) {
    const found = bestWith(rehearsal, waitsFor, round === 0 ? ORDERS : 1);
    if (!best || isBetter(found, best)) best = found;
    if (hinderedIn(best, rehearsal) === 0) break;
    const more = waitsThatClear({ ...rehearsal, tasks: rehearsal.plan.tasks, waitsFor }, found);
    if (countOf(more) === countOf(waitsFor)) break;
    waitsFor = more;
  }
  if (!best) throw new Error('no order was played through');
  return best;
}

function bestWith(rehearsal: Rehearsal, waitsFor: Plan['waitsFor'], orders: number): Rehearsed {
  const jobs = jobsOf(rehearsal.pieces, waitsFor);
  const { walk } = rehearsal;
  const pieceAt = pieceAtMoments(rehearsal);
  const [first, ...rest] = ordersFor(jobs, walk)
    .slice(0, orders)
    .map((order): Rehearsed => {
      const played = performed(order, { jobs, walk, pieceAt });
      return { ...played, jobs: jobsOf(played.pieces, waitsFor), waitsFor };
    });
  if (!first) throw new Error('no rule of preference');
  return rest.reduce((best, next) => (isBetter(next, best) ? next : best), first);
}

function jobsOf(pieces: readonly Piece[], waitsFor: Plan['waitsFor']): Job[] {
  return pieces.map(({ crew, time }, index) => ({
    ...{ crew, time },
    ...stopsOf(index),
    waitsFor: waitsFor[index] ?? [],
  }));
}

/** What is done in place has no way; all else finds one among what stands. */
function pieceAtMoments({ plan: { tasks }, pieces, staying, floor }: Rehearsal) {
  return (index: number, begun: ReadonlySet<number>): Piece => {
    const [task, piece] = [tasks[index], pieces[index]];
    if (!task || !piece) throw new Error(`no task ${index}`);
    if (task.work === 'turn') return piece;
    const units = unitsStanding(staying, tasks, { task: index, begun });
    return pieceOf(task, routeAgain(task, piece.storage, floor.pastOnce(standingOf(units))));
  };
}

function isBetter(a: Rehearsed, b: Rehearsed): boolean {
  const [shutA, shutB] = [shutIn(a), shutIn(b)];
  if (shutA !== shutB) return shutA < shutB;
  const [overA, overB] = [rolledOverSteps(a), rolledOverSteps(b)];
  return overA === overB ? endOf(a) < endOf(b) - 1e-6 : overA < overB;
}

function hinderedIn({ pieces }: Performance, { pieces: open }: Rehearsal): number {
  return pieces.filter((piece, job) => {
    const free = open[job];
    return free !== undefined && isHindered(piece, free);
  }).length;
}

function rolledOverSteps({ pieces }: Performance): number {
  return pieces.filter((piece) => isRolledOverStep(piece)).length;
}

function shutIn({ pieces }: Performance): number {
  return pieces.filter(({ way }) => way.ease === 'none').length;
}

function endOf({ turns }: Performance): number {
  return turns.reduce((last, { ends }) => Math.max(last, ends), 0);
}

function countOf(waits: Plan['waitsFor']): number {
  return waits.reduce((sum, each) => sum + each.length, 0);
}
