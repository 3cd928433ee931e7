/** Who sings, plays or speaks in an ensemble that is written as text. */

import type { Entries } from '../catalogue.ts';

export const members: Entries = {
  Soprano: 'Sopran',
  'Mezzo-soprano': 'Mezzosopran',
  Alto: 'Alt',
  Countertenor: 'Countertenor',
  Tenor: 'Tenor',
  Baritone: 'Bariton',
  'Bass voice': 'Bassstimme',
  Voice: 'Stimme',
  Speaker: 'Sprecher',
  Piano: 'Klavier',
  Percussion: 'Schlagzeug',
};
