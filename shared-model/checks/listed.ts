/** The findings of a report in their order, and no more of a kind than anybody reads. */

import type { Finding, FindingCode, Severity } from './finding.ts';

/** Whoever has a thousand of a kind to mend does not want the next ones yet. */
export const MOST_OF_A_CODE = 1000;

/**
 * Sorted by severity, then by family and code, then by subjects. Of a code with more findings than `most` only the
 * gravest are kept, those that lack most first; the last of them in the order has the number of the others in its
 * detail, as `notListed`.
 */
export function listed(findings: readonly Finding[], most: number = MOST_OF_A_CODE): Finding[] {
  return [...byCode(findings).values()]
    .flatMap((alike) => (alike.length > most ? gravest(alike, most) : alike))
    .sort(inReportOrder);
}

function byCode(findings: readonly Finding[]): Map<FindingCode, Finding[]> {
  const codes = new Map<FindingCode, Finding[]>();
  for (const finding of findings) {
    const alike = codes.get(finding.code);
    if (alike) alike.push(finding);
    else codes.set(finding.code, [finding]);
  }
  return codes;
}

function gravest(alike: readonly Finding[], most: number): Finding[] {
  const lack = ({ measured, required }: Finding): number => Math.abs(measured - required);
  const worstFirst = alike.toSorted((a, b) => rankOf(a) - rankOf(b) || lack(b) - lack(a));
  const kept = worstFirst.slice(0, most).sort(inReportOrder);
  const notListed = alike.length - most;
  return kept.map((finding, index) =>
    index === most - 1 ? { ...finding, detail: { ...finding.detail, notListed } } : finding,
  );
}

const SEVERITIES: readonly Severity[] = ['fail', 'caution', 'note'];
/** What the audience notices first comes first. */
const FAMILIES = ['sight', 'turns', 'reach', 'facing', 'reading', 'room'];

function inReportOrder(a: Finding, b: Finding): number {
  return (
    rankOf(a) - rankOf(b) ||
    familyOf(a) - familyOf(b) ||
    compareText(a.code, b.code) ||
    compareText(a.subjects.join(' '), b.subjects.join(' '))
  );
}

function rankOf({ severity }: Finding): number {
  return SEVERITIES.indexOf(severity);
}

function familyOf({ code }: Finding): number {
  return FAMILIES.indexOf(code.slice(0, code.indexOf('.')));
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
