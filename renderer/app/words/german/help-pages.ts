/** Pages of help about what is no check of a setup: changeovers, and how sources are marked. */

import type { helpPagesWords as english } from '../help-pages.ts';
import type { Widened } from '../widened.ts';

export const helpPagesWords: Widened<typeof english> = {
  changeover: {
    title: 'Umbau zwischen Aufstellungen',
    asks: 'Was wird zwischen zwei Aufstellungen abgeräumt, aufgestellt und umgestellt, und wie lange kann das dauern?',
    computes: [
      'Dinge gleicher Art vertreten einander: Unter allen Möglichkeiten, aus einer Aufstellung die andere zu machen, wird die mit dem wenigsten Tragen genommen, auf Wegen, die wirklich frei sind.',
      'Zwei Leute teilen sich die Arbeit in einer Reihenfolge, die sich aus wenigen Regeln ergibt; dass keine andere schneller fertig ist, wird nicht versprochen. Zeiten stehen mit einem Mindest- und einem Höchstwert da.',
    ],
    usualWalk: 'Gehen, wie üblich',
    walks: 'Gehen, von langsam bis zügig',
    between: (slow, brisk) => `${slow} bis ${brisk} m/s`,
    handling: 'Bremsen, Marken, Kabel und Einstellen',
    seconds: 'je einige Sekunden',
    sameSpot: 'Ein Ding ist nicht umgestellt, wenn es näher bleibt als',
    stock: 'Was es gibt und wo es bereitsteht',
    unknown: [
      'Gewichte, wer da ist und was die Leute tragen können.',
      'Türen, die geschlossen sind, und Menschen im Weg.',
    ],
  },

  sources: {
    title: 'Wie Quellen gekennzeichnet sind',
    asks: 'Wie weit ist einer Zahl zu trauen?',
    computes: [
      'Veröffentlicht: Die Zahl ist in der genannten Quelle selbst nachgelesen.',
      'Nach Zitat: Sie ist dort nachgelesen, wo andere sie zitieren, nicht in der Quelle selbst.',
      'Aus dem Gedächtnis: Niemand hat sie nachgeschlagen. Prüfen, bevor etwas daran hängt.',
      'Übliche Praxis, ohne Quelle: eine Tatsache des Fachs, die niemand veröffentlicht. Eigene Wahl dieses Programms: eine Festlegung, die nützlich sein soll.',
    ],
    unknown: [
      'Keine Zahl sagt, was erlaubt ist: Das sagen Vorschriften, die Spielstätte und zugelassene Fachleute.',
      'Die Erhebung gilt für Soldatinnen und Soldaten von 17 bis 58 Jahren. Wo es darauf ankommt, die Spieler selbst messen.',
    ],
  },
};
