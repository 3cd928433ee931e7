/** Which language is spoken. English stands where it is said and needs no catalogue. */

import type { Language } from './languages.ts';

/**
 * A sentence in English, its values as {0}, {1}, ..., to the same in another language, where they may stand in another
 * order. With a number that decides: the English singular to the forms for one and for many.
 */
export type Entries = Readonly<Record<string, string | readonly [one: string, many: string]>>;

/** What a sentence is in another language, its values put in; null: it is not in the catalogue. */
export type LookUp = (
  key: string,
  values: readonly (string | number)[],
  count: number | undefined,
) => string | null;

interface Spoken {
  readonly language: Language;
  /** Null: English. */
  readonly lookUp: LookUp | null;
}

const ENGLISH: Spoken = { language: 'en', lookUp: null };

let spoken = ENGLISH;

/** What the window, the shell or the worker that runs this speaks. */
export function language(): Language {
  return spoken.language;
}

/** For the whole of the window, the shell or the worker; to be called before anything is said. */
export function speakEnglish(): void {
  spoken = ENGLISH;
}

/** As `speakEnglish`; `speakFrom` makes what looks a sentence up out of a catalogue. */
export function speakWith(other: Exclude<Language, 'en'>, lookUp: LookUp): void {
  spoken = { language: other, lookUp };
}

/** Null when there is nothing to look it up in, or it is not there. `count`: the number that decides. */
export function translate(
  strings: readonly string[],
  values: readonly (string | number)[],
  count?: number,
): string | null {
  const { lookUp } = spoken;
  return lookUp && lookUp(keyOf(strings), values, count);
}

const keys = new WeakMap<readonly string[], string>();

/** A template is the same object each time it is said. */
function keyOf(strings: readonly string[]): string {
  const known = keys.get(strings);
  if (known !== undefined) return known;
  const key = strings.reduce((said, part, i) => `${said}{${i - 1}}${part}`);
  keys.set(strings, key);
  return key;
}
