/** The order in which items are listed and stepped through: players first, then by kind, then by number. */

import { belongsTo, type Document } from '#model/document/document.ts';
import { compareIds, type Id } from '#model/document/ids.ts';
import { isPlaced, PLACED_KINDS, type PlacedRecord } from '#model/document/records.ts';

export function itemsInOrder(document: Document, setup: Id<'setup'>): PlacedRecord[] {
  const items = [...document.records.values()].filter(
    (record): record is PlacedRecord => isPlaced(record) && belongsTo(record, setup),
  );
  const rank = (record: PlacedRecord): number => PLACED_KINDS.indexOf(record.kind);
  return items.sort((a, b) => rank(a) - rank(b) || compareIds(a.id, b.id));
}
