/** Every word of the window, put together from `words/`. `Catalogue` is what a second language has to fill. */

import { chosen } from './words/chosen.ts';
import { counted, percent } from './words/counting.ts';
import { commandsWords } from './words/commands.ts';
import { keysWords } from './words/keys.ts';
import { thingsWords } from './words/things.ts';
import { dialogsWords } from './words/dialogs.ts';
import { ensembleWords } from './words/ensemble.ts';
import { findingsWords } from './words/findings.ts';
import { formsWords } from './words/forms.ts';
import { helpWords } from './words/help.ts';
import { handsWords } from './words/hands.ts';
import { musicWords } from './words/music.ts';
import { guides, kinds, kindsMany, shelves } from './words/names.ts';
import { packWords } from './words/pack.ts';
import { paperWords } from './words/paper.ts';
import { partsWords } from './words/parts.ts';
import { planWords } from './words/plan.ts';
import { programmeWords } from './words/programme.ts';
import { stripWords } from './words/strip.ts';
import { turnsWords } from './words/turns.ts';
import { underlayWords } from './words/underlay.ts';
import type { Widened } from './words/widened.ts';
import { windowWords } from './words/window.ts';

const english = {
  product: 'Standlines',
  percent,
  copied: (count: number) => `Copied ${counted(count, 'thing', 'things')}`,
  did: (label: string) => `Done: ${label}`,
  removedAlong: (who: string, what: string) => `Deleted ${who}, and what came along: ${what}.`,
  undid: (label: string) => `Undone: ${label}`,
  redid: (label: string) => `Done again: ${label}`,
  kinds,
  kindsMany,
  shelves,
  guides,
  list: (names: readonly string[]) =>
    names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`,
  ...windowWords,
  ...planWords,
  ...findingsWords,
  ...formsWords,
  ...musicWords,
  ...partsWords,
  ...turnsWords,
  ...packWords,
  ...paperWords,
  ...programmeWords,
  ...stripWords,
  ...ensembleWords,
  ...handsWords,
  ...dialogsWords,
  ...helpWords,
  ...commandsWords,
  ...keysWords,
  ...thingsWords,
  ...underlayWords,
} as const;

export type Catalogue = Widened<typeof english>;

export const text: Catalogue = chosen() ?? english;
