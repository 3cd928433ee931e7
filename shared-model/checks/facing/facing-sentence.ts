/** The findings of the facing check in words. */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { labelOf } from '../../document/labels.ts';
import { isPlaced, type AnyRecord } from '../../document/records.ts';
import type { Units } from '../../document/measures.ts';
import type { Finding } from '../finding.ts';
import { TURN_LIMITS } from '../reading/gaze.ts';
import { weightOf } from '../remedies/weights.ts';
import {
  angle,
  angleOver,
  atLeast,
  atLeastAngle,
  capital,
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
      text: `${capital(listed(things))} ${things.length === 1 ? 'stands' : 'stand'} in the line between their eyes${things.length === 1 ? ' and' : `; ${worst}`} reaches ${atLeast(finding.measured, units)} above it.`,
      advice: blockedAdvice(finding, document, worst, units),
    };
  },

  'facing.turn': (finding, document, setup) => {
    const [looker, partner] = [subject(finding, 0, document, setup), subject(finding, 1, document, setup)];
    const side = figure(finding, 'bearing') > 0 ? 'left' : 'right';
    return {
      headline: `${looker} turns the whole body to look at ${partner}`,
      text: `${capital(partner)} is ${angleOver(finding.measured, TURN_LIMITS.head)} to the ${side} of ${gazeWords(finding, document, setup)}. Eyes alone turn ${TURN_LIMITS.eyes}°, with the head ${TURN_LIMITS.head}° (NUREG-0700, after MIL-STD-1472G). ${fieldWords(finding)} From ${partner} to ${looker} it is ${angle(Math.abs(figure(finding, 'bearingBack')))}${TURN_WORDS[String(finding.detail['turnBack'])] ?? ''}.`,
      advice: turnAdvice(finding, looker, partner),
    };
  },

  'facing.house': (finding, document, setup) => {
    const player = subject(finding, 0, document, setup);
    const back = atLeastAngle(finding.measured - PROFILE);
    return {
      headline: `${player} faces away from the house`,
      text: `${angleOver(finding.measured, PROFILE)} from straight at the house; a profile is ${PROFILE}°.`,
      advice: `Turn them back by ${back}, to a profile.`,
      remark: 'Leave it if it is meant so.',
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
  const record = document.records.get(finding.subjects[2] ?? '');
  const others = finding.subjects.length > 3 ? ' Then look at the others in the line.' : '';
  const { lid } = finding.detail;
  if (lid !== undefined)
    return `${lid === 'closed' ? `Close the lid of ${thing}` : `Put the lid of ${thing} on half stick`}.${others}`;
  if (record?.kind !== 'stand') return `${movingAdvice(document, record, thing)}.${others}`;
  if (figure(finding, 'lipThen') >= figure(finding, 'lowestLip')) return `Lower ${thing} by ${by}.${others}`;
  return `Tilt the desk of ${thing} flatter, or move it out of the line: its model does not go ${by} lower.${others}`;
}

/** What cannot be lowered is moved, if it can be; the building and levels stay. */
function movingAdvice(document: Document, record: AnyRecord | undefined, thing: string): string {
  if (record?.kind === 'player') return 'Move one of the three sideways';
  const weight = record && isPlaced(record) ? weightOf(document, record) : null;
  if (weight === null) return 'Move one of the two sideways';
  return weight === 'bulky'
    ? `Move one of the two sideways, or ${thing} out of the line`
    : `Move ${thing} out of the line`;
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

const TURN_WORDS: Readonly<Record<string, string>> = {
  glance: '',
  eyes: ', a turn of the eyes',
  head: ', a turn of the head',
  body: ', a turn of the whole body too',
};

/** One turn for all whom the looker must see; none that turns a back to the house. */
function turnAdvice(finding: Finding, looker: string, partner: string): string {
  const { round, stand } = finding.detail;
  const page = stand === '' ? '' : ' and the page';
  if (round === 'opposed') {
    const whoOrWhat = stand === '' ? 'no way of facing' : 'no place of the page';
    return `Set ${looker} or those whom they must see elsewhere: ${whoOrWhat} suits all of them.`;
  }
  if (round === 'back')
    return `Set ${looker} or ${partner} elsewhere: turned round far enough for all whom they must see, ${looker} would have the back to the house.`;
  const by = figure(finding, 'by');
  return `Turn ${looker}${page} ${angle(Math.abs(by))} to the ${by > 0 ? 'left' : 'right'}, which leaves a turn of the head for all whom they must see.`;
}
