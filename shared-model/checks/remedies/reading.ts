/**
 * What helps against pages at a steep angle, besides tilting the desk, which the check works out itself; against pages
 * far away, and rows too wide for where they are.
 */

import type { Document } from '../../document/document.ts';
import type { Remedy } from '../finding.ts';
import { isPlaced, type PlacedRecord } from '../../document/records.ts';
import { apparentSpace, readingFaults } from '../reading/faults.ts';
import { isBeyond } from '../reading/gaze.ts';
import { GREATEST_ANGLE } from '../reading/published.ts';
import { readingResults } from '../reading/reading.ts';
import { attemptsAt, type Attempt, type Search, type Task } from './attempt.ts';
import { remediesOfEachKind } from './each-kind.ts';
import { excerpt } from './excerpt.ts';
import { createHarmCheck } from './harm.ts';
import { moveApart, moveTowards } from './towards.ts';
import { ofWeight, WEIGHTS } from './weights.ts';

/** One change of each kind to the stand, or else a move of its reader. */
export function readingRemedies(task: Task): Search {
  const { document, finding } = task;
  const attempt = attemptsAt(task, {
    cleared: (changed) => steepestClear(task, changed),
    harms: createHarmCheck(task),
  });
  const least = (): Remedy[] =>
    remediesOfEachKind((weight) => ofWeight(document, finding.subjects, weight), attempt);
  return { attempt, least, things: [] };
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

/** The stand nearer to its reader or farther from him, or else he to it. */
export function rowRemedies(task: Task): Search | null {
  const { document, finding } = task;
  const attempt = attemptsAt(task, {
    cleared: (changed) => measuredClear(task, changed),
    harms: createHarmCheck(task),
  });
  const [reader, stand] = finding.subjects.map((id) => document.records.get(id));
  if (!reader || !stand || !isPlaced(reader) || !isPlaced(stand)) return null;
  return { attempt, least: () => leastRowMove(task, { reader, stand }, attempt), things: [] };
}

interface Row {
  readonly reader: PlacedRecord;
  readonly stand: PlacedRecord;
}

function leastRowMove({ document, finding }: Task, { reader, stand }: Row, attempt: Attempt): Remedy[] {
  const moved = finding.code === 'reading.far' ? moveTowards : moveApart;
  for (const weight of WEIGHTS) {
    const [item] = ofWeight(document, [stand.id, reader.id], weight);
    const remedy = item ? moved(item, item === stand ? reader : stand, attempt) : null;
    if (remedy) return [remedy];
  }
  return [];
}

/** Minutes of arc, or degrees to the row's end, of the row that the finding is about, once nothing of its kind is said. */
function measuredClear({ setup, finding }: Task, changed: Document): number | null {
  const results = readingResults(excerpt(changed, finding.subjects), setup).filter(
    ({ player, stand }) => player === finding.subjects[0] && stand === finding.subjects[1],
  );
  const row = results.find(({ side }) => side === finding.detail['side']) ?? results[0];
  if (!row || results.some((result) => readingFaults(result).some(({ code }) => code === finding.code)))
    return null;
  return finding.code === 'reading.far' ? apparentSpace(row) : row.aside;
}
