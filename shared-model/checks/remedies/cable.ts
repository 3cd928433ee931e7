/** What helps against a cable across ways out. How it is laid is up to who lays it; what is tried is a cover. */

import type { Remedy } from '../finding.ts';
import { cableFindings } from '../room/route-findings.ts';
import { routeResults } from '../room/routes.ts';
import { attemptsAt, type Search, type Task } from './attempt.ts';
import { createHarmCheck } from './harm.ts';

/** A ramp or a mat over it. Where wheels go over it as well, that stays a note. */
export function cableRemedies(task: Task): Search {
  const { document, setup, finding } = task;
  const [lamp = ''] = finding.subjects;
  // Nobody goes another way for a cover.
  const routes = routeResults(document, setup);
  const attempt = attemptsAt(task, {
    cleared: (changed) =>
      cableFindings(changed, setup, routes).some(
        ({ code, subjects }) => code === finding.code && subjects[0] === lamp,
      )
        ? null
        : 0,
    harms: createHarmCheck(task),
  });
  const least = (): Remedy[] => {
    const after = attempt({ kind: 'cover', item: lamp });
    return after === null ? [] : [{ kind: 'cover', item: lamp, after }];
  };
  return { attempt, least, things: [] };
}
