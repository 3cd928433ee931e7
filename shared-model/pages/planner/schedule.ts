/**
 * Who makes each turn, and when. Every turn has a gap in which nobody needs its station, and for each free hand that reaches
 * it a stretch of that gap; one player makes one turn at a time. Turns that could get into each other's way are tried in
 * every order with every hand; all others take the hand with the longest stretch.
 */

import type { Interval, Seconds } from '../../score/time-line.ts';
import type { SideIndex } from '../bindings/binding.ts';
import type { Chance } from './chances.ts';
import { MOMENT, type TurnPin } from './instance.ts';

/** A turn that has to be made. */
export interface Job {
  /** Index into the instance's stations. */
  readonly station: number;
  readonly liftedFrom: SideIndex;
  /** Nobody needs the station between these. */
  readonly gap: Interval;
  /** It is one of several in the same gap; they follow each other in the order of this number. */
  readonly order: number;
  /** Index into the instance's players and the window that a pin asks for; null: anybody, any time. */
  readonly pin: TurnPin | null;
  readonly chances: readonly Chance[];
}

export interface Placement {
  readonly chance: Chance;
  readonly at: Seconds;
  /** Free hand and nobody needing the station. */
  readonly window: Interval;
}

interface Way {
  readonly chance: Chance;
  readonly window: Interval;
  readonly margin: Seconds;
}

/** Orders and hands that are tried for one knot of turns before it counts as not solved. */
const MOST_TRIES = 20_000;

/** For each job where it goes; `impossible`: they cannot all be made; `unknown`: too many orders to try. */
export function schedule(jobs: readonly Job[]): Placement[] | 'impossible' | 'unknown' {
  const ways = jobs.map(waysOf);
  if (ways.some((list) => list.length === 0)) return 'impossible';
  const placements: Placement[] = [];
  for (const knot of knotsOf(jobs, ways)) {
    const solved = solveKnot(knot, jobs, ways);
    if (typeof solved === 'string') return solved;
    for (const [job, placement] of solved) placements[job] = placement;
  }
  return placements;
}

function waysOf({ chances, gap, pin }: Job): Way[] {
  const ways: Way[] = [];
  for (const chance of chances) {
    const from = Math.max(chance.from, gap.from, pin?.from ?? -Infinity);
    const to = Math.min(chance.to, gap.to, pin?.to ?? Infinity);
    const margin = to - from - chance.seconds;
    if (margin >= -MOMENT) ways.push({ chance, window: { from, to }, margin });
  }
  return ways.sort((a, b) => b.margin - a.margin);
}

/** Jobs that could want the same player at the same time, or follow each other in one gap, are in one knot. */
export function knotsOf(jobs: readonly Job[], ways = jobs.map(waysOf)): number[][] {
  const order = jobs.map((_, index) => index).sort((a, b) => firstOf(ways[a]) - firstOf(ways[b]));
  const knots: number[][] = [];
  for (const job of order) {
    const touching = knots.filter((knot) => knot.some((other) => meet(job, other, jobs, ways)));
    const rest = knots.filter((knot) => !touching.includes(knot));
    knots.splice(0, knots.length, ...rest, [...touching.flat(), job]);
  }
  return knots;
}

function firstOf(ways: readonly Way[] = []): Seconds {
  return ways.reduce((first, { window }) => Math.min(first, window.from), Infinity);
}

function meet(a: number, b: number, jobs: readonly Job[], ways: readonly (readonly Way[])[]): boolean {
  const [first, second] = [jobs[a], jobs[b]];
  if (!first || !second) return false;
  if (first.station === second.station) return first.gap.from === second.gap.from;
  return (ways[a] ?? []).some((one) =>
    (ways[b] ?? []).some(
      (other) =>
        one.chance.player === other.chance.player &&
        one.window.from < other.window.to &&
        other.window.from < one.window.to,
    ),
  );
}

type Solved = readonly (readonly [job: number, placement: Placement])[];

function solveKnot(
  knot: readonly number[],
  jobs: readonly Job[],
  ways: readonly (readonly Way[])[],
): Solved | 'impossible' | 'unknown' {
  const inOrder = knot.toSorted(
    (a, b) => endOf(jobs[a]) - endOf(jobs[b]) || orderOf(jobs[a]) - orderOf(jobs[b]),
  );
  let tries = 0;
  const place = (left: readonly number[], done: Solved): Solved | null => {
    if (left.length === 0) return done;
    for (const job of left) {
      if (left.some((other) => comesBefore(jobs[other], jobs[job]))) continue;
      for (const way of ways[job] ?? []) {
        if (++tries > MOST_TRIES) return null;
        const at = earliestStart(job, way, { jobs, done });
        if (at + way.chance.seconds > way.window.to + MOMENT) continue;
        const solved = place(
          left.filter((other) => other !== job),
          [...done, [job, { chance: way.chance, at, window: way.window }]],
        );
        if (solved) return solved;
      }
    }
    return null;
  };
  return place(inOrder, []) ?? (tries > MOST_TRIES ? 'unknown' : 'impossible');
}

function endOf(job: Job | undefined): Seconds {
  return job?.gap.to ?? Infinity;
}

function orderOf(job: Job | undefined): number {
  return job?.order ?? 0;
}

function comesBefore(a: Job | undefined, b: Job | undefined): boolean {
  return !!a && !!b && a.station === b.station && a.gap.from === b.gap.from && a.order < b.order;
}

interface Placed {
  readonly jobs: readonly Job[];
  readonly done: Solved;
}

/** After everything that the same player, or the same leaves, were placed for before. */
function earliestStart(job: number, way: Way, { jobs, done }: Placed): Seconds {
  return done.reduce((start, [other, { chance, at }]) => {
    const inTheWay = chance.player === way.chance.player || comesBefore(jobs[other], jobs[job]);
    return inTheWay ? Math.max(start, at + chance.seconds) : start;
  }, way.window.from);
}
