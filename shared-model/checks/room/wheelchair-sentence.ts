/** What is in the way of a wheelchair, in words. Nobody's ability is judged, and no rule is said to be kept. */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { labelOf } from '../../document/labels.ts';
import { formatApart, formatLength, type Units } from '../../document/measures.ts';
import type { Finding, FindingCode } from '../finding.ts';
import { atLeast, subject, type Sentence, type Told } from '../sentence-parts.ts';
import { besideWords, narrowFigures, pinchWords, widenWords, WHO_DECIDES } from './room-words.ts';

type WheelchairCode = Extract<
  FindingCode,
  `room.wheelchair${string}` | 'room.noStepFreeExit' | 'room.turning' | 'room.cableRamp'
>;

export const wheelchairSentence: Readonly<Record<WheelchairCode, Sentence>> = {
  'room.noStepFreeExit': (finding, document, setup) => ({
    headline: `No way out is free of steps for ${everybody(finding, document, setup)}`,
    text: 'No exit of the platform is marked as free of steps, and a wheelchair goes over none.',
    advice: 'Mark the exit that has a ramp or a lift, or agree on one with the venue.',
    remark: WHO_DECIDES,
  }),

  'room.wheelchairLevel': (finding, document, setup, units) => {
    const level = finding.subjects[1] === undefined ? 'a level' : subject(finding, 1, document, setup);
    return {
      headline: `${subject(finding, 0, document, setup)} cannot roll off ${level}`,
      text:
        `The wheelchair is ${formatLength(finding.measured, units)} above the floor of the platform. ` +
        'Ramps between levels are not known to this plan.',
      advice: 'Set them on the floor of the platform, or lay a ramp and try it together.',
      remark: WHO_DECIDES,
    };
  },

  'room.wheelchairRoute': wayWords,

  'room.turning': (finding, document, setup, units) => {
    const [measured, required] = formatApart([finding.measured, finding.required], units);
    return {
      headline: `${subject(finding, 0, document, setup)} has little room to turn a wheelchair ${whereWords(finding, document, setup)}`,
      text: `The widest free circle there measures ${measured}; ADA/ABA 304.3.1 speaks of ${required}.`,
      advice: `Clear ${atLeast(finding.required - finding.measured, units)} more there.`,
      remark: WHO_DECIDES,
    };
  },

  'room.cableRamp': (finding, document, setup) => ({
    headline: `Wheels go over the cover on the cable of ${subject(finding, 0, document, setup)}`,
    text:
      finding.measured === 1
        ? `It lies across the way of ${subject(finding, 1, document, setup)}, who uses a wheelchair.`
        : `It lies across the way of ${finding.measured} wheelchairs, that of ${subject(finding, 1, document, setup)} among them.`,
    advice:
      'Cross it together beforehand, or lay the cable elsewhere: a ramp or mat may still stop or tip a wheelchair.',
    remark: WHO_DECIDES,
  }),
};

function wayWords(finding: Finding, document: Document, setup: Id<'setup'>, units: Units): Told {
  const who = subject(finding, 0, document, setup);
  if (finding.measured <= 0) {
    return {
      headline: `${who} has no way out for a wheelchair`,
      text: `No way from ${who} to an exit without steps is wide enough to get through.`,
      advice: `Open a way of ${formatLength(finding.required, units)} without steps.`,
      remark: WHO_DECIDES,
    };
  }
  const [measured, required] = narrowFigures(finding, units);
  return {
    headline: `The way out for ${who} is narrow for a wheelchair`,
    text: `${measured} at its narrowest${besideWords(finding, document, setup)}; ${required} are wanted.${pinchWords(finding, units)}`,
    advice: widenWords(finding, document, units),
    remark: WHO_DECIDES,
  };
}

function whereWords(finding: Finding, document: Document, setup: Id<'setup'>): string {
  if (finding.detail['at'] === 'bend') return 'where the way out turns back';
  return finding.subjects[1] === undefined ? 'at the place' : `at ${subject(finding, 1, document, setup)}`;
}

/** "player 1", "player 1 and player 2", "player 1 and 2 more". */
function everybody({ subjects }: Finding, document: Document, setup: Id<'setup'>): string {
  const [first = '', second = ''] = subjects.map((id) => labelOf(document, setup, id));
  if (subjects.length < 2) return first;
  return subjects.length === 2 ? `${first} and ${second}` : `${first} and ${subjects.length - 1} more`;
}
