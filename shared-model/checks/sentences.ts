/** One table from a finding's code to words. */

import type { Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import type { Units } from '../document/measures.ts';
import { t } from '../words/say.ts';
import { facingSentence } from './facing/facing-sentence.ts';
import type { Finding, FindingCode } from './finding.ts';
import { reachSentence } from './reach/reach-sentence.ts';
import { readingSentence } from './reading/reading-sentence.ts';
import { capital, goingOn, type Explained, type Sentence } from './sentence-parts.ts';
import { roomSentence } from './room/room-sentence.ts';
import { sightSentence } from './sightlines/sight-sentence.ts';
import { turnsSentence } from './turns/turns-sentence.ts';

const SENTENCES: Readonly<Record<FindingCode, Sentence>> = {
  ...sightSentence,
  ...reachSentence,
  ...roomSentence,
  ...readingSentence,
  ...facingSentence,
  ...turnsSentence,
};

/**
 * What a finding says, how much, against what, and what to do, in the units asked for. Advice is the sentence's own
 * and untried, and says so; changes that were tried are in remedy.ts.
 */
export function explain(finding: Finding, document: Document, setup: Id<'setup'>, units: Units): Explained {
  const { headline, text, advice, remark = '' } = SENTENCES[finding.code](finding, document, setup, units);
  const remarks = [remark, othersOf(finding)].filter(Boolean);
  return {
    headline: capital(headline),
    text,
    advice: [untried(advice), ...remarks].filter(Boolean).join(' '),
    remark: remarks.join(' '),
  };
}

/** "Lower the desk." is told as "Try: lower the desk." */
function untried(advice: string): string {
  return advice === '' ? '' : t`Try: ${goingOn(advice)}`;
}

/** Said with the last one listed of very many. */
function othersOf({ detail }: Finding): string {
  const { notListed } = detail;
  return notListed === undefined
    ? ''
    : t`There are ${notListed} more of this kind, not listed; mend the ones in the list first.`;
}
