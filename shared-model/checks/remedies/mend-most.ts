/** One change that clears most of several findings, as of all that one player suffers from. */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Finding, Remedy, RemedyChange } from '../finding.ts';
import type { Search } from './attempt.ts';

export interface MendMost {
  readonly change: RemedyChange;
  /** Which of the findings it clears and which it leaves, by their places in the list asked about. */
  readonly mends: readonly number[];
  readonly leaves: readonly number[];
}

/** Findings looked at together; of a longer list the first. */
export const MOST_TOGETHER = 8;
const MOST_CHANGES = 16;

export interface MendOrder {
  readonly document: Document;
  readonly setup: Id<'setup'>;
  readonly findings: readonly Finding[];
  /** What was found to help against any of them: these are tried against all. */
  readonly changes: readonly RemedyChange[];
}

/** Null: none of the changes clears two or more. Against each finding a change is judged as if it were for that alone. */
export function mendMost(
  { document, setup, findings, changes }: MendOrder,
  searchOf: (task: { document: Document; setup: Id<'setup'>; finding: Finding }) => Search | null,
): MendMost | null {
  const searches = findings
    .slice(0, MOST_TOGETHER)
    .map((finding) => searchOf({ document, setup, finding })?.attempt ?? null);
  let best: MendMost | null = null;
  for (const change of changes.map(withoutAfter).slice(0, MOST_CHANGES)) {
    const mends = searches.flatMap((attempt, index) => (attempt && attempt(change) !== null ? [index] : []));
    if (mends.length < 2 || mends.length <= (best?.mends.length ?? 0)) continue;
    best = { change, mends, leaves: [...findings.keys()].filter((index) => !mends.includes(index)) };
  }
  return best;
}

function withoutAfter(change: RemedyChange | Remedy): RemedyChange {
  if (!('after' in change)) return change;
  const { after: _after, ...bare } = change;
  return bare;
}
