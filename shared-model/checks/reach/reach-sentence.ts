/** The findings of the reach check in words. */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { formatApart, formatLength, type Units } from '../../document/measures.ts';
import { clockWords } from '../../score/words/clock-words.ts';
import { t } from '../../words/say.ts';
import type { Finding, FindingCode } from '../finding.ts';
import { figure, subject, type Sentence } from '../sentence-parts.ts';
import { farAdvice, lateAdvice } from './reach-advice.ts';
import { timeWords, seconds } from './time-words.ts';

type ReachCode = Extract<FindingCode, `reach.${string}`>;

export const reachSentence: Readonly<Record<ReachCode, Sentence>> = {
  'reach.far': (finding, document, setup, units) => ({
    headline: farHeadline(
      finding,
      subject(finding, 0, document, setup),
      purposeWords(finding, document, setup),
    ),
    text: farText(finding, units),
    ...farAdvice(finding, document, setup, units),
  }),

  'reach.late': (finding, document, setup) => {
    const player = subject(finding, 0, document, setup);
    const purpose = purposeWords(finding, document, setup);
    return {
      headline:
        finding.severity === 'fail'
          ? t`${player} has too little time ${purpose}`
          : t`${player} may have too little time ${purpose}`,
      text: timeWords(finding, document, restWords(finding)),
      ...lateAdvice(finding, document, setup),
    };
  },

  'reach.noHand': (finding, document, setup) => ({
    headline: t`${subject(finding, 0, document, setup)} has no hand free ${purposeWords(finding, document, setup)}`,
    text: t`What they hold in a rest takes both hands.`,
    advice: t`Give them a place to put it down first, or let somebody else do it.`,
  }),
};

function restWords({ detail, required }: Finding): string {
  if (detail['rest'] !== 'part') return t`the rest is ${seconds(required)}`;
  return required > 0
    ? t`the shortest rest for it in the part is ${seconds(required)}${placeWords(detail)}`
    : t`the part has a place without any rest for it${placeWords(detail)}`;
}

/** ", at bar 48 (1:20 into the music)". */
function placeWords({ restBar, restAt }: Finding['detail']): string {
  if (typeof restBar !== 'string' || typeof restAt !== 'number') return '';
  const clock = clockWords(restAt);
  return restBar === '' ? t`, ${clock} into the music` : t`, at bar ${restBar} (${clock} into the music)`;
}

function farText(finding: Finding, units: Units): string {
  const band = figure(finding, 'armResidual');
  const [distance, reached] = formatApart([finding.measured, finding.required], units);
  const height = formatLength(figure(finding, 'height'), units);
  if (!(band > 0))
    return t`It is ${distance} from the shoulder, ${height} above the floor; without a step they reach ${reached} there.`;
  const spread = formatLength(band, units);
  return t`It is ${distance} from the shoulder, ${height} above the floor; without a step they reach ${reached} there (arms of this stature differ by ${spread}, one standard deviation).`;
}

function farHeadline({ detail }: Finding, player: string, purpose: string): string {
  const stoops = detail['stoops'] === 1;
  if (detail['manner'] === 'step')
    return stoops
      ? t`${player} has to take a step and stoop ${purpose}`
      : t`${player} has to take a step ${purpose}`;
  if (detail['manner'] === 'walk')
    return stoops ? t`${player} has to walk and stoop ${purpose}` : t`${player} has to walk ${purpose}`;
  return t`${player} cannot get there ${purpose}`;
}

function purposeWords(finding: Finding, document: Document, setup: Id<'setup'>): string {
  const item = subject(finding, 1, document, setup);
  return finding.detail['purpose'] === 'pickUp' ? t`to take up ${item}` : t`to turn the page on ${item}`;
}
