/** Pages of help about what is no check of a setup: changeovers, and how sources are marked. */

import type { AboutPage } from '#model/checks/about/check-page.ts';
import { DESIGN_WALK, PRACTICE, USUAL_WALK } from '#model/checks/about/cited.ts';
import { WALKING } from '#model/checks/reach/published.ts';
import { formatLength, type Units } from '#model/document/measures.ts';
import { CARRYING_CAUTION } from '#model/programme/changeover-words.ts';
import { SAME_SPOT } from '#model/programme/changes.ts';

type MorePageId = 'changeover' | 'sources';

export function morePages(units: Units): readonly AboutPage<MorePageId>[] {
  return [changeoverPage(units), sourcesPage()];
}

function changeoverPage(units: Units): AboutPage<'changeover'> {
  return {
    id: 'changeover',
    title: 'Changeovers between setups',
    asks: 'What is struck, set and moved between two setups, and how long may it take?',
    computes: [
      'Things of one kind stand in for each other: of all ways to make one setup of the other, the one with the least carrying is taken, along ways that really are free.',
      'Two people share the work in an order that is found by a few rules of preference; that no other order ends sooner is not promised. Times come with a least and a most.',
    ],
    verdicts: [],
    figures: [
      { what: 'Walking, as it usually goes', value: `${WALKING.usual.toFixed(2)} m/s`, source: DESIGN_WALK },
      {
        what: 'Walking, from slow to brisk',
        value: `${WALKING.slow} to ${WALKING.brisk} m/s`,
        source: USUAL_WALK,
      },
      { what: 'Brakes, marks, cables and adjusting', value: 'seconds each', source: PRACTICE },
      {
        what: 'A thing has not moved when it is within',
        value: formatLength(SAME_SPOT, units),
        source: PRACTICE,
      },
    ],
    settings: [{ kind: 'form', form: 'stock', what: 'What there is, and where it waits' }],
    unknown: [
      'Weights, who is there and what they can carry.',
      'Doors that are shut, and people in the way.',
    ],
    caution: CARRYING_CAUTION,
    related: ['ways', 'reach'],
  };
}

function sourcesPage(): AboutPage<'sources'> {
  return {
    id: 'sources',
    title: 'How sources are marked',
    asks: 'How far can a figure be trusted?',
    computes: [
      'Published: somebody has read the figure in the source that is named.',
      'As quoted: it was read where others quote it, and not in the source itself.',
      'From memory: nobody has looked it up. Check it before anything hangs on it.',
      'Common practice, no source: a fact of the trade that nobody publishes. This tool’s own: a choice, made to be useful.',
    ],
    verdicts: [],
    figures: [],
    settings: [],
    unknown: [
      'No figure says what is allowed: codes, the venue and licensed practice do.',
      'The survey is of soldiers from 17 to 58 years. Where it matters, measure the people who play.',
    ],
    caution: null,
    related: ['tried', 'sight'],
  };
}
