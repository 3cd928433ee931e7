/** Pages far away, in words. */

import { formatLength } from '../../document/measures.ts';
import type { Millimetres } from '../../document/records.ts';
import { fixed } from '../../words/numbers.ts';
import { t } from '../../words/say.ts';
import { figure, subject, type Sentence } from '../sentence-parts.ts';
import { LEAST_LETTERING } from './published.ts';

/** What is said with "about" is told in such steps, downwards. */
const STEP: Millimetres = 50;

export const farSentence: Sentence = (finding, document, setup, units) => {
  const [player, stand] = [subject(finding, 0, document, setup), subject(finding, 1, document, setup)];
  const lengthOf = (name: string): string => formatLength(figure(finding, name), units);
  const [from, to] = [lengthOf('nearest'), lengthOf('farthest')];
  const within = formatLength(Math.floor(figure(finding, 'within') / STEP) * STEP, units);
  // Rounded down: what is under the limit does not read as the limit.
  const looks = fixed(Math.floor(finding.measured * 10) / 10, 1);
  const least = fixed(finding.required, 1);
  const seen =
    finding.detail['staff'] === 'typed'
      ? t`From ${from} to ${to} away a staff space looks ${looks} minutes of arc tall.`
      : t`From ${from} to ${to} away even a space of the staves that librarians find most readable (MOLA guidelines, 2017) looks ${looks} minutes of arc tall.`;
  const why = t`Under ${least} is a caution of this tool’s own: so small are the details of letters of ${LEAST_LETTERING} minutes, the least of ISO 9241-3. For staves no standard sets a limit.`;
  return {
    headline: t`${player} reads ${stand} from far away`,
    text: `${seen} ${why}`,
    advice: t`Bring the pages to within about ${within} of the eyes.`,
  };
};
