/**
 * One shortest way over straight legs, where all that stands changes before the next is asked for: A* that takes every leg for
 * free until it would be walked, because to look at a leg costs far more than to measure it. (P. E. Hart, N. J. Nilsson and
 * B. Raphael, "A formal basis for the heuristic determination of minimum cost paths", IEEE Trans. SSC 4 (1968) 100-107.)
 */

import { LeastFirst } from '../../checks/room/queue.ts';
import type { Vec2 } from '../../geometry/frame.ts';

interface Leg {
  readonly from: number;
  readonly to: number;
  /** From the start to the end of this leg. */
  readonly length: number;
}

export interface Sought {
  /** The first is where it starts from. */
  readonly spots: readonly Vec2[];
  /** Where it may end: by the number of the spot how far it is from there to the very end. */
  readonly goals: ReadonlyMap<number, number>;
  /** Whether the straight leg between two spots can be walked. */
  readonly isFree: (from: number, to: number) => boolean;
}

/** Numbers of the spots of the shortest way, with its length up to its last spot; null when there is none. */
export function singleLine(
  sought: Sought,
): { readonly spots: readonly number[]; readonly length: number } | null {
  const { spots, goals, isFree } = sought;
  const toGo = spots.map((spot) => leastFrom(spot, sought));
  const before = new Int32Array(spots.length).fill(UNREACHED);
  const legs: Leg[] = [];
  const queue = new LeastFirst();
  const leaveFrom = (from: number, length: number): void => {
    for (let to = 1; to < spots.length; to++) {
      if (before[to] !== UNREACHED) continue;
      const leg = { from, to, length: length + distance(spots[from], spots[to]) };
      queue.push(leg.length + (toGo[to] ?? 0), legs.push(leg) - 1);
    }
  };
  before[0] = 0;
  leaveFrom(0, 0);
  for (let leg = legs[queue.pop()]; leg; leg = legs[queue.pop()]) {
    if (before[leg.to] !== UNREACHED || !isFree(leg.from, leg.to)) continue;
    before[leg.to] = leg.from;
    if (goals.has(leg.to)) return { spots: backFrom(before, leg.to), length: leg.length };
    leaveFrom(leg.to, leg.length);
  }
  return null;
}

/** At the least so far from a spot to the very end. */
function leastFrom(spot: Vec2, { spots, goals }: Sought): number {
  let least = Infinity;
  for (const [goal, beyond] of goals) least = Math.min(least, distance(spot, spots[goal]) + beyond);
  return least;
}

const UNREACHED = -1;

function backFrom(before: Int32Array, goal: number): number[] {
  const trail = [goal];
  for (let at = goal; at !== 0;) trail.push((at = before[at] ?? 0));
  return trail.reverse();
}

function distance(a: Vec2 | undefined, b: Vec2 | undefined): number {
  return a && b ? Math.hypot(b.x - a.x, b.y - a.y) : Infinity;
}
