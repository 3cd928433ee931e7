/** Findings that come from one and the same thing, told as one. */

import { labelOf } from '../document/labels.ts';
import type { Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import { listed } from '../words/lists.ts';
import { t } from '../words/say.ts';
import type { Finding } from './finding.ts';
import { capital } from './sentence-parts.ts';

export interface OneCause<F> {
  /** Names the cause across recomputations; of a finding alone that of the finding. */
  readonly key: string;
  /** At least one, in the order given. */
  readonly members: readonly F[];
}

/** In the order in which each cause comes first. */
export function byCause<F extends { readonly finding: Finding }>(findings: readonly F[]): OneCause<F>[] {
  const causes = new Map<string, F[]>();
  for (const [index, each] of findings.entries()) {
    const cause = causeOf(each.finding);
    const key = cause === null ? `alone ${index}` : `${each.finding.code} by ${cause}`;
    const known = causes.get(key);
    if (known) known.push(each);
    else causes.set(key, [each]);
  }
  return [...causes].map(([key, members]) => ({ key, members }));
}

/** What makes it, where one thing often makes several findings of the kind; null: each is by itself. */
function causeOf({ code, subjects }: Finding): string | null {
  switch (code) {
    case 'sight.house':
      return subjects[1] ?? null;
    case 'facing.blocked':
      return subjects[2] ?? null;
    case 'facing.turn':
      return subjects[0] ?? null;
    case 'room.route':
      return subjects.length > 1 ? subjects.slice(1).join(' ') : null;
    case 'room.step':
      return subjects[1] ?? null;
    default:
      return null;
  }
}

/** What several findings of one cause are called together. */
export function causeHeadline(members: readonly Finding[], document: Document, setup: Id<'setup'>): string {
  return capital(together(members, document, setup));
}

function together(members: readonly Finding[], document: Document, setup: Id<'setup'>): string {
  const [first] = members;
  if (!first) throw new Error('a cause without findings');
  const label = (id = ''): string => labelOf(document, setup, id);
  const count = members.length;
  switch (first.code) {
    case 'sight.house':
      return t`${label(first.subjects[1])} hides ${count} players from too many places`;
    case 'facing.blocked':
      return t`${label(first.subjects[2])} is in the way of ${count} pairs who must see each other`;
    case 'facing.turn':
      return t`${label(first.subjects[0])} turns the whole body to look at ${count} others`;
    case 'room.route':
      return t`The ways out of ${count} players are narrow at ${listed(first.subjects.slice(1).map(label))}`;
    case 'room.step':
      return t`The ways out of ${count} players go over the edge of ${label(first.subjects[1])}`;
    default:
      throw new Error(`${first.code} has no cause in common`);
  }
}
