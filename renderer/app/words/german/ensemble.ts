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
    set: (count) => (count === 0 ? 'Aufstellen' : `${counted(count, 'Spieler', 'Spieler')} aufstellen`),
  },
};
