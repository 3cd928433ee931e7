/** An order played through in time, each way found among what stands when it is begun. */

import type { Job, Turn, Walk } from './schedule.ts';
import { peopleOf, takeTurn, turnOf, type Crew } from './schedule.ts';
import type { Piece } from './pieces.ts';

export interface Performance {
  /** In the order in which they begin. */
  readonly turns: readonly Turn[];
  /** By job: with the way and the time that it has at its moment. */
  readonly pieces: readonly Piece[];
}

export interface Performing {
  readonly jobs: readonly Job[];
  readonly walk: Walk;
  /** The piece of work of a job when those of `begun` have been begun before it. */
  readonly pieceAt: (job: number, begun: ReadonlySet<number>) => Piece;
}

/** Each of the two does the same in the same order; only the times follow the ways. */
export function performed(order: readonly Turn[], { jobs, walk, pieceAt }: Performing): Performance {
  const crew: Crew = { A: { free: 0, at: null }, B: { free: 0, at: null } };
  const ends = new Map<number, number>();
  const begun = new Set<number>();
  const pieces: Piece[] = [];
  const turns: Turn[] = [];
  let left = [...order];
  while (left.length > 0) {
    const ready = headsOf(left)
      .filter(({ job }) => jobs[job]?.waitsFor.every((other) => ends.has(other)))
      .map((turn) => turnOf(turn, { jobs, walk, crew, ends, length: 'usual' }));
    const next = earliest(ready);
    const piece = pieceAt(next.job, begun);
    const turn = { ...next, ends: next.begins + piece.time.usual };
    pieces[next.job] = piece;
    begun.add(next.job);
    turns.push(turn);
    takeTurn(turn, jobs, crew, ends);
    left = left.filter(({ job }) => job !== next.job);
  }
  return { turns, pieces };
}

/** The turns that are next for all who have a hand in them. */
function headsOf(left: readonly Turn[]): Turn[] {
  const busy = new Set<string>();
  return left.filter(({ hands }) => {
    const isNext = peopleOf(hands).every((who) => !busy.has(who));
    for (const who of peopleOf(hands)) busy.add(who);
    return isNext;
  });
}

/** What begins later cannot change what stands when this one begins. */
function earliest(ready: readonly Turn[]): Turn {
  const [first, ...rest] = ready;
  if (!first) throw new Error('turns that wait for each other in a ring');
  return rest.reduce((best, next) => (next.begins < best.begins ? next : best), first);
}
