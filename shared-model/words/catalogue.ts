/** Which language is spoken, and the catalogue of sentences in it. English needs none. */

import i18next, { type i18n } from 'i18next';
import type { Language } from './languages.ts';

/**
 * A sentence in English, its values as {0}, {1}, ..., to the same in another language, where they may stand in another
 * order. With a number that decides: the English singular to the forms for one and for many.
 */
export type Entries = Readonly<Record<string, string | readonly [one: string, many: string]>>;

interface Spoken {
  readonly language: Language;
  /** Null: English, which stands where it is said. */
  readonly catalogue: i18n | null;
}

const ENGLISH: Spoken = { language: 'en', catalogue: null };

let spoken = ENGLISH;

/** What the window, the shell or the worker that runs this speaks. */
export function language(): Language {
  return spoken.language;
}

/** For the whole of the window, the shell or the worker; to be called before anything is said. */
export function speakEnglish(): void {
  spoken = ENGLISH;
}

/** As `speakEnglish`, with the catalogue of the other language. */
export function speakFrom(other: Exclude<Language, 'en'>, entries: Entries): void {
  spoken = { language: other, catalogue: catalogueOf(other, entries) };
}

/** Null when there is nothing to look it up in, or it is not there. `count`: the number that decides. */
export function translate(
  strings: readonly string[],
  values: readonly (string | number)[],
  count?: number,
): string | null {
  const { catalogue } = spoken;
  if (!catalogue) return null;
  const key = keyOf(strings);
  const given = { ...values, ...(count === undefined ? {} : { count }) };
  return catalogue.exists(key, given) ? catalogue.t(key, given) : null;
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

function catalogueOf(other: Language, entries: Entries): i18n {
  const catalogue = i18next.createInstance();
  void catalogue.init({
    lng: other,
    resources: { [other]: { translation: withPlurals(entries) } },
    initAsync: false,
    keySeparator: false,
    nsSeparator: false,
    contextSeparator: '\0',
    // Sentences go to the page as text and onto paper: there is nothing to escape.
    interpolation: { prefix: '{', suffix: '}', escapeValue: false },
    // Braces that hold no value are words: {"by": "anyone"}.
    missingInterpolationHandler: (_, [braces]: RegExpExecArray) => braces,
  });
  return catalogue;
}

/** The library looks for the form that the language's rule (CLDR) names behind the key. */
function withPlurals(entries: Entries): Record<string, string> {
  return Object.fromEntries(
    Object.entries(entries).flatMap(([english, other]) =>
      typeof other === 'string'
        ? [[english, other]]
        : [
            [`${english}_one`, other[0]],
            [`${english}_other`, other[1]],
          ],
    ),
  );
}
