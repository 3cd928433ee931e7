/** The findings of the reading check in words. */

import { formatFacing, formatLength } from '../../document/measures.ts';
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
        headline: `${player} sees ${stand} on edge or from behind`,
        text: `From there the line of sight meets the page ${angle(finding.measured)} off square, and from ${EDGE_ON}° on nothing can be read.`,
        advice: angleAdvice(finding),
      };
    }
    const measured = angleOver(finding.measured, GREATEST_ANGLE);
    const where = finding.severity === 'note' ? 'at the outer lines' : 'at the middle of a page';
    return {
      headline: `${player} reads ${stand} at a steep angle`,
      text: `The line of sight meets the page ${measured} off square ${where}. Displays are kept within ${GREATEST_ANGLE}° (NUREG-0700, after MIL-STD-1472G).`,
      advice: angleAdvice(finding),
    };
  },

  'reading.turn': (finding, document, setup) => {
    const [player, stand] = [subject(finding, 0, document, setup), subject(finding, 1, document, setup)];
    const what = finding.severity === 'note' ? 'head' : 'body';
    return {
      headline: `${player} turns the ${what} across the pages on ${stand}`,
      text: `The row ends ${angleOver(finding.measured, finding.required)} to the side of its middle. Eyes alone turn ${TURN_LIMITS.eyes}°, with the head ${TURN_LIMITS.head}° (NUREG-0700, after MIL-STD-1472G).`,
      advice: turnAdvice(finding),
    };
  },

  'reading.staff': (finding, document, setup, units) => {
    const [player, stand] = [subject(finding, 0, document, setup), subject(finding, 1, document, setup)];
    const size = staff(finding.measured);
    const from = formatLength(figure(finding, 'farthest'), units);
    const minutes = figure(finding, 'leastMinutes').toFixed(1);
    return {
      headline: `${player} reads staves of ${size} on ${stand}`,
      text: `${GUIDELINE[String(finding.detail['verdict'])] ?? ''} From up to ${from} away a space of these staves looks ${minutes} minutes of arc tall at the least.`,
      advice: staffAdvice(finding),
    };
  },
};

function angleAdvice(finding: Finding): string {
  const { change } = finding.detail;
  const [to, after] = [figure(finding, 'to'), angle(figure(finding, 'after'))];
  if (change === 'tilt') return `Tilt the desk to ${angle(to)}, for ${after}.`;
  if (change === 'facing') return `Turn the stand to face ${formatFacing(to)}, for ${after}.`;
  if (finding.severity === 'note')
    return 'Bring the row nearer to its reader’s middle, or use fewer pages side by side.';
  return 'Change the desk’s height or its place: no tilt of it clears this, nor does turning a single stand.';
}

function turnAdvice(finding: Finding): string {
  if (!('fewerPages' in finding.detail)) return 'Move the stand farther away.';
  const pages = figure(finding, 'fewerPages');
  const after = angle(figure(finding, 'after'));
  return `Move the stand farther away, or put ${pages === 1 ? 'one page' : `${pages} pages`} on it, for ${after}.`;
}

const GUIDELINE: Readonly<Record<string, string>> = {
  tooSmall: `Orchestra librarians take no staves under ${STAFF.least} mm; ${STAFF.good} mm reads best (MOLA guidelines, 2017).`,
  smallForTwo: `Staves under ${STAFF.good} mm may do at a stand of one’s own, less so where two read; ${STAFF.good} mm reads best (MOLA guidelines, 2017).`,
  tooLarge: `Orchestra librarians avoid staves over ${STAFF.most} mm (MOLA guidelines, 2017).`,
};

/** The print that brings the staves to the size that reads best, or down to the largest that is asked for. */
function staffAdvice({ measured, detail }: Finding): string {
  const wanted = detail['verdict'] === 'tooLarge' ? STAFF.most : STAFF.good;
  return `Print them at ${Math.round((wanted / measured) * 100)} %, for ${staff(wanted)}.`;
}
