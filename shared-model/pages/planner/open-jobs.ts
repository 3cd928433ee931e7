/** Turns that further ones could still get in the way of. */

import type { Problem } from './problem.ts';
import { knotsOf, schedule, type Job } from './schedule.ts';
import { READY, type Cells, type Layout } from './state.ts';

export type OpenJobs = readonly Job[];

export interface JobsContext {
  readonly problem: Problem;
  readonly layout: Layout;
  readonly cells: Cells;
  readonly station: number;
}

/** The open turns with some more; a word when they cannot all be made, or nobody can tell. */
export function openJobs(
  open: OpenJobs,
  added: readonly Job[],
  context: JobsContext,
): OpenJobs | 'impossible' | 'unknown' {
  const jobs = [...open, ...added];
  const placed = schedule(jobs);
  return typeof placed === 'string' ? placed : withoutClosed(jobs, context);
}

/** A knot is closed when every turn to come is at a station that was needed until after it. */
function withoutClosed(jobs: readonly Job[], { problem, layout, cells, station }: JobsContext): OpenJobs {
  let earliest = Infinity;
  for (const [index, shape] of problem.stations.entries()) {
    const ready = cells[(layout.bases[index] ?? 0) + READY] ?? 0;
    // The station that is turned now is needed right after the turn.
    const from = index === station ? (jobs.at(-1)?.gap.to ?? 0) : (problem.times[ready] ?? -Infinity);
    if (shape.option.turning) earliest = Math.min(earliest, from);
  }
  const kept = knotsOf(jobs).filter((knot) => knot.some((job) => (jobs[job]?.gap.to ?? 0) > earliest));
  return kept
    .flat()
    .sort((a, b) => a - b)
    .flatMap((job) => jobs[job] ?? []);
}
