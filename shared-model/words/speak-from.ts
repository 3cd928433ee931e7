/** Speaks from a catalogue. Apart from `catalogue.ts`, so that what speaks English alone needs no library. */

import i18next, { type i18n } from 'i18next';
import { speakWith, type Entries } from './catalogue.ts';
import type { Language } from './languages.ts';

/** For the whole of the window, the shell or the worker; to be called before anything is said. */
export function speakFrom(other: Exclude<Language, 'en'>, entries: Entries): void {
  const catalogue = catalogueOf(other, entries);
  speakWith(other, (key, values, count) => {
    const given = { ...values, ...(count === undefined ? {} : { count }) };
    return catalogue.exists(key, given) ? catalogue.t(key, given) : null;
  });
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
