/** The findings of the facing check in words. */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { labelOf } from '../../document/labels.ts';
import { isPlaced, type AnyRecord } from '../../document/records.ts';
import type { Units } from '../../document/measures.ts';
import { andMore, listed } from '../../words/lists.ts';
import { t } from '../../words/say.ts';
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
      headline: t`${first} and ${second} cannot see each other’s eyes`,
      text: blockedText(things, atLeast(finding.measured, units)),
      advice: blockedAdvice(finding, document, worst, units),
    };
  },

  'facing.turn': (finding, document, setup) => {
    const [looker, partner] = [subject(finding, 0, document, setup), subject(finding, 1, document, setup)];
    const text = [
      bearingWords(finding, document, setup),
      t`Eyes alone turn ${TURN_LIMITS.eyes}°, with the head ${TURN_LIMITS.head}° (NUREG-0700, after MIL-STD-1472G).`,
      fieldWords(finding),
      t`From ${partner} to ${looker} it is ${angle(Math.abs(figure(finding, 'bearingBack')))}${turnBackWords(finding)}.`,
    ];
    return {
      headline: t`${looker} turns the whole body to look at ${partner}`,
      text: text.join(' '),
      advice: turnAdvice(finding, looker, partner),
    };
  },

  'facing.house': (finding, document, setup) => {
    const player = subject(finding, 0, document, setup);
    const back = atLeastAngle(finding.measured - PROFILE);
    return {
      headline: t`${player} faces away from the house`,
      text: t`${angleOver(finding.measured, PROFILE)} from straight at the house; a profile is ${PROFILE}°.`,
      advice: t`Turn them back by ${back}, to a profile.`,
      remark: t`Leave it if it is meant so.`,
    };
  },
};

function blockedText(things: readonly string[], by: string): string {
  const [worst = ''] = things;
  if (things.length === 1)
    return t`${capital(worst)} stands in the line between their eyes and reaches ${by} above it.`;
  const all = capital(things.length > 3 ? andMore(things, 2) : listed(things));
  return t`${all} stand in the line between their eyes; ${worst} reaches ${by} above it.`;
}

function blockedAdvice(finding: Finding, document: Document, thing: string, units: Units): string {
  const others = finding.subjects.length > 3 ? t`Then look at the others in the line.` : '';
  return [clearingAdvice(finding, document, thing, units), others].filter(Boolean).join(' ');
}

function clearingAdvice(finding: Finding, document: Document, thing: string, units: Units): string {
  const by = atLeast(finding.measured, units);
  const record = document.records.get(finding.subjects[2] ?? '');
  const { lid } = finding.detail;
  if (lid !== undefined)
    return lid === 'closed' ? t`Close the lid of ${thing}.` : t`Put the lid of ${thing} on half stick.`;
  if (record?.kind !== 'stand') return movingAdvice(document, record, thing);
  if (figure(finding, 'lipThen') >= figure(finding, 'lowestLip')) return t`Lower ${thing} by ${by}.`;
  return t`Tilt the desk of ${thing} flatter, or move it out of the line: its model does not go ${by} lower.`;
}

/** What cannot be lowered is moved, if it can be; the building and levels stay. */
function movingAdvice(document: Document, record: AnyRecord | undefined, thing: string): string {
  if (record?.kind === 'player') return t`Move one of the three sideways.`;
  const weight = record && isPlaced(record) ? weightOf(document, record) : null;
  if (weight === null) return t`Move one of the two sideways.`;
  return weight === 'bulky'
    ? t`Move one of the two sideways, or ${thing} out of the line.`
    : t`Move ${thing} out of the line.`;
}

/** From where the looker looks while playing to the partner. */
function bearingWords(finding: Finding, document: Document, setup: Id<'setup'>): string {
  const partner = capital(subject(finding, 1, document, setup));
  const by = angleOver(finding.measured, TURN_LIMITS.head);
  const isLeft = figure(finding, 'bearing') > 0;
  const { stand } = finding.detail;
  if (typeof stand !== 'string' || stand === '')
    return isLeft
      ? t`${partner} is ${by} to the left of straight ahead.`
      : t`${partner} is ${by} to the right of straight ahead.`;
  const page = labelOf(document, setup, stand);
  return isLeft
    ? t`${partner} is ${by} to the left of the page on ${page}.`
    : t`${partner} is ${by} to the right of the page on ${page}.`;
}

function fieldWords(finding: Finding): string {
  return figure(finding, 'inField') === 1
    ? t`That is still at the edge of the field of view, ${HALF_FIELD}° to either side.`
    : t`That is outside the field of view, ${HALF_FIELD}° to either side.`;
}

function turnBackWords({ detail }: Finding): string {
  switch (detail['turnBack']) {
    case 'eyes':
      return t`, a turn of the eyes`;
    case 'head':
      return t`, a turn of the head`;
    case 'body':
      return t`, a turn of the whole body too`;
    default:
      return '';
  }
}

/** One turn for all whom the looker must see; none that turns a back to the house. */
function turnAdvice(finding: Finding, looker: string, partner: string): string {
  const { round, stand } = finding.detail;
  if (round === 'opposed')
    return stand === ''
      ? t`Set ${looker} or those whom they must see elsewhere: no way of facing suits all of them.`
      : t`Set ${looker} or those whom they must see elsewhere: no place of the page suits all of them.`;
  if (round === 'back')
    return t`Set ${looker} or ${partner} elsewhere: turned round far enough for all whom they must see, ${looker} would have the back to the house.`;
  const [by, isLeft] = [angle(Math.abs(figure(finding, 'by'))), figure(finding, 'by') > 0];
  const turned = stand === '' ? looker : t`${looker} and the page`;
  return isLeft
    ? t`Turn ${turned} ${by} to the left, which leaves a turn of the head for all whom they must see.`
    : t`Turn ${turned} ${by} to the right, which leaves a turn of the head for all whom they must see.`;
}
