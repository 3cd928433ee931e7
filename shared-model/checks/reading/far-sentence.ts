/** Pages far away, in words. */

import { formatLength } from '../../document/measures.ts';
import type { Millimetres } from '../../document/records.ts';
import { figure, subject, type Sentence } from '../sentence-parts.ts';
import { LEAST_LETTERING } from './published.ts';

/** What is said with "about" is told in such steps, downwards. */
const STEP: Millimetres = 50;

export const farSentence: Sentence = (finding, document, setup, units) => {
  const [player, stand] = [subject(finding, 0, document, setup), subject(finding, 1, document, setup)];
  const [from, to] = ['nearest', 'farthest'].map((name) => formatLength(figure(finding, name), units));
  const within = formatLength(Math.floor(figure(finding, 'within') / STEP) * STEP, units);
  const space =
    finding.detail['staff'] === 'typed'
      ? 'a staff space'
      : 'even a space of the staves that librarians find most readable (MOLA guidelines, 2017)';
  // Rounded down: what is under the limit does not read as the limit.
  const looks = (Math.floor(finding.measured * 10) / 10).toFixed(1);
  const least = finding.required.toFixed(1);
  return {
    headline: `${player} reads ${stand} from far away`,
    text:
      `From ${from} to ${to} away ${space} looks ${looks} minutes of arc tall. ` +
      `Under ${least} is a caution of this tool’s own: so small are the details of letters of ${LEAST_LETTERING} minutes, the least of ISO 9241-3. For staves no standard sets a limit.`,
    advice: `Bring the pages to within about ${within} of the eyes.`,
  };
};
