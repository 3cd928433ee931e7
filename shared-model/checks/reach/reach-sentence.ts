/** The findings of the reach check in words. */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { formatApart, formatLength, type Units } from '../../document/measures.ts';
import { clockWords } from '../../score/words/clock-words.ts';
import type { Finding, FindingCode } from '../finding.ts';
import { figure, subject, type Sentence } from '../sentence-parts.ts';
import { farAdvice, lateAdvice } from './reach-advice.ts';
import { timeWords, seconds } from './time-words.ts';

type ReachCode = Extract<FindingCode, `reach.${string}`>;

export const reachSentence: Readonly<Record<ReachCode, Sentence>> = {
  'reach.far': (finding, document, setup, units) => ({
    headline: `${subject(finding, 0, document, setup)} ${mannerWords(finding)} ${purposeWords(finding, document, setup)}`,
    text: farText(finding, units),
    ...farAdvice(finding, document, setup, units),
  }),

  'reach.late': (finding, document, setup) => ({
    headline: `${subject(finding, 0, document, setup)} ${finding.severity === 'fail' ? 'has' : 'may have'} too little time ${purposeWords(finding, document, setup)}`,
    text: `${timeWords(finding, document)}; ${restWords(finding)}.`,
    ...lateAdvice(finding, document, setup),
  }),

  'reach.noHand': (finding, document, setup) => ({
    headline: `${subject(finding, 0, document, setup)} has no hand free ${purposeWords(finding, document, setup)}`,
    text: 'What they hold in a rest takes both hands.',
    advice: 'Give them a place to put it down first, or let somebody else do it.',
  }),
};

function restWords({ detail, required }: Finding): string {
  if (detail['rest'] !== 'part') return `the rest is ${seconds(required)}`;
  return required > 0
    ? `the shortest rest for it in the part is ${seconds(required)}${placeWords(detail)}`
    : `the part has a place without any rest for it${placeWords(detail)}`;
}

/** ", at bar 48 (1:20 into the music)". */
function placeWords({ restBar, restAt }: Finding['detail']): string {
  if (typeof restBar !== 'string' || typeof restAt !== 'number') return '';
  const clock = clockWords(restAt);
  return restBar === '' ? `, ${clock} into the music` : `, at bar ${restBar} (${clock} into the music)`;
}

function farText(finding: Finding, units: Units): string {
  const band = figure(finding, 'armResidual');
  const [distance, reached] = formatApart([finding.measured, finding.required], units);
  return (
    `It is ${distance} from the shoulder, ${formatLength(figure(finding, 'height'), units)} above the floor; ` +
    `without a step they reach ${reached} there` +
    (band > 0
      ? ` (arms of this stature differ by ${formatLength(band, units)}, one standard deviation).`
      : '.')
  );
}

function mannerWords({ detail }: Finding): string {
  const stooping = detail['stoops'] === 1 ? ' and stoop' : '';
  if (detail['manner'] === 'step') return `has to take a step${stooping}`;
  if (detail['manner'] === 'walk') return `has to walk${stooping}`;
  return 'cannot get there';
}

function purposeWords(finding: Finding, document: Document, setup: Id<'setup'>): string {
  const item = subject(finding, 1, document, setup);
  const purpose = finding.detail['purpose'];
  return purpose === 'pickUp' ? `to take up ${item}` : `to turn the page on ${item}`;
}
