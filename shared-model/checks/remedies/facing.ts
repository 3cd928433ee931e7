/** What helps against eyes that cannot meet. */

import { facingFindings } from '../facing/findings.ts';
import type { Remedy } from '../finding.ts';
import { attemptsAt, type Task } from './attempt.ts';
import { remediesOfEachKind } from './each-kind.ts';
import { createHarmCheck, isSameComplaint } from './harm.ts';
import { lowerTogether, standsAmong } from './ways.ts';
import { ofWeight, type Weight } from './weights.ts';

/** One change of each kind to one thing that is in the way, or to one of the two; else all desks down together. */
export function blockedRemedies(task: Task): Remedy[] {
  const { document, setup, finding } = task;
  const attempt = attemptsAt(task, {
    // Nothing in the way has to be lowered: 0 mm.
    cleared: (changed) =>
      facingFindings(changed, setup).some((found) => isSameComplaint(found, finding)) ? null : 0,
    harms: createHarmCheck(task),
  });
  const [a = '', b = '', ...inTheWay] = finding.subjects;
  const movables = (weight: Weight) => ofWeight(document, [...inTheWay, a, b], weight);
  const alone = remediesOfEachKind(movables, attempt);
  if (alone.length > 0) return alone;
  const together = lowerTogether(standsAmong(movables('light')), attempt);
  return together ? [together] : [];
}
