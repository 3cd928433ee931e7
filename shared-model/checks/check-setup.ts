/** All checks of a setup in one report. */

import type { Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import { facingFindings } from './facing/findings.ts';
import type { Finding, Severity } from './finding.ts';
import { reachFindings } from './reach/findings.ts';
import { reachResults } from './reach/reach.ts';
import { readingFindings } from './reading/findings.ts';
import type { Report } from './report.ts';
import { roomFindings } from './room/room-findings.ts';
import { routeResults } from './room/routes.ts';
import { sightFindings } from './sight-findings.ts';
import { sightReport } from './sightlines/sight-report.ts';

/** The same document gives the same report: findings sorted by severity, then by family and code, then by subjects. */
export function checkSetup(document: Document, setup: Id<'setup'>): Report {
  const sight = sightReport(document, setup);
  const routes = routeResults(document, setup);
  const findings = [
    ...sightFindings(document, sight),
    ...reachFindings(document, setup),
    ...roomFindings(document, setup, routes),
    ...readingFindings(document, setup),
    ...facingFindings(document, setup),
  ];
  return {
    setup,
    findings: findings.sort(bySeverity),
    sight,
    reach: reachResults(document, setup),
    routes,
  };
}

const SEVERITIES: readonly Severity[] = ['fail', 'caution', 'note'];
/** What the audience notices first comes first. */
const FAMILIES = ['sight', 'reach', 'facing', 'reading', 'room'];

function bySeverity(a: Finding, b: Finding): number {
  return (
    SEVERITIES.indexOf(a.severity) - SEVERITIES.indexOf(b.severity) ||
    familyOf(a) - familyOf(b) ||
    compareText(a.code, b.code) ||
    compareText(a.subjects.join(' '), b.subjects.join(' '))
  );
}

function familyOf({ code }: Finding): number {
  return FAMILIES.indexOf(code.slice(0, code.indexOf('.')));
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
