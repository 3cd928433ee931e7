/** An ensemble written as text. */

import { counted } from './counting.ts';

export const ensembleWords = {
  ensemble: {
    action: 'Set an ensemble from text…',
    title: 'Write down who plays',
    how: 'Names or abbreviations with commas between them, from stage right on: “2 vl, va, vc”, “clarinet, viola, percussion” or “string quartet + cl”.',
    field: 'Ensemble',
    example: '2 vl, va, vc',
    understood: 'Understood as',
    many: (count: number, name: string) => (count === 1 ? name : `${count} × ${name}`),
    shape: 'Shape',
    shapes: { arc: 'Arc', row: 'Row', horseshoe: 'Horseshoe', pairs: 'Facing pairs' },
    withStands: 'Each with a music stand',
    withShared: 'With music stands',
    shared: 'Two who face each other share one, back to back',
    preview: 'How they would be placed',
    looking: 'Looking for places from which they see each other and the house sees them…',
    remains: (fails: number, cautions: number, notes: number) => {
      if (fails + cautions + notes === 0) return 'The checks find nothing in this placing.';
      const rest = [
        cautions === 0 ? '' : counted(cautions, 'caution', 'cautions'),
        notes === 0 ? '' : counted(notes, 'note', 'notes'),
      ].filter(Boolean);
      const parts = [fails === 0 ? 'Nothing fails' : `${fails} failing`, ...rest];
      return `${parts.join(', ')}: no placing of this shape that was tried is better in this house.`;
    },
    remainsList: 'What will remain, and why',
    set: (count: number) => (count === 0 ? 'Set them' : `Set ${counted(count, 'player', 'players')}`),
  },
} as const;
