/** The languages there are, and which of them somebody is spoken to in. */

export const LANGUAGES = ['en', 'de'] as const;

export type Language = (typeof LANGUAGES)[number];

/** What somebody may choose; `system`: what the system or the browser prefers. */
export type LanguageChoice = Language | 'system';

/**
 * The language to speak: the one chosen, else the first of the preferred ones that there is, else English.
 * `preferred`: language tags (BCP 47), the most wanted first.
 */
export function languageFor(choice: LanguageChoice, preferred: readonly string[]): Language {
  if (choice !== 'system') return choice;
  return preferred.map(spoken).find((language) => language !== null) ?? 'en';
}

/** "de-AT" is German; null for a language that is not here. */
function spoken(tag: string): Language | null {
  const [primary] = tag.toLowerCase().split('-');
  return LANGUAGES.find((language) => language === primary) ?? null;
}
