/** A worker speaks as the window that started it, which gives it the language for its name. */

import { speakFrom } from '#model/words/speak-from.ts';
import type { Language } from '#model/words/languages.ts';

/** To be waited for before anything is said. */
export const spoken: Promise<void> = speak(self.name as Language | '');

async function speak(language: Language | ''): Promise<void> {
  if (language !== 'de') return;
  const { german } = await import('#model/words/german/index.ts');
  speakFrom('de', german);
}
