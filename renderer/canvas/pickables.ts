/** The items of a setup, and storage places, as they can be picked: by what they take up on the plan. */

import { chairOutline, outlineOf } from '#model/catalogue/outlines.ts';
import { belongsTo, type Document } from '#model/document/document.ts';
import { isHidden } from '#model/document/groups.ts';
import type { Id } from '#model/document/ids.ts';
import { isPlaced, type PlacedRecord } from '#model/document/records.ts';
import { storageOutline } from '#model/drawing/plan/storages.ts';
import { convexHull } from '#model/geometry/convex-hull.ts';
import type { Polygon } from '#model/geometry/polygon.ts';
import type { Pickable } from './picking.ts';

const known = new WeakMap<PlacedRecord, Polygon>();

/** What can be caught with the pointer: a seated player includes the chair. */
export function pickOutline(record: PlacedRecord): Polygon {
  const before = known.get(record);
  if (before) return before;
  const chair = record.kind === 'player' ? chairOutline(record) : null;
  const outline = chair ? convexHull([...outlineOf(record), ...chair]) : outlineOf(record);
  known.set(record, outline);
  return outline;
}

export function pickables(document: Document, setup: Id<'setup'>): Pickable[] {
  const items: Pickable[] = [];
  for (const record of document.records.values()) {
    if (record.kind === 'storage') items.push({ id: record.id, outline: storageOutline(record), layer: 1 });
    if (!isPlaced(record) || !belongsTo(record, setup) || isHidden(document, record.id)) continue;
    items.push({ id: record.id, outline: pickOutline(record), layer: record.kind === 'riser' ? 0 : 1 });
  }
  return items;
}
