/** An ensemble written as text. */

import { counted } from '../counting.ts';
import type { ensembleWords as english } from '../ensemble.ts';
import type { Widened } from '../widened.ts';

export const ensembleWords: Widened<typeof english> = {
  ensemble: {
    action: 'Ensemble aus Text…',
    title: 'Aufschreiben, wer spielt',
    how: 'Namen oder Abkürzungen mit Kommas dazwischen, vom Saal aus von links an: „2 Vl, Va, Vc“, „Klarinette, Viola, Schlagzeug“ oder „Streichquartett + Kl“.',
    field: 'Besetzung',
    example: '2 Vl, Va, Vc',
    understood: 'Verstanden als',
    many: (count, name) => (count === 1 ? name : `${count} × ${name}`),
    shape: 'Form',
    shapes: { arc: 'Bogen', row: 'Reihe', horseshoe: 'Hufeisen', pairs: 'Paare, einander zugewandt' },
    withStands: 'Jeder mit Pult',
    withShared: 'Mit Pulten',
    shared: 'Zwei, die einander gegenübersitzen, teilen sich eines, Rücken an Rücken',
    preview: 'Wie sie stehen würden',
    looking: 'Plätze werden gesucht, auf denen man einander sieht und vom Saal aus gesehen wird …',
    remains: (fails, cautions, notes) => {
      if (fails + cautions + notes === 0) return 'Die Prüfungen finden an dieser Aufstellung nichts.';
      const rest = [
        cautions === 0 ? '' : `${cautions} zur Vorsicht`,
        notes === 0 ? '' : counted(notes, 'Hinweis', 'Hinweise'),
      ].filter(Boolean);
      const parts = [fails === 0 ? 'Nichts verfehlt' : `${fails} verfehlt`, ...rest];
      return `${parts.join(', ')}: Keine versuchte Aufstellung in dieser Form ist in diesem Saal besser.`;
    },
    remainsList: 'Was bleiben wird, und warum',
    set: (count) => (count === 0 ? 'Aufstellen' : `${counted(count, 'Spieler', 'Spieler')} aufstellen`),
  },
};
