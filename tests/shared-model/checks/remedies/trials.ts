/** Carries remedies out and checks everything again from nothing, outside the code that found them. */

import { facingFindings } from '#model/checks/facing/findings.ts';
import type { Finding, FindingCode, Remedy, RemedyChange } from '#model/checks/finding.ts';
import { reachFindings } from '#model/checks/reach/findings.ts';
import { readingFindings } from '#model/checks/reading/findings.ts';
import { remedyOutcome } from '#model/checks/remedies/carry-out.ts';
import { leastRemedies } from '#model/checks/remedy.ts';
import { roomFindings } from '#model/checks/room/room-findings.ts';
import { sightFindings } from '#model/checks/sight-findings.ts';
import { sightReport } from '#model/checks/sightlines/sight-report.ts';
import { applyDiff } from '#model/document/diff.ts';
import type { Document } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import { SETUP } from '../../../helpers/build.ts';

/** Everything the checks find but routes, which remedies leave to the next full check. */
export function findingsIn(document: Document, setup: Id<'setup'> = SETUP): Finding[] {
  return [
    ...sightFindings(document, sightReport(document, setup)),
    ...reachFindings(document, setup),
    ...roomFindings(document, setup, null),
    ...readingFindings(document, setup),
    ...facingFindings(document, setup),
  ];
}

export function carried(document: Document, change: RemedyChange): Document {
  const outcome = remedyOutcome(document, change);
  if (!outcome.ok) throw new Error(outcome.reason);
  return applyDiff(document, outcome.diff);
}

/** The finding of this code that names these subjects. */
export function found(document: Document, code: FindingCode, ...subjects: string[]): Finding {
  const match = findingsIn(document).find(
    (finding) => finding.code === code && subjects.every((subject) => finding.subjects.includes(subject)),
  );
  if (!match) throw new Error(`there is no ${code} for ${subjects.join(' ')}`);
  return match;
}

export function remediesFor(document: Document, code: FindingCode, ...subjects: string[]): Remedy[] {
  return leastRemedies(document, SETUP, found(document, code, ...subjects));
}

/** Names a complaint: code and subjects in any order; for eyes that do not meet the two players. */
export function keyOf({ code, subjects }: Finding): string {
  const named = code.startsWith('facing.')
    ? subjects.slice(0, 2)
    : code === 'sight.house'
      ? subjects.slice(0, 1)
      : subjects;
  return [code, ...[...named].sort()].join(' ');
}

export function isThere(findings: readonly Finding[], finding: Finding): boolean {
  return findings.some((other) => keyOf(other) === keyOf(finding));
}

/** Fails, cautions and backs to the house that have come or become worse. */
export function troubles(before: readonly Finding[], after: readonly Finding[]): string[] {
  const lack = ({ measured, required }: Finding): number => Math.abs(measured - required);
  const known = new Map(before.map((finding) => [keyOf(finding), finding]));
  return after
    .filter((finding) => {
      const then = known.get(keyOf(finding));
      return (
        (finding.severity !== 'note' || finding.code === 'facing.house') &&
        (!then || then.severity !== finding.severity || lack(finding) > lack(then) + 1e-6)
      );
    })
    .map(keyOf);
}

/** The same change by one step less: 5 mm of height, 1 degree, 10 mm on plan in either direction. */
export function weaker(change: RemedyChange): RemedyChange[] {
  switch (change.kind) {
    case 'lower':
      return [{ ...change, by: change.by - 5 }];
    case 'lowerAll': {
      const most = Math.max(...change.items.map(({ by }) => by)) - 5;
      return [{ ...change, items: change.items.map(({ item, by }) => ({ item, by: Math.min(by, most) })) }];
    }
    case 'turn':
    case 'turnTogether':
      return [{ ...change, by: change.by - Math.sign(change.by) }];
    case 'cover':
    case 'both':
      return [];
    case 'flatten':
      return [{ ...change, by: change.by - 1 }];
    case 'moveTogether':
    case 'move': {
      const less = (length: number): number => length - Math.sign(length) * 10;
      const shorter = [
        { ...change, dx: less(change.dx) },
        { ...change, dy: less(change.dy) },
      ];
      return shorter.filter(({ dx, dy }) => dx !== change.dx || dy !== change.dy);
    }
  }
}

/** However it is made a step less, it does not clear the finding. */
export function doesLeast(document: Document, finding: Finding, change: RemedyChange): boolean {
  return weaker(change).every((less) => isThere(findingsIn(carried(document, less)), finding));
}

export interface Case {
  readonly document: Document;
  readonly setup: Id<'setup'>;
  /** All that the checks found before. */
  readonly before: readonly Finding[];
  readonly finding: Finding;
  readonly remedy: RemedyChange;
}

/** One step less does not clear the finding, or only at the price of something else. */
export function isLeast({ document, setup, before, finding, remedy }: Case): boolean {
  return weaker(remedy).every((less) => {
    const after = findingsIn(carried(document, less), setup);
    return isThere(after, finding) || troubles(before, after).length > 0;
  });
}
