/** The findings of the reach check in words. */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { formatApart, formatLength, type Units } from '../../document/measures.ts';
import type { Finding, FindingCode } from '../finding.ts';
import { atLeast, figure, subject, type Sentence } from '../sentence-parts.ts';

type ReachCode = Extract<FindingCode, `reach.${string}`>;

export const reachSentence: Readonly<Record<ReachCode, Sentence>> = {
  'reach.far': (finding, document, setup, units) => ({
    headline: `${subject(finding, 0, document, setup)} ${mannerWords(finding)} ${purposeWords(finding, document, setup)}`,
    text: farText(finding, units),
    advice: farAdvice(finding, document, setup, units),
  }),

  'reach.late': (finding, document, setup) => ({
    headline: `${subject(finding, 0, document, setup)} ${finding.severity === 'fail' ? 'has' : 'may have'} too little time ${purposeWords(finding, document, setup)}`,
    text:
      `It takes ${seconds(figure(finding, 'seconds'))} (${seconds(figure(finding, 'secondsLeast'))} to ` +
      `${seconds(figure(finding, 'secondsMost'))} by the published ranges); ${restWords(finding)}.`,
    advice:
      finding.severity === 'fail'
        ? `Bring ${subject(finding, 1, document, setup)} nearer, or find a longer rest.`
        : 'It fits at the usual pace; try it at the rehearsal.',
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
    ? `the shortest rest for it in the part is ${seconds(required)}`
    : 'the part has a place without any rest for it';
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

function farAdvice(finding: Finding, document: Document, setup: Id<'setup'>, units: Units): string {
  const item = subject(finding, 1, document, setup);
  if (finding.severity === 'note') return 'It fits the rest.';
  const short = finding.measured - finding.required;
  return short > 0
    ? `Bring ${item} about ${atLeast(short, units)} nearer.`
    : `Bring ${item} to a height they reach.`;
}

function mannerWords({ detail }: Finding): string {
  if (detail['manner'] === 'step') return 'has to take a step';
  if (detail['manner'] === 'walk') return 'has to walk';
  return 'cannot get there';
}

function purposeWords(finding: Finding, document: Document, setup: Id<'setup'>): string {
  const item = subject(finding, 1, document, setup);
  const purpose = finding.detail['purpose'];
  return purpose === 'pickUp' ? `to take up ${item}` : `to turn the page on ${item}`;
}

function seconds(value: number): string {
  return `${value.toFixed(1)} s`;
}
