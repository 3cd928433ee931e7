/** Tempos that stand only in printed words, such as "Allegro (♩. = 96)". Used when the score says no tempo in any other way. */

import { beatUnit } from './metronome.ts';

/** "M.M.", which is not dotted. */
const MAELZEL = /\bm\.\s*m\.$/i;

/** Printed notes, those of the usual music fonts (SMuFL) and names in text, and what they mean. */
const NOTES: readonly (readonly [RegExp, string])[] = [
  [/\u{1D15E}|\uECA3/u, 'half'],
  [/\u2669|\u{1D15F}|\uECA5/u, 'quarter'],
  [/\u266A|\u{1D160}|\uECA7/u, 'eighth'],
  [/\b(?:half|minim|h)$/i, 'half'],
  [/\b(?:quarter|crotchet|q)$/i, 'quarter'],
  [/\b(?:eighth|quaver|e)$/i, 'eighth'],
  [MAELZEL, 'quarter'],
];

const EQUATION = /([^=]{1,24})=\s*(?:ca?\.?|circa|about)?\s*(\d{1,4}(?:[.,]\d{1,3})?)/iu;
const DOTS = /(?:\.|\uECB7|\u{1D16D})+$/u;

/** Quarters a minute; null: the words hold no such equation. */
export function tempoInWords(text: string): number | null {
  const [, left = '', figure = ''] = EQUATION.exec(text.slice(0, 200)) ?? [];
  const note = left.trim();
  const dots = MAELZEL.test(note) ? '' : (DOTS.exec(note)?.[0] ?? '');
  const unit = unitOf(note.slice(0, note.length - dots.length).trim());
  const quarters = unit === null ? null : beatUnit(unit, [...dots].length);
  return quarters === null ? null : Number(figure.replace(',', '.')) * quarters;
}

function unitOf(note: string): string | null {
  return NOTES.find(([pattern]) => pattern.test(note.slice(-12)))?.[1] ?? null;
}
