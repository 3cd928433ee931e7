import { lookAheadAt } from '../../pages/planner/instance.ts';
import type { AboutPage } from './check-page.ts';
import { PRACTICE } from './cited.ts';

export function turnsPage(): AboutPage<'turns'> {
  const lookAhead = lookAheadAt({ id: '', pages: 0, readings: [], free: [] }, 0);
  return {
    id: 'turns',
    title: 'Page turns along the music',
    asks: 'Who turns what, when, so that every page is in view while it is read?',
    computes: [
      'The music is unfolded as it is played, repeats and jumps included. A page must be in view while it is read and a look-ahead before; a turn needs a player with a free hand, who can reach that leaf and rests for as long as it takes.',
      'Of all plans that keep these rules the one with the fewest turns is looked for; among those the fewest stands, then the narrowest row, then the fewest printed panels, then the fewest jumps of the eye. What is called proved was searched through; where the search ended early, the panel says how far it got.',
      'How long a turn takes comes from the page about reaching. A plan that you make yourself is judged by the same rules, and the panel names each one that it breaks.',
    ],
    verdicts: [
      {
        code: 'turns.broken',
        severity: 'fail',
        when: 'The page plan that is kept breaks any of these rules. One finding is made of the whole plan: it counts them and tells the gravest.',
      },
    ],
    figures: [
      {
        what: 'Look-ahead',
        value: `the bar before, or ${lookAhead} s where there is none`,
        source: PRACTICE,
      },
    ],
    settings: [
      { kind: 'form', form: 'music', what: 'The score or the tables, the tempo, who plays which part' },
      { kind: 'form', form: 'turns', what: 'Turns and pages that shall stay as they are' },
      { kind: 'form', form: 'stand', what: 'How many pages a desk holds, and who reads there' },
    ],
    unknown: [
      'How a tempo breathes on the night: times are those of the score, or as you typed them.',
      'Paper that sticks, draughts and nerves. Try every turn in a rehearsal.',
      'A plan that is kept is judged only where the setup has music, and its players have parts with pages.',
    ],
    caution: null,
    related: ['reach', 'reading'],
  };
}
