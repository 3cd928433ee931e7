/** The findings of the reading check in words. */

import { formatFacing, formatLength } from '../../document/measures.ts';
import { fixed } from '../../words/numbers.ts';
import { t } from '../../words/say.ts';
import type { Finding } from '../finding.ts';
import { farSentence } from './far-sentence.ts';
import type { ReadingCode } from './faults.ts';
import { TURN_LIMITS } from './gaze.ts';
import { EDGE_ON, GREATEST_ANGLE, STAFF } from './published.ts';
import { angle, angleOver, figure, staff, subject, type Sentence } from '../sentence-parts.ts';

/** To be used by the code of a finding. */
export const readingSentence: Readonly<Record<ReadingCode, Sentence>> = {
  'reading.far': farSentence,

  'reading.angle': (finding, document, setup) => {
    const [player, stand] = [subject(finding, 0, document, setup), subject(finding, 1, document, setup)];
    if (finding.severity === 'fail') {
      return {
        headline: t`${player} sees ${stand} on edge or from behind`,
        text: t`From there the line of sight meets the page ${angle(finding.measured)} off square, and from ${EDGE_ON}° on nothing can be read.`,
        advice: angleAdvice(finding),
      };
    }
    return {
      headline: t`${player} reads ${stand} at a steep angle`,
      text: steepText(finding),
      advice: angleAdvice(finding),
    };
  },

  'reading.turn': (finding, document, setup) => {
    const [player, stand] = [subject(finding, 0, document, setup), subject(finding, 1, document, setup)];
    return {
      headline:
        finding.severity === 'note'
          ? t`${player} turns the head across the pages on ${stand}`
          : t`${player} turns the body across the pages on ${stand}`,
      text: t`The row ends ${angleOver(finding.measured, finding.required)} to the side of its middle. Eyes alone turn ${TURN_LIMITS.eyes}°, with the head ${TURN_LIMITS.head}° (NUREG-0700, after MIL-STD-1472G).`,
      advice: turnAdvice(finding),
    };
  },

  'reading.staff': (finding, document, setup, units) => {
    const [player, stand] = [subject(finding, 0, document, setup), subject(finding, 1, document, setup)];
    const size = staff(finding.measured);
    const from = formatLength(figure(finding, 'farthest'), units);
    const minutes = fixed(figure(finding, 'leastMinutes'), 1);
    const looks = t`From up to ${from} away a space of these staves looks ${minutes} minutes of arc tall at the least.`;
    const guideline = GUIDELINE[String(finding.detail['verdict'])]?.() ?? '';
    return {
      headline: t`${player} reads staves of ${size} on ${stand}`,
      text: `${guideline} ${looks}`,
      advice: staffAdvice(finding),
    };
  },
};

function steepText({ measured, severity }: Finding): string {
  const over = angleOver(measured, GREATEST_ANGLE);
  return severity === 'note'
    ? t`The line of sight meets the page ${over} off square at the outer lines. Displays are kept within ${GREATEST_ANGLE}° (NUREG-0700, after MIL-STD-1472G).`
    : t`The line of sight meets the page ${over} off square at the middle of a page. Displays are kept within ${GREATEST_ANGLE}° (NUREG-0700, after MIL-STD-1472G).`;
}

function angleAdvice(finding: Finding): string {
  const { change } = finding.detail;
  const [to, after] = [figure(finding, 'to'), angle(figure(finding, 'after'))];
  if (change === 'tilt') return t`Tilt the desk to ${angle(to)}, for ${after}.`;
  if (change === 'facing') return t`Turn the stand to face ${formatFacing(to)}, for ${after}.`;
  if (finding.severity === 'note')
    return t`Bring the row nearer to its reader’s middle, or use fewer pages side by side.`;
  return t`Change the desk’s height or its place: no tilt of it clears this, nor does turning a single stand.`;
}

function turnAdvice(finding: Finding): string {
  if (!('fewerPages' in finding.detail)) return t`Move the stand farther away.`;
  const pages = figure(finding, 'fewerPages');
  const after = angle(figure(finding, 'after'));
  return pages === 1
    ? t`Move the stand farther away, or put one page on it, for ${after}.`
    : t`Move the stand farther away, or put ${pages} pages on it, for ${after}.`;
}

const GUIDELINE: Readonly<Record<string, () => string>> = {
  tooSmall: () =>
    t`Orchestra librarians take no staves under ${staff(STAFF.least)}; ${staff(STAFF.good)} reads best (MOLA guidelines, 2017).`,
  smallForTwo: () =>
    t`Staves under ${staff(STAFF.good)} may do at a stand of one’s own, less so where two read; ${staff(STAFF.good)} reads best (MOLA guidelines, 2017).`,
  tooLarge: () => t`Orchestra librarians avoid staves over ${staff(STAFF.most)} (MOLA guidelines, 2017).`,
};

/** The print that brings the staves to the size that reads best, or down to the largest that is asked for. */
function staffAdvice({ measured, detail }: Finding): string {
  const wanted = detail['verdict'] === 'tooLarge' ? STAFF.most : STAFF.good;
  return t`Print them at ${Math.round((wanted / measured) * 100)} %, for ${staff(wanted)}.`;
}
