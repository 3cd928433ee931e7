/** What is wrong with a record, as data that the reader and the commands turn into a sentence each. */

import type { Units } from '../document/measures.ts';
import { t } from '../words/say.ts';

export interface Complaint {
  /** Path within the record: "lip", "sides[0].reader"; empty: the record as a whole. */
  readonly field: string;
  /** ": -20 is not allowed; give a length from 100 to 2500 mm". Follows the path and what joins them. */
  readonly text: string;
  /** The same to somebody who typed it into the window, where that is something else than what stands in a file. */
  readonly told?: Readonly<Record<Units, string>>;
}

/** What is told alike in all units, or in each its own way. */
export function toldAs(words: (units: Units) => string): Required<Pick<Complaint, 'told'>> {
  return { told: { metric: words('metric'), imperial: words('imperial') } };
}

/** A value that may not stand where it does. */
export function notAllowed(field: string, value: unknown, advice: string): Complaint {
  return { field, text: t`: ${shown(value)} is not allowed; ${advice}` };
}

/** A value that has to be there. */
export function missing(field: string, advice: string): Complaint {
  return { field, text: t` is missing; ${advice}` };
}

/** A field that nobody knows. */
export function unknownField(field: string, advice: string): Complaint {
  return { field, text: t` is not a known field; ${advice}` };
}

/** The value as in the file, cut to a readable length. */
export function shown(value: unknown): string {
  if (value === undefined) return t`nothing`;
  if (Number.isNaN(value)) return t`not a number`;
  if (typeof value === 'number' && !Number.isFinite(value)) return t`a number too large to hold`;
  if (Array.isArray(value) && value.length > 3) return t`a list of ${value.length}`;
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) return t`an object`;
  const text = typeof value === 'string' ? quoted(value) : (JSON.stringify(value) ?? typeof value);
  return text.length > 80 ? `${text.slice(0, 60)}…` : text;
}

/** A field's name for a path; one that is no plain word is quoted, so that a message stays on one line. */
export function fieldName(key: string): string {
  return /^[A-Za-z_]\w{0,79}$/.test(key) ? key : quoted(key);
}

function quoted(text: string): string {
  // Cut first: the value may be megabytes long. JSON spells out most control characters and lone surrogates.
  return JSON.stringify(text.slice(0, 80)).replace(UNSEEN, spelled);
}

/** What JSON leaves as it is and nobody would see: the other control characters, separators and marks of direction. */
const UNSEEN = /[\u007f-\u009f\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]/g;

function spelled(character: string): string {
  return `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`;
}
