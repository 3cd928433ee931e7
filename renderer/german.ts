/** The German page begins with this, so that everything that comes after is said in German. */

import { speakFrom } from '#model/words/catalogue.ts';
import { german } from '#model/words/german/index.ts';
import { choose } from './app/words/chosen.ts';
import { german as windowWords } from './app/words/german/index.ts';

speakFrom('de', german);
choose(windowWords);
