/** The few words that are wanted before the window's catalogue is there, and how the window comes in their language. */

import { planWords as germanPlan } from '../app/words/german/plan.ts';
import { windowWords as germanWindow } from '../app/words/german/window.ts';
import { planWords } from '../app/words/plan.ts';
import type { Widened } from '../app/words/widened.ts';
import { windowWords } from '../app/words/window.ts';
import type { Starting } from './starting.ts';

const english = { ...windowWords, house: planWords.house };

export type StartWords = Widened<typeof english>;

const german: StartWords = { ...germanWindow, house: germanPlan.house };

interface InLanguage {
  readonly words: StartWords;
  readonly fetchWindow: () => Promise<{ readonly open: (starting: Starting) => unknown }>;
}

/** `language`: of the page. */
export function inLanguage(language: string): InLanguage {
  if (language === 'de') return { words: german, fetchWindow: () => import('../german.ts') };
  return { words: english, fetchWindow: () => import('../main.ts') };
}
