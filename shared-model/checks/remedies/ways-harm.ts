/** What a change makes wrong with the ways out: those of everybody, not of him alone for whom it is made. */

import type { Document } from '../../document/document.ts';
import type { Finding } from '../finding.ts';
import { cableFindings, routeFindings } from '../room/route-findings.ts';
import { routeResults } from '../room/routes.ts';
import { wheelchairFindings } from '../room/wheelchair-findings.ts';
import type { Task } from './attempt.ts';
import { complaintsWorse, createHarmCheck, type HarmCheck } from './harm.ts';

/** `createHarmCheck`, and after it all ways out. Of all the checks these take longest, so they are asked last. */
export function createWaysHarmCheck(task: Task): HarmCheck {
  const harms = createHarmCheck(task);
  const { document, setup } = task;
  let objects: ((changed: Document) => boolean) | null = null;
  return (changed, change) => {
    if (harms(changed, change)) return true;
    objects ??= complaintsWorse(saidOfWays(document, setup), (there) => saidOfWays(there, setup));
    return objects(changed);
  };
}

/** The things that a way is narrow between may be others afterwards: a complaint is about who goes it. */
function saidOfWays(document: Document, setup: Task['setup']): Finding[] {
  const routes = routeResults(document, setup);
  const said = [routeFindings, wheelchairFindings, cableFindings].flatMap((check) =>
    check(document, setup, routes),
  );
  return said.map((finding) => ({
    ...finding,
    subjects: [finding.subjects[0] ?? '', String(finding.detail['at'] ?? '')],
  }));
}
