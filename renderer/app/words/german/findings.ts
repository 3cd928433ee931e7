/** What the checks say beside the plan. */

import { fixed } from '#model/words/numbers.ts';
import type { findingsWords as english } from '../findings.ts';
import type { Widened } from '../widened.ts';
import { severities } from './names.ts';

export const findingsWords: Widened<typeof english> = {
  figures: {
    title: 'Lesen, Umblättern, Blickkontakt',
    pages: (stand) => `Noten auf ${stand}`,
    distance: (nearest, farthest) =>
      nearest === farthest ? `${nearest} entfernt` : `${nearest} bis ${farthest} entfernt`,
    angle: (degrees) => `${Math.round(degrees)}° schräg zum Blatt`,
    space: (minutes) => `ein Zwischenraum ist ${fixed(minutes, 1)} Bogenminuten hoch`,
    bearing: (degrees) => {
      const whole = Math.round(degrees);
      if (whole === 0) return 'geradeaus';
      return `${Math.abs(whole)}° nach ${whole > 0 ? 'links' : 'rechts'}`;
    },
    turns: {
      glance: 'ein Blick',
      eyes: 'mit den Augen',
      head: 'mit dem Kopf',
      body: 'mit dem ganzen Körper',
    },
    eyesMeet: 'Blickkontakt',
    blocked: (things) => `im Weg: ${things}`,
    house: 'Der Saal',
    grips: {
      turnCorner: (item) => `Umblättern auf ${item}`,
      turnRidge: (item) => `Umblättern auf ${item}`,
      pickUp: (item) => `Greifen: ${item}`,
    },
    manners: {
      reach: 'in Reichweite',
      lean: 'vorgebeugt',
      step: 'mit einem Schritt',
      walk: 'nur mit Hingehen',
      none: 'nicht zu erreichen',
    },
    takes: (seconds) => `etwa ${fixed(seconds, 1)}\u00a0s`,
    rest: (seconds, source) =>
      `Pause ${fixed(seconds, 1)}\u00a0s, ${source === 'part' ? 'aus der Stimme' : 'wie eingegeben'}`,
    noRest: 'Pause nicht bekannt',
    toHouse: (degrees) =>
      Math.round(degrees) === 0 ? 'geradeaus' : `${Math.round(degrees)}° neben der Blickrichtung`,
  },

  whatIf: {
    title: 'Was der Saal sehen würde',
    caption: 'Anteil der Plätze, die einen Spieler gut sehen',
    player: 'Spieler',
    now: 'Jetzt',
    gone: 'Ohne',
    lowered: 'Tiefer',
    turned: 'Gedreht',
    by: (lower, turn) =>
      [
        lower === null ? '' : `Tiefer: um ${lower}, so weit es geht.`,
        turn === null ? '' : `Gedreht: um ${turn}, wo am meisten zu sehen ist.`,
      ]
        .filter(Boolean)
        .join(' '),
    turn: (degrees, side) => `${degrees}° nach ${side}`,
    nobody: 'Wegnehmen, Tieferstellen oder Drehen ändert für keinen Platz etwas, worauf es ankäme.',
    looking: 'Wird ausprobiert…',
  },

  findings: {
    label: 'Befunde',
    none: 'Die Prüfungen haben in dieser Aufstellung nichts gefunden.',
    waiting: 'Wird geprüft…',
    failed: (message) =>
      `Die Prüfungen sind mit einem Fehler abgebrochen: ${message}. Die Zahlen sind womöglich veraltet.`,
    severities,
    sufferers: { house: 'Der Saal', all: 'Alle auf dem Podium' },
    tryIt: 'Ausprobieren',
    tried: 'Eine Änderung, die ausprobiert ist und hilft',
    looking: 'Abhilfe wird gesucht…',
    mendsAll: (count) => `Behebt alle ${count} auf einmal`,
    mendsMost: (count, of, left) => `Behebt ${count} von ${of}; es bleibt: ${left}`,
    oneCause: (count) => `${count} mit einer Ursache`,
    show: 'Im Plan zeigen',
    showAll: (count) => `Alle ${count} zeigen`,
    count: (fails, cautions) => `${fails}-mal verfehlt, ${cautions}-mal Vorsicht`,
    disclaimer:
      'Zu Kanten, Kabeln, Wegen und Lasten gibt dieses Werkzeug nur Sicherheitshinweise. Es entscheiden die örtlichen Vorschriften, die Spielstätte und zugelassene Fachleute.',
  },
};
