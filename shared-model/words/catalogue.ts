/** From a catalogue as it is written to one that the library reads, and which language is spoken. */

import { addLocale, useLocale } from 'ttag';
import type { Language } from './languages.ts';

/**
 * A sentence in English, its values as {0}, {1}, ..., to the same in another language, where they may stand in another
 * order. With a number that decides: the English singular to the forms for one and for many.
 */
export type Entries = Readonly<Record<string, string | readonly [one: string, many: string]>>;

let spoken: Language = 'en';

/** What the window, the shell or the worker that runs this speaks. */
export function language(): Language {
  return spoken;
}

/** For the whole of the window, the shell or the worker; to be called before anything is said. */
export function speakEnglish(): void {
  spoken = 'en';
  useLocale('en');
}

/** As `speakEnglish`, with the catalogue of the other language. */
export function speakFrom(other: Exclude<Language, 'en'>, entries: Entries): void {
  spoken = other;
  const translations = { '': asTranslations(entries) };
  addLocale(other, { charset: 'utf-8', headers: { language: other }, translations });
  useLocale(other);
}

function asTranslations(entries: Entries) {
  return Object.fromEntries(
    Object.entries(entries).map(([english, other]) => {
      const msgid = withValues(english);
      return [msgid, { msgid, msgstr: [other].flat().map(withValues) }];
    }),
  );
}

/** The library writes the value {0} as ${ 0 }. */
function withValues(sentence: string): string {
  return sentence.replaceAll(/\{(\d+)\}/g, '${ $1 }');
}
