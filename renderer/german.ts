/**
 * The German page begins with this: only when the words are chosen comes the window, so that everything in it is said
 * in German. Imported as usual, it would be put beside them and read first.
 */

import { speakFrom } from '#model/words/speak-from.ts';
import { german } from '#model/words/german/index.ts';
import { choose } from './app/words/chosen.ts';
import { german as windowWords } from './app/words/german/index.ts';

speakFrom('de', german);
choose(windowWords);
void import('./main.ts');
