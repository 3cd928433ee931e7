/** Tries changes on a copy of the document. */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Finding, Remedy, RemedyChange } from '../finding.ts';
import { carriedOut } from './carry-out.ts';
import { smallestChange, type Steps } from './search.ts';

/** A finding to be cleared. */
export interface Task {
  readonly document: Document;
  readonly setup: Id<'setup'>;
  readonly finding: Finding;
}

export interface Attempt {
  /** What the check measures once the change is made; null when it clears nothing, or does harm elsewhere. */
  (change: RemedyChange): number | null;
  /** How much of what is asked for is still lacking once the change is made, in whatever unit; null: not known. */
  readonly lack: (change: RemedyChange | null) => number | null;
}

/** What can be done about a finding, each change judged as it comes. */
export interface Search {
  readonly attempt: Attempt;
  /** The least change of each kind that helps, best first. */
  readonly least: () => Remedy[];
  /** What is worth changing where no single change helps: ids, what matters most first. */
  readonly things: readonly string[];
}

export interface Judgement {
  /** What the check measures in a changed document when the finding is no longer there; else null. */
  cleared(changed: Document): number | null;
  /** Whether the change makes something else wrong. Asked only of what clears. */
  harms(changed: Document, change: RemedyChange): boolean;
  /** How much is lacking there, as far as that can be told of what does not clear. */
  lack?(changed: Document): number;
}

/** The same change is tried once only, and none where there is nothing to clear. */
export function attemptsAt({ document }: Task, { cleared, harms, lack }: Judgement): Attempt {
  const lacking = (change: RemedyChange | null): number | null => {
    const changed = change ? carriedOut(document, change) : document;
    return changed && lack ? lack(changed) : null;
  };
  if (cleared(document) !== null) return Object.assign(() => null, { lack: lacking });
  const known = new Map<string, number | null>();
  const tried = (change: RemedyChange): number | null => {
    const changed = carriedOut(document, change);
    const after = changed && cleared(changed);
    return changed && after !== null && !harms(changed, change) ? after : null;
  };
  const attempt = (change: RemedyChange): number | null => {
    const key = JSON.stringify(change);
    const before = known.get(key);
    if (before !== undefined) return before;
    const after = tried(change);
    known.set(key, after);
    return after;
  };
  return Object.assign(attempt, { lack: lacking });
}

/** The change as it is made in one of several ways, by an amount. */
export type ChangeOf<Way> = (way: Way, amount: number) => RemedyChange;

/** The smallest change over all ways that clears the finding and does no harm. */
export function smallestRemedy<Way>(
  ways: readonly Way[],
  steps: Steps,
  changeOf: ChangeOf<Way>,
  attempt: Attempt,
): Remedy | null {
  const found = smallestChange(ways, steps, (way, amount) => attempt(changeOf(way, amount)) !== null);
  if (!found) return null;
  const change = changeOf(found.way, found.amount);
  const after = attempt(change);
  return after === null ? null : { ...change, after };
}
