/** The checks that take little time: all but what the house sees, whether eyes meet, and the ways out. */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Finding } from '../finding.ts';
import { reachFindings } from '../reach/findings.ts';
import { readingFaults } from '../reading/faults.ts';
import { readingResults } from '../reading/reading.ts';
import { doorFindings } from '../room/doors.ts';
import { edgeFindings } from '../room/edges.ts';
import { elbowFindings } from '../room/elbow.ts';
import { offPlatformFindings } from '../room/off-platform.ts';
import { overlapFindings } from '../room/overlap.ts';
import { turnsFindings } from '../turns/findings.ts';

/** What a complaint is judged by where nobody reads it. */
export type Complaint = Pick<Finding, 'code' | 'severity' | 'subjects' | 'measured' | 'required' | 'unit'>;

export type QuickCheck = (document: Document, setup: Id<'setup'>) => Complaint[];

export const QUICK_CHECKS: readonly QuickCheck[] = [
  pagesBadlySeen,
  reachFindings,
  overlapFindings,
  offPlatformFindings,
  elbowFindings,
  edgeFindings,
  doorFindings,
  turnsFindings,
];

/** As the reading check judges them, without the advice that it works out for each. */
function pagesBadlySeen(document: Document, setup: Id<'setup'>): Complaint[] {
  return readingResults(document, setup).flatMap((result) =>
    readingFaults(result).map((fault) => ({ ...fault, subjects: [result.player, result.stand] })),
  );
}
