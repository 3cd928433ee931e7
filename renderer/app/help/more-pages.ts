/** The pages of help about what is no check of a setup. */

import type { AboutPage } from '#model/checks/about/check-page.ts';
import { DESIGN_WALK, PRACTICE, USUAL_WALK } from '#model/checks/about/cited.ts';
import { WALKING } from '#model/checks/reach/published.ts';
import { formatLength, type Units } from '#model/document/measures.ts';
import { carryingCaution } from '#model/programme/changeover-words.ts';
import { SAME_SPOT } from '#model/programme/changes.ts';
import { fixed } from '#model/words/numbers.ts';
import { text } from '../text.ts';

type MorePageId = 'changeover' | 'sources';

export function morePages(units: Units): readonly AboutPage<MorePageId>[] {
  return [changeoverPage(units), sourcesPage()];
}

function changeoverPage(units: Units): AboutPage<'changeover'> {
  const { title, asks, computes, unknown, ...words } = text.help.more.changeover;
  const between = words.between(fixed(WALKING.slow, 2), fixed(WALKING.brisk, 2));
  return {
    id: 'changeover',
    title,
    asks,
    computes,
    verdicts: [],
    figures: [
      { what: words.usualWalk, value: `${fixed(WALKING.usual, 2)} m/s`, source: DESIGN_WALK },
      { what: words.walks, value: between, source: USUAL_WALK },
      { what: words.handling, value: words.seconds, source: PRACTICE },
      { what: words.sameSpot, value: formatLength(SAME_SPOT, units), source: PRACTICE },
    ],
    settings: [{ kind: 'form', form: 'stock', what: words.stock }],
    unknown,
    caution: carryingCaution(),
    related: ['ways', 'reach'],
  };
}

function sourcesPage(): AboutPage<'sources'> {
  return {
    ...text.help.more.sources,
    id: 'sources',
    verdicts: [],
    figures: [],
    settings: [],
    caution: null,
    related: ['tried', 'sight'],
  };
}
