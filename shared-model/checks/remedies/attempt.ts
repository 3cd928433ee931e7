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

/** What the check measures once the change is made; null when it clears nothing, or does harm elsewhere. */
export type Attempt = (change: RemedyChange) => number | null;

export interface Judgement {
  /** What the check measures in a changed document when the finding is no longer there; else null. */
  cleared(changed: Document): number | null;
  /** Whether the change makes something else wrong. Asked only of what clears. */
  harms(changed: Document, change: RemedyChange): boolean;
}

/** The same change is tried once only, and none where there is nothing to clear. */
export function attemptsAt({ document }: Task, { cleared, harms }: Judgement): Attempt {
  if (cleared(document) !== null) return () => null;
  const known = new Map<string, number | null>();
  const tried = (change: RemedyChange): number | null => {
    const changed = carriedOut(document, change);
    const after = changed && cleared(changed);
    return changed && after !== null && !harms(changed, change) ? after : null;
  };
  return (change) => {
    const key = JSON.stringify(change);
    const before = known.get(key);
    if (before !== undefined) return before;
    const after = tried(change);
    known.set(key, after);
    return after;
  };
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
