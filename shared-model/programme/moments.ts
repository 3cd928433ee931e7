/** What stands on the platform while a changeover goes on. */

import type { Riser } from '../document/records.ts';
import type { Task } from './tasks.ts';
import type { Unit } from './units.ts';
import type { Standing } from './ways/carrying.ts';

/**
 * What stands when a task is begun: all that stays, what is not taken up yet, what has been set, and what another one who
 * began earlier is about to set. `begun`: tasks by index.
 */
export function unitsStanding(
  staying: readonly Unit[],
  tasks: readonly Task[],
  { task, begun }: { readonly task: number; readonly begun: ReadonlySet<number> },
): Unit[] {
  return [
    ...staying,
    ...tasks.flatMap(({ from, to }, index): Unit[] => {
      if (index === task) return [];
      const unit = begun.has(index) ? to : from;
      return unit ? [unit] : [];
    }),
  ];
}

/** Levels are stepped on; all else is gone round, but for what has no height. */
export function standingOf(units: readonly Unit[]): Standing {
  return {
    obstacles: units
      .filter(({ record }) => record.kind !== 'riser' && !(record.kind === 'shape' && record.height <= 0))
      .map(({ id, outline }) => ({ owner: id, outline })),
    risers: units.map(({ record }) => record).filter((record): record is Riser => record.kind === 'riser'),
  };
}
