/** One table from a finding's code to words. */

import type { Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import type { Units } from '../document/measures.ts';
import { facingSentence } from './facing/facing-sentence.ts';
import type { Finding, FindingCode } from './finding.ts';
import { reachSentence } from './reach/reach-sentence.ts';
import { readingSentence } from './reading/reading-sentence.ts';
import type { Sentence, Told } from './sentence-parts.ts';
import { roomSentence } from './room/room-sentence.ts';
import { sightSentence } from './sightlines/sight-sentence.ts';

const SENTENCES: Readonly<Record<FindingCode, Sentence>> = {
  ...sightSentence,
  ...reachSentence,
  ...roomSentence,
  ...readingSentence,
  ...facingSentence,
};

/** What a finding says, how much, against what, and what to do, in the units asked for. */
export function explain(finding: Finding, document: Document, setup: Id<'setup'>, units: Units): Told {
  const told = SENTENCES[finding.code](finding, document, setup, units);
  return {
    headline: told.headline.charAt(0).toUpperCase() + told.headline.slice(1),
    text: told.text,
    advice: told.advice + othersOf(finding),
  };
}

/** Said with the last one listed of very many. */
function othersOf({ detail }: Finding): string {
  const { notListed } = detail;
  return notListed === undefined
    ? ''
    : ` There are ${notListed} more of this kind, not listed; mend the ones in the list first.`;
}
