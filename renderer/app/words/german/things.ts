/** Things of the store that no catalogue names, and the words by which things are found beside their names: lower case. */

import type { thingsWords as english } from '../things.ts';
import type { Widened } from '../widened.ts';

export const thingsWords: Widened<typeof english> = {
  toPlace: {
    backToBack: (stand) => `${stand}, Rücken an Rücken`,
    withPlayer: (instrument) => `${instrument}, mit Spieler`,
    riser: 'Podest, 2 × 1 m',
    smallRiser: 'Podest, 1 × 1 m',
    lamp: 'Stehlampe',
    box: 'Kiste oder Koffer',
    screen: 'Stellwand',
    column: 'Säule des Gebäudes',
    storage: 'Lager',
    named: { box: 'Kiste', screen: 'Stellwand', column: 'Säule', storage: 'Lager' },
    families: {
      woodwind: 'spieler musiker bläser holzbläser holz',
      brass: 'spieler musiker bläser blechbläser blech',
      bowed: 'spieler musiker streicher saiten',
      plucked: 'spieler musiker zupfer zupfinstrument saiten',
      keyboard: 'spieler musiker tasten tasteninstrument',
      percussion: 'spieler musiker schlagwerk schlagzeug',
      voice: 'spieler sänger stimme gesang',
    },
    foundBy: {
      stand: 'notenpult notenständer auflage',
      pair: 'notenpult notenständer doppelpult paar zwei leser',
      seat: 'sitz stuhl hocker bank',
      holder: 'instrumentenständer halter ablage wechsel',
      table: 'tisch ablage brett',
      alone: 'instrument ohne spieler',
      pianoAlone: 'klavier flügel ohne spieler',
      pianist: 'spieler musiker pianist klavier flügel tasten',
      riser: 'podest ebene stufe bühne',
      smallRiser: 'podest ebene stufe bühne dirigent',
      lamp: 'licht leuchte lampe kabel',
      box: 'gegenstand form case transportkoffer',
      screen: 'gegenstand form wand trennwand muschel',
      column: 'gegenstand form pfeiler säule',
      storage: 'lager hinterbühne seitenbühne umbau wo etwas wartet',
    },
    noRoom: 'In dieser Form passen sie nicht auf das Podium: eine andere wählen oder weniger aufstellen.',
    addedPlayers: (count) => `${count} Spieler hinzufügen`,
    nothingToPaste: 'Es gibt nichts einzufügen.',
  },
};
