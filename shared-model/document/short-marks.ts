/** Short marks for bubbles and lists: one or two letters for the kind and the same number that labels.ts counts. */

import { kindWord } from './labels.ts';
import { language } from '../words/catalogue.ts';
import type { Language } from '../words/languages.ts';
import { PLACED_KINDS, type PlacedRecord } from './records.ts';

type Letters = Readonly<Record<PlacedRecord['kind'], string>>;

/** No letters mean one thing in one language and another in the other: prints of both may lie on one table. */
const LETTERS: Readonly<Record<Language, Letters>> = {
  en: {
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
  },
  de: {
    player: 'SP',
    stand: 'PU',
    instrumentStand: 'IS',
    table: 'T',
    seat: 'SI',
    piano: 'KL',
    largeInstrument: 'GI',
    lamp: 'L',
    riser: 'PO',
    shape: 'GE',
  },
};

/** "S3" for stand 3: a mark for each of the records, which must be all of their setup and in their order. */
export function shortMarks(records: readonly PlacedRecord[]): ReadonlyMap<string, string> {
  const letters = LETTERS[language()];
  const counts = new Map<PlacedRecord['kind'], number>();
  return new Map(
    records.map(({ id, kind }) => {
      const number = (counts.get(kind) ?? 0) + 1;
      counts.set(kind, number);
      return [id, `${letters[kind]}${number}`];
    }),
  );
}

/** "P player · S stand": what the letters stand for, as far as they occur. */
export function letterKey(records: readonly PlacedRecord[]): string {
  const kinds = new Set(records.map((record) => record.kind));
  return PLACED_KINDS.filter((kind) => kinds.has(kind))
    .map((kind) => `${LETTERS[language()][kind]} ${kindWord(kind)}`)
    .join(' · ');
}
