/** How commands name what they work on. */

import { setupsOf, type Document } from '../document/document.ts';
import { countOfKind } from '../document/kind-counts.ts';
import { kindWord, labelOf } from '../document/labels.ts';
import type { AnyRecord } from '../document/records.ts';
import { msgid, ngettext, t } from '../words/say.ts';

/** "stand 3", "Clarinet (player 1)": as on the plot of the record's own setup, or of the first one. */
export function nameOf(document: Document, record: AnyRecord): string {
  const setup = ('setup' in record ? record.setup : null) ?? setupsOf(document)[0]?.id;
  const isKnown = document.records.has(record.id);
  return setup && isKnown ? labelOf(document, setup, record.id) : record.name || kindWord(record.kind);
}

/** One thing by its name, several as "3 stands" or "3 items". */
export function namesOf(document: Document, records: readonly AnyRecord[]): string {
  const [first] = records;
  if (!first) return t`nothing`;
  if (records.length === 1) return nameOf(document, first);
  const isOneKind = records.every(({ kind }) => kind === first.kind);
  const count = records.length;
  return isOneKind ? countOfKind(first.kind, count) : ngettext(msgid`${count} item`, `${count} items`, count);
}
