/** Short marks for bubbles and lists: one or two letters for the kind and the same number that labels.ts counts. */

import { kindWord } from './labels.ts';
import { PLACED_KINDS, type PlacedRecord } from './records.ts';

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

/** "S3" for stand 3: a mark for each of the records, which must be all of their setup and in their order. */
export function shortMarks(records: readonly PlacedRecord[]): ReadonlyMap<string, string> {
  const counts = new Map<PlacedRecord['kind'], number>();
  return new Map(
    records.map(({ id, kind }) => {
      const number = (counts.get(kind) ?? 0) + 1;
      counts.set(kind, number);
      return [id, `${KIND_LETTERS[kind]}${number}`];
    }),
  );
}

/** "P player · S stand": what the letters stand for, as far as they occur. */
export function letterKey(records: readonly PlacedRecord[]): string {
  const kinds = new Set(records.map((record) => record.kind));
  return PLACED_KINDS.filter((kind) => kinds.has(kind))
    .map((kind) => `${KIND_LETTERS[kind]} ${kindWord(kind)}`)
    .join(' · ');
}
