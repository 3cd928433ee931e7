/** The findings of the facing check in words. */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { labelOf } from '../../document/labels.ts';
import type { Units } from '../../document/measures.ts';
import type { Finding } from '../finding.ts';
import { TURN_LIMITS } from '../reading/gaze.ts';
import {
  angle,
  angleOver,
  atLeast,
  atLeastAngle,
  figure,
  subject,
  type Sentence,
} from '../sentence-parts.ts';
import type { FacingCode } from './findings.ts';
import { HALF_FIELD, PROFILE } from './published.ts';

/** To be used by the code of a finding. */
export const facingSentence: Readonly<Record<FacingCode, Sentence>> = {
  'facing.blocked': (finding, document, setup, units) => {
    const [first, second] = [subject(finding, 0, document, setup), subject(finding, 1, document, setup)];
    const things = finding.subjects.slice(2).map((id) => labelOf(document, setup, id));
    const [worst = ''] = things;
    return {
      headline: `${first} and ${second} cannot see each other’s eyes`,
      text: `${listed(things)} ${things.length === 1 ? 'stands' : 'stand'} in the line between their eyes; ${worst} reaches ${atLeast(finding.measured, units)} above it.`,
      advice: blockedAdvice(finding, document, worst, units),
    };
  },

  'facing.turn': (finding, document, setup) => {
    const [looker, partner] = [subject(finding, 0, document, setup), subject(finding, 1, document, setup)];
    const side = figure(finding, 'bearing') > 0 ? 'left' : 'right';
    return {
      headline: `${looker} turns the whole body to look at ${partner}`,
      text: `${partner} is ${angleOver(finding.measured, TURN_LIMITS.head)} to the ${side} of ${gazeWords(finding, document, setup)}. Eyes alone turn ${TURN_LIMITS.eyes}°, with the head ${TURN_LIMITS.head}° (NUREG-0700, after MIL-STD-1472G). ${fieldWords(finding)} The other way it is ${angle(Math.abs(figure(finding, 'bearingBack')))}.`,
      advice: turnAdvice(finding, looker, side),
    };
  },

  'facing.house': (finding, document, setup) => {
    const player = subject(finding, 0, document, setup);
    const back = atLeastAngle(finding.measured - PROFILE);
    return {
      headline: `${player} faces away from the house`,
      text: `${angleOver(finding.measured, PROFILE)} from straight at the house; a profile is ${PROFILE}°.`,
      advice: `Turned back by ${back} it is a profile. Leave it if it is meant so.`,
    };
  },
};

/** "stand 1", "stand 1 and stand 2", "stand 1, stand 2 and 3 more". */
function listed(things: readonly string[]): string {
  if (things.length > 3) return `${things.slice(0, 2).join(', ')} and ${things.length - 2} more`;
  const last = things.at(-1) ?? '';
  return things.length < 2 ? last : `${things.slice(0, -1).join(', ')} and ${last}`;
}

function blockedAdvice(finding: Finding, document: Document, thing: string, units: Units): string {
  const by = atLeast(finding.measured, units);
  const kind = document.records.get(finding.subjects[2] ?? '')?.kind;
  const others = finding.subjects.length > 3 ? ' Then look at the others in the line.' : '';
  if (kind === 'player') return `Move one of the three sideways.${others}`;
  const { lid } = finding.detail;
  if (lid !== undefined) {
    return `${lid === 'closed' ? `Close the lid of ${thing}` : `Put the lid of ${thing} on half stick`}: then it is clear.${others}`;
  }
  if (kind !== 'stand') return `Move ${thing} out of the line, or have it ${by} lower.${others}`;
  if (figure(finding, 'lipThen') >= figure(finding, 'lowestLip')) return `Lower ${thing} by ${by}.${others}`;
  return `${thing} would have to be ${by} lower, which is lower than its model goes: tilt its desk flatter, or move it out of the line.${others}`;
}

function gazeWords({ detail }: Finding, document: Document, setup: Id<'setup'>): string {
  const stand = detail['stand'];
  return typeof stand === 'string' && stand !== ''
    ? `the page on ${labelOf(document, setup, stand)}`
    : 'straight ahead';
}

function fieldWords(finding: Finding): string {
  return figure(finding, 'inField') === 1
    ? `That is still at the edge of the field of view, ${HALF_FIELD}° to either side.`
    : `That is outside the field of view, ${HALF_FIELD}° to either side.`;
}

/** A page that stands farther round by what is over the limit leaves a turn of the head. */
function turnAdvice(finding: Finding, looker: string, side: string): string {
  const over = atLeastAngle(finding.measured - finding.required);
  return finding.detail['stand'] === ''
    ? `Turn ${looker} by ${over} to the ${side}: then a turn of the head will do.`
    : `Set the page ${over} farther round to the ${side} of ${looker}: then a turn of the head will do.`;
}
