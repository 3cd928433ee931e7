/** What helps against pages at a steep angle, besides tilting the desk, which the check works out itself. */

import type { Document } from '../../document/document.ts';
import type { Remedy } from '../finding.ts';
import { isBeyond } from '../reading/gaze.ts';
import { GREATEST_ANGLE } from '../reading/published.ts';
import { readingResults } from '../reading/reading.ts';
import { attemptsAt, type Task } from './attempt.ts';
import { remediesOfEachKind } from './each-kind.ts';
import { excerpt } from './excerpt.ts';
import { createHarmCheck } from './harm.ts';
import { ofWeight } from './weights.ts';

/** One change of each kind to the stand, or else a move of its reader. */
export function readingRemedies(task: Task): Remedy[] {
  const { document, finding } = task;
  const attempt = attemptsAt(task, {
    cleared: (changed) => steepestClear(task, changed),
    harms: createHarmCheck(task),
  });
  return remediesOfEachKind((weight) => ofWeight(document, finding.subjects, weight), attempt);
}

/** The angle that the finding is about, degrees, once no line of the pages is too steep. */
function steepestClear({ setup, finding }: Task, changed: Document): number | null {
  const [player, stand] = finding.subjects;
  const results = readingResults(excerpt(changed, finding.subjects), setup).filter(
    (result) => result.player === player && result.stand === stand,
  );
  if (results.length === 0 || results.some(({ greatestAngle }) => isBeyond(greatestAngle, GREATEST_ANGLE)))
    return null;
  return results.reduce(
    (most, { angle, greatestAngle }) => Math.max(most, finding.severity === 'note' ? greatestAngle : angle),
    0,
  );
}
