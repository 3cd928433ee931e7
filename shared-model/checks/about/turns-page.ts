import { atMost } from '../../words/numbers.ts';
import { t } from '../../words/say.ts';
import { lookAheadAt } from '../../pages/planner/instance.ts';
import type { AboutPage } from './check-page.ts';
import { PRACTICE } from './cited.ts';

export function turnsPage(): AboutPage<'turns'> {
  const lookAhead = lookAheadAt({ id: '', pages: 0, readings: [], free: [] }, 0);
  return {
    id: 'turns',
    title: t`Page turns along the music`,
    asks: t`Who turns what, when, so that every page is in view while it is read?`,
    computes: [
      t`The music is unfolded as it is played, repeats and jumps included. A page must be in view while it is read and a look-ahead before; a turn needs a player with a free hand, who can reach that leaf and rests for as long as it takes.`,
      t`Of all plans that keep these rules the one with the fewest turns is looked for; among those the fewest stands, then the narrowest row, then the fewest printed panels, then the fewest jumps of the eye. What is called proved was searched through; where the search ended early, the panel says how far it got.`,
      t`How long a turn takes comes from the page about reaching. A plan that you make yourself is judged by the same rules, and the panel names each one that it breaks.`,
    ],
    verdicts: [
      {
        code: 'turns.broken',
        severity: 'fail',
        when: t`The page plan that is kept breaks any of these rules. One finding is made of the whole plan: it counts them and tells the gravest.`,
      },
    ],
    figures: [
      {
        what: t`Look-ahead`,
        value: t`the bar before, or ${atMost(lookAhead, 1)} s where there is none`,
        source: PRACTICE,
      },
    ],
    settings: [
      { kind: 'form', form: 'music', what: t`The score or the tables, the tempo, who plays which part` },
      { kind: 'form', form: 'turns', what: t`Turns and pages that shall stay as they are` },
      { kind: 'form', form: 'stand', what: t`How many pages a desk holds, and who reads there` },
    ],
    unknown: [
      t`How a tempo breathes on the night: times are those of the score, or as you typed them.`,
      t`Paper that sticks, draughts and nerves. Try every turn in a rehearsal.`,
      t`A plan that is kept is judged only where the setup has music, and its players have parts with pages.`,
    ],
    caution: null,
    related: ['reach', 'reading'],
  };
}
