/** Writes a document as the text of a `.standlines` file, the same bytes for the same content. */

import type { Document } from '../document/document.ts';
import { compareIds } from '../document/ids.ts';
import type { AnyRecord } from '../document/records.ts';
import { readDocument } from './read.ts';
import { readRecord } from './record.ts';
import { FORMAT, KINDS, VERSION } from './schema.ts';

/**
 * JSON, two spaces of indent, line feeds, a line feed at the end; the venue first, then kind by kind in natural
 * order of the ids. Throws when the text would not read back as the same document: the commands never make such
 * a document, so that is a bug, and a file that cannot be opened again must not be written.
 */
export function writeDocument(document: Document): string {
  const text = textOf(sorted(document).map(inFieldOrder));
  const result = readDocument(text);
  if (!result.ok) throw new Error(`document that cannot be saved: ${result.problem.message}`);
  if (textOf(sorted(result.document)) !== text) throw new Error('document that changes when it is saved');
  return text;
}

function textOf(records: readonly AnyRecord[]): string {
  return `${JSON.stringify({ format: FORMAT, version: VERSION, records }, null, 2)}\n`;
}

function sorted(document: Document): AnyRecord[] {
  return [...document.records.values()].sort(inFileOrder);
}

const ORDER = new Map(KINDS.map((kind, index) => [kind, index]));

function inFileOrder(a: AnyRecord, b: AnyRecord): number {
  return (ORDER.get(a.kind) ?? 0) - (ORDER.get(b.kind) ?? 0) || compareIds(a.id, b.id);
}

/** Reading a record sets its fields in order, and refuses what JSON would change in silence, such as infinity. */
function inFieldOrder(record: AnyRecord): AnyRecord {
  const result = readRecord(record);
  if (result.ok) return result.record;
  throw new Error(
    `record that cannot be saved: ${record.id}.${result.complaint.field}${result.complaint.text}`,
  );
}
