/** What may be moved, and what rather than something else. */

import type { Document } from '../../document/document.ts';
import type { PlacedRecord } from '../../document/records.ts';
import { isPlaced } from '../../document/records.ts';

/** In the order in which they are moved: by hand; by asking; by several hands. */
export const WEIGHTS = ['light', 'person', 'bulky'] as const;

export type Weight = (typeof WEIGHTS)[number];

/**
 * To make room things are moved at most so far, mm; farther it would be another place for them, and who plays them could
 * not follow.
 */
export const FARTHEST_FOR_ROOM: Readonly<Record<Weight, number>> = { light: 1500, person: 1000, bulky: 400 };

/**
 * Null: it stays where it is. That is the building, levels (which carry other things), and whoever plays something
 * that stands on the floor, because he belongs at it.
 */
export function weightOf(document: Document, record: PlacedRecord): Weight | null {
  switch (record.kind) {
    case 'riser':
      return null;
    case 'shape':
      return record.fixed ? null : 'light';
    case 'player':
      return playsOnTheFloor(document, record.id) ? null : 'person';
    case 'piano':
    case 'largeInstrument':
      return 'bulky';
    default:
      return 'light';
  }
}

/** The records among these ids that have this weight, each once, in the order given. */
export function ofWeight(document: Document, ids: readonly string[], weight: Weight): PlacedRecord[] {
  return [...new Set(ids)].flatMap((id) => {
    const record = document.records.get(id);
    return record && isPlaced(record) && weightOf(document, record) === weight ? [record] : [];
  });
}

function playsOnTheFloor(document: Document, player: string): boolean {
  for (const record of document.records.values()) {
    if ((record.kind === 'piano' || record.kind === 'largeInstrument') && record.player === player)
      return true;
  }
  return false;
}
