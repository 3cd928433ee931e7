/** What helps against eyes that cannot meet. */

import type { Document } from '../../document/document.ts';
import { facingResults } from '../facing/facing.ts';
import type { Remedy } from '../finding.ts';
import { attemptsAt, type Task } from './attempt.ts';
import { remediesOfEachKind } from './each-kind.ts';
import { excerpt } from './excerpt.ts';
import { createHarmCheck } from './harm.ts';
import { scenesOf } from './scenes.ts';
import { lowerTogether, standsAmong } from './ways.ts';
import { ofWeight, type Weight } from './weights.ts';

/** One change of each kind to one thing that is in the way, or to one of the two; else all desks down together. */
export function blockedRemedies(task: Task): Remedy[] {
  const { document, finding } = task;
  const attempt = attemptsAt(task, { cleared: eyesMeet(task), harms: createHarmCheck(task) });
  const [a = '', b = '', ...inTheWay] = finding.subjects;
  const movables = (weight: Weight) => ofWeight(document, [...inTheWay, a, b], weight);
  const alone = remediesOfEachKind(movables, attempt);
  if (alone.length > 0) return alone;
  const together = lowerTogether(standsAmong(movables('light')), attempt);
  return together ? [together] : [];
}

/** 0 when nothing has to be lowered any more for these two; everything else is there only to be in their way. */
function eyesMeet({ document, setup, finding }: Task): (changed: Document) => number | null {
  const scenes = scenesOf(document, setup);
  const players = finding.subjects.slice(0, 2);
  return (changed) => {
    const { pairs } = facingResults(excerpt(changed, players), setup, scenes.of(changed).occluders);
    return pairs.some(({ blockers }) => blockers.length > 0) ? null : 0;
  };
}
