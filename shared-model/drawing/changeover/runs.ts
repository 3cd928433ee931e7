/** A long changeover in several drawings, each with so many arrows as one can follow. */

import type { Changeover, Step } from '../../programme/changeover.ts';
import type { Unit } from '../../programme/units.ts';
import { t } from '../../words/say.ts';

/** Some steps after one another, and what stands still meanwhile. */
export interface Run {
  readonly steps: readonly Step[];
  /** From 0. */
  readonly index: number;
  readonly count: number;
  /** What has come to its place before, or never left it. */
  readonly inPlace: readonly Unit[];
  /** What goes later. */
  readonly waiting: readonly Unit[];
}

/** More arrows in one drawing are a thicket. Common practice, no source. */
export const MOST_ARROWS = 12;

/** As few as can be, about as long as each other; one where there is nothing to do. */
export function runsOf({ steps, stays }: Changeover): Run[] {
  const count = Math.max(1, Math.ceil(steps.length / MOST_ARROWS));
  const length = Math.ceil(steps.length / count);
  return Array.from({ length: count }, (_, index): Run => {
    const [first, end] = [index * length, (index + 1) * length];
    return {
      ...{ index, count },
      steps: steps.slice(first, end),
      inPlace: [...stays.map(({ to }) => to), ...steps.slice(0, first).flatMap(({ to }) => to ?? [])],
      waiting: steps.slice(end).flatMap(({ from }) => from ?? []),
    };
  });
}

/** All that is drawn of a run: old places and new ones, and what stands still. */
export function unitsOf({ steps, inPlace, waiting }: Run): Unit[] {
  const moved = steps.flatMap(({ from, to }) => [from, to].flatMap((unit) => unit ?? []));
  return [...inPlace, ...waiting, ...moved];
}

/** "steps 13 to 24 of 60"; empty where one drawing has them all. */
export function runWords({ steps, count }: Run, all: number): string {
  const [first, last] = [steps[0], steps.at(-1)];
  return count === 1 || !first || !last ? '' : t`steps ${first.number} to ${last.number} of ${all}`;
}
