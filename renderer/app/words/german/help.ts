/** The help: pages about the checks, and the first things to try. */

import { counted } from '../counting.ts';
import type { helpWords as english } from '../help.ts';
import type { Widened } from '../widened.ts';
import { helpPagesWords } from './help-pages.ts';

export const helpWords: Widened<typeof english> = {
  help: {
    title: 'Wie geprüft wird',
    action: 'Hilfe: wie geprüft wird',
    page: (title) => `Hilfe: ${title}`,
    fromFinding: 'Wie das geprüft wird',
    search: 'Suchen: Kante, Rollstuhl…',
    pages: 'Seiten',
    found: (count) => counted(count, 'Seite', 'Seiten'),
    nothing: 'Keine Seite enthält alle diese Wörter.',
    back: 'Zurück',
    computes: 'Was berechnet wird',
    verdicts: 'Wann es einen Befund gibt',
    figures: 'Zahlen und ihre Herkunft',
    figure: 'Größe',
    value: 'Wert',
    source: 'Quelle',
    settings: 'Was sich einstellen lässt',
    now: (value) => `jetzt ${value}`,
    change: 'In „Konzert und Grenzwerte“ ändern',
    unknown: 'Was nicht bekannt ist',
    caution: 'Vorsicht',
    related: 'Siehe auch',
    on: 'ja',
    off: 'nein',
    forms: {
      player: 'in den Eigenschaften des Spielers',
      instrument: 'in den Eigenschaften des Spielers, unter Instrumente',
      stand: 'in den Eigenschaften des Pults',
      piano: 'in den Eigenschaften des Klaviers',
      lamp: 'in den Eigenschaften der Lampe',
      platform: 'in den Eigenschaften des Podiums',
      door: 'in den Eigenschaften des Podiums, unter Türen',
      seats: 'in den Eigenschaften des Blocks',
      music: 'in der Musik der Aufstellung',
      turns: 'in den Wendestellen unter dem Plan',
      stock: 'im Programm des Konzerts',
    },
    standings: {
      published: 'veröffentlicht',
      quoted: 'nach Zitat',
      memory: 'aus dem Gedächtnis, nicht nachgeschlagen',
      practice: '',
      own: '',
    },
    hints: 'Erste Schritte zeigen',
    more: helpPagesWords,
  },
};
