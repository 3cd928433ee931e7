/** Every word of the window in German. */

import type { Catalogue } from '../../text.ts';
import { percent } from '../counting.ts';
import { elements } from './counting.ts';
import { commandsWords } from './commands.ts';
import { keysWords } from './keys.ts';
import { thingsWords } from './things.ts';
import { dialogsWords } from './dialogs.ts';
import { ensembleWords } from './ensemble.ts';
import { findingsWords } from './findings.ts';
import { formsWords } from './forms.ts';
import { handsWords } from './hands.ts';
import { helpWords } from './help.ts';
import { musicWords } from './music.ts';
import { guides, kinds, kindsMany, shelves } from './names.ts';
import { packWords } from './pack.ts';
import { paperWords } from './paper.ts';
import { partsWords } from './parts.ts';
import { planWords } from './plan.ts';
import { programmeWords } from './programme.ts';
import { stripWords } from './strip.ts';
import { turnsWords } from './turns.ts';
import { underlayWords } from './underlay.ts';
import { windowWords } from './window.ts';

export const german: Catalogue = {
  product: 'Standlines',
  percent,
  copied: (count) => `${elements(count)} kopiert`,
  did: (label) => `Ausgeführt: ${label}`,
  removedAlong: (who, what) => `Gelöscht: ${who}; mit gelöscht: ${what}.`,
  undid: (label) => `Rückgängig gemacht: ${label}`,
  redid: (label) => `Wiederholt: ${label}`,
  kinds,
  kindsMany,
  shelves,
  guides,
  list: (names) =>
    names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} und ${names.at(-1)}`,
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
};
