/**
 * The German window comes by way of this: the words are chosen before any of it is read, so that everything in it is said
 * in German. Imported as usual, it would be put beside them and read first.
 */

import { speakFrom } from '#model/words/speak-from.ts';
import { german } from '#model/words/german/index.ts';
import { choose } from './app/words/chosen.ts';
import { german as windowWords } from './app/words/german/index.ts';
import type { Starting } from './start/starting.ts';

export async function open(starting: Starting): Promise<void> {
  speakFrom('de', german);
  choose(windowWords);
  (await import('./main.ts')).open(starting);
}
