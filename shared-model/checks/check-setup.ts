/** All checks of a setup in one report. */

import type { Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import { facingResults } from './facing/facing.ts';
import { facingFindings } from './facing/findings.ts';
import { listed } from './listed.ts';
import { reachFindings } from './reach/findings.ts';
import { reachResults } from './reach/reach.ts';
import { readingFindings } from './reading/findings.ts';
import { readingResults } from './reading/reading.ts';
import type { Report, SightReport } from './report.ts';
import { roomFindings } from './room/room-findings.ts';
import { routeResults } from './room/routes.ts';
import { sightFindings } from './sight-findings.ts';
import { sightReport } from './sightlines/sight-report.ts';
import { turnsFindings } from './turns/findings.ts';

/**
 * The same document gives the same report. Of very many findings of a kind only the gravest are listed. `sight` is what
 * `sightReport` says of this very document and setup, for whoever has it already: in a large hall it takes seconds.
 */
export function checkSetup(
  document: Document,
  setup: Id<'setup'>,
  sight: SightReport = sightReport(document, setup),
): Report {
  const routes = routeResults(document, setup);
  const reading = readingResults(document, setup);
  const facing = facingResults(document, setup, sight.scene.occluders);
  const findings = listed([
    ...sightFindings(document, sight),
    ...reachFindings(document, setup),
    ...roomFindings(document, setup, routes),
    ...readingFindings(document, setup, reading),
    ...facingFindings(document, setup, facing),
    ...turnsFindings(document, setup),
  ]);
  return {
    setup,
    findings,
    sight,
    reach: reachResults(document, setup),
    routes,
    reading,
    facing,
  };
}
