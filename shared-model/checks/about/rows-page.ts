import { t } from '../../words/say.ts';
import { CLEARANCE_BANDS, type ClearanceBand } from '../sightlines/rake-clearance.ts';
import type { AboutFigure, AboutPage, Teller } from './check-page.ts';
import { ROW_FORMULA } from './cited.ts';

export function rowsPage({ length }: Teller): AboutPage<'rows'> {
  return {
    id: 'rows',
    title: t`Row over row: the section and its C-value`,
    asks: t`By how much does the line of sight of a row clear the eyes in front?`,
    computes: [
      t`C = D · (N + R) / (D + T) − R. D is how far the eye in front is from what is looked at, R how high it is above that point, T the depth of the row and N the step up to the eyes behind. C is how far above the eye in front the line of sight passes, so a head is cleared only where C is more than its height above the eye.`,
      t`D and R are those of the person in front. The point looked at is the floor at the edge of the platform, or the lowest point of a player’s window, as you choose in the section.`,
      t`Where rows are staggered, the row that counts is the nearest one with a head in line. The table also gives the step that a wanted C would need.`,
    ],
    verdicts: [],
    figures: [
      { what: t`The formula`, value: t`as above`, source: ROW_FORMULA },
      ...CLEARANCE_BANDS.map((band, index) => bandFigure(band, CLEARANCE_BANDS[index + 1], length)),
    ],
    settings: [{ kind: 'form', form: 'seats', what: t`Depth and step of the rows, height of the eyes` }],
    unknown: [
      t`The bands were written for stadiums; for a hall they are a comparison and not a rule.`,
      t`All eyes of a block are equally high, and everybody sits upright.`,
      t`The formula sees one line in an upright plane. What really hides a player, from the side too, is what the seats on the plan show.`,
    ],
    caution: null,
    related: ['sight'],
  };
}

function bandFigure(
  { from, words, source, standing }: ClearanceBand,
  next: ClearanceBand | undefined,
  length: Teller['length'],
): AboutFigure {
  const what = from > 0 ? t`C from ${length(from)}` : t`C below ${length(next?.from ?? 0)}`;
  return {
    what,
    value: words,
    source: { standing, cited: source },
  };
}
