/** Refusals in the units that are shown: commands speak of lengths in the millimetres of the file. */

import { fieldWords } from '../file-format/field-words.ts';
import { formatLength, type Units } from '../document/measures.ts';
import { t } from '../words/say.ts';
import { tooFarWords } from './move.ts';

/** The limits become "about" so much, for in feet and inches they are no round figures. */
export function refusalWords(reason: string, units: Units): string {
  if (units === 'metric') return reason;
  const inUnits = (length: string): string => formatLength(Number(length), units);
  return reason
    .replace(tooFar(), (_, name: string, limit: string) => tooFarWords(name, about(inUnits(limit))))
    .replace(lengthRefused(), (_, given: string, least: string, most: string) =>
      refusedAbout(inUnits(given), inUnits(least), inUnits(most)),
    );
}

function about(length: string): string {
  return t`about ${length}`;
}

/** "Viola would be more than 50000 mm from the platform", in the language that is spoken. */
function tooFar(): RegExp {
  return patternOf(tooFarWords(GAPS.words, `${GAPS.length} mm`), '^', '$');
}

/** "stand 3, lip: 9000 is not allowed; give a length from 100 to 2500 mm." Staves are in millimetres everywhere. */
function lengthRefused(): RegExp {
  const { length } = GAPS;
  const advice = t`give a length from ${length} to ${length} mm`;
  return patternOf(t`: ${length} is not allowed; ${advice}`, `(?<!${fieldWords('staffSize')})`, '');
}

function refusedAbout(given: string, least: string, most: string): string {
  const advice = t`give a length from about ${least} to about ${most}`;
  return t`: ${given} is not allowed; ${advice}`;
}

/** What stands in a sentence for what is to be found there: signs that no refusal has. */
const GAPS = { words: '\u0001', length: '\u0002' };

function patternOf(sentence: string, before: string, after: string): RegExp {
  const plain = sentence.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  const open = plain.replaceAll(GAPS.words, '(.*)').replaceAll(GAPS.length, '(-?[\\d.]+)');
  return new RegExp(before + open + after, 's');
}
