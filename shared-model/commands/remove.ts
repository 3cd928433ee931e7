/** Removes records, with everything that cannot be without them. */

import type { Document } from '../document/document.ts';
import { referencesOf, withReferences } from '../document/references.ts';
import type { AnyRecord } from '../document/records.ts';
import { t } from '../words/say.ts';
import { refuse, type Command } from './command.ts';
import { propose, type Edits } from './propose.ts';
import { recordsOf, unlocked } from './targets.ts';
import { namesOf } from './words.ts';

export interface Remove {
  readonly ids: readonly string[];
}

/**
 * A removed player's instruments go too; stands, pianos and large instruments lose him as reader or player; what
 * waited on a removed stand or table is in its player's hands.
 */
export const remove: Command<Remove> = (document, { ids }) => {
  const targets = unlocked(document, recordsOf(document, ids));
  if (!targets.ok) return targets;
  const needed = targets.records.find(({ kind }) => kind === 'concert' || kind === 'platform');
  if (needed) return refuse(neededWords(needed));
  const names = namesOf(document, targets.records);
  return propose(document, removalOf(document, targets.records), { label: t`remove ${names}`, select: [] });
};

function neededWords({ kind }: AnyRecord): string {
  return kind === 'concert'
    ? t`The concert cannot be removed: every file has exactly one.`
    : t`The platform cannot be removed: every file has exactly one.`;
}

/** The edits that take these records out and keep every reference whole. */
export function removalOf(document: Document, doomed: readonly AnyRecord[]): Edits {
  const gone = new Set<string>(doomed.map(({ id }) => id));
  const edits = new Map<string, AnyRecord | null>();
  // One round is enough: nothing names an instrument or a page plan, and what names an item of a removed setup is in it too.
  for (const record of document.records.values()) {
    if (gone.has(record.id)) edits.set(record.id, null);
    else if (referencesOf(record).some(({ id }) => gone.has(id))) {
      edits.set(
        record.id,
        withReferences(record, (id) => (gone.has(id) ? null : id)),
      );
    }
  }
  return edits;
}
