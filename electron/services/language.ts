/** The language that the shell and its windows speak. */

import { speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { languageFor, type Language } from '#model/words/languages.ts';
import type { Fs } from './fs.ts';
import { readSettings } from './settings.ts';

/**
 * What a page is served in that is loaded now, by the user's settings, else by what is `preferred` (language tags, the
 * most wanted first). From then on the shell speaks it too: one person has one program.
 */
export async function speakTo(fs: Fs, state: string, preferred: readonly string[]): Promise<Language> {
  const { language: choice } = await readSettings(fs, state);
  const language = languageFor(choice, preferred);
  await speak(language);
  return language;
}

/** Its catalogue is read when it is wanted. */
export async function speak(language: Language): Promise<void> {
  if (language === 'en') return speakEnglish();
  const { german } = await import('#model/words/german/index.ts');
  speakFrom('de', german);
}

/** Language tags of an Accept-Language header (RFC 9110, 12.5.4), the most wanted first. */
export function wantedIn(header: string | undefined): string[] {
  return (header ?? '')
    .split(',')
    .map((entry) => {
      const [tag = '', ...parameters] = entry.trim().split(/\s*;\s*/);
      const quality = parameters.find((each) => each.startsWith('q='));
      return { tag, weight: quality ? Number(quality.slice(2)) : 1 };
    })
    .filter(({ tag, weight }) => tag !== '' && weight > 0)
    .sort((a, b) => b.weight - a.weight)
    .map(({ tag }) => tag);
}
