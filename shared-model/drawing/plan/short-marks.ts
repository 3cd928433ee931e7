/** Short marks for bubbles: one or two letters for the kind and the same number that document/labels.ts counts. */

import { inSetup, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { kindWord } from '../../document/labels.ts';
import { PLACED_KINDS, type PlacedRecord } from '../../document/records.ts';

export const KIND_LETTERS: Readonly<Record<PlacedRecord['kind'], string>> = {
  player: 'P',
  stand: 'S',
  instrumentStand: 'IS',
  table: 'T',
  seat: 'C',
  piano: 'PF',
  largeInstrument: 'LI',
  lamp: 'L',
  riser: 'R',
  shape: 'OB',
};

/** "S3" for stand 3, for every placed record of the setup. */
export function shortMarks(document: Document, setup: Id<'setup'>): ReadonlyMap<string, string> {
  const marks = new Map<string, string>();
  for (const kind of PLACED_KINDS) {
    inSetup(document, setup, kind).forEach((record, index) => {
      marks.set(record.id, `${KIND_LETTERS[kind]}${index + 1}`);
    });
  }
  return marks;
}

/** Every placed record of the setup, kind by kind, in the order of the marks. */
export function placedInSetup(document: Document, setup: Id<'setup'>): PlacedRecord[] {
  return PLACED_KINDS.flatMap((kind): PlacedRecord[] => inSetup(document, setup, kind));
}

/** "P player · S stand": what the letters stand for, as far as they occur. */
export function letterKey(records: readonly PlacedRecord[]): string {
  const kinds = new Set(records.map((record) => record.kind));
  return PLACED_KINDS.filter((kind) => kinds.has(kind))
    .map((kind) => `${KIND_LETTERS[kind]} ${kindWord(kind)}`)
    .join(' · ');
}
