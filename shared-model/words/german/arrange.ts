/** Ensembles that are written as text. */

import type { Entries } from '../catalogue.ts';
import { members } from './members.ts';

export const arrange: Entries = {
  '“{0}”: give at least one.': '„{0}“: mindestens 1 angeben.',
  '“{0}” makes more than {1} players; set up larger groups one by one.':
    '„{0}“ ergibt mehr als {1} Spieler; größere Gruppen einzeln aufstellen.',
  '“{0}” is no instrument of the catalogue: write its name, or an abbreviation such as vl, va, vc, cl, pf.':
    '„{0}“ ist kein Instrument des Katalogs: seinen Namen schreiben oder eine Abkürzung wie Vl, Va, Vc, Kl, Klav.',
  '“{0}” is no instrument of the catalogue: do you mean “{1}”?':
    '„{0}“ ist kein Instrument des Katalogs: ist „{1}“ gemeint?',
  '“{0}” is made up in several ways: write who plays.':
    '„{0}“ gibt es in mehreren Besetzungen: aufschreiben, wer spielt.',
  '“{0}” is not understood: put a comma after each who plays.':
    '„{0}“ ist nicht verständlich: zwischen allen, die spielen, ein Komma setzen.',
  ...members,
};
