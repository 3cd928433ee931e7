/** Speaks a language whose catalogue comes when it is wanted. */

import { speakEnglish, speakFrom } from './catalogue.ts';
import type { Language } from './languages.ts';

export async function speak(language: Language): Promise<void> {
  if (language === 'en') return speakEnglish();
  const { german } = await import('./german/index.ts');
  speakFrom('de', german);
}
