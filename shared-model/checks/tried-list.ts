/** What was tried against the findings of a whole list, as far as that does not take long. */

import type { Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import type { Finding, Remedy, Severity } from './finding.ts';
import { suggestRemedies } from './remedy.ts';
import type { Report } from './report.ts';

/** Trials take some tenths of a second a finding: against so many of the gravest they are made. */
const MOST_FINDINGS = 40;
/** In a larger house, with more players, each trial takes too long: places times players. */
const MOST_LINES = 2000;

const ORDER: readonly Severity[] = ['fail', 'caution', 'note'];

/** Best first, and empty where none of those tried helps; null where nothing was tried, because it would take too long. */
export type Tried = (finding: Finding) => readonly Remedy[] | null;

/** Against which findings of a report a list tells what was tried. */
export function worthTrying(report: Report): ReadonlySet<Finding> {
  const { seats, targets } = report.sight.scene;
  if (seats.length * targets.length > MOST_LINES) return new Set();
  const gravest = ORDER.flatMap((severity) =>
    report.findings.filter((finding) => finding.severity === severity),
  );
  return new Set(gravest.slice(0, MOST_FINDINGS));
}

/** Each finding is tried when it is asked about; `report` is that of the document's setup. */
export function triedList(document: Document, setup: Id<'setup'>, report: Report): Tried {
  const within = worthTrying(report);
  return (finding) => (within.has(finding) ? suggestRemedies(document, setup, finding) : null);
}
