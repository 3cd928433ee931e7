/** What is in the way of a wheelchair, in words. Nobody's ability is judged, and no rule is said to be kept. */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { labelOf } from '../../document/labels.ts';
import { formatApart, formatLength, type Units } from '../../document/measures.ts';
import { andMore, listed } from '../../words/lists.ts';
import { t } from '../../words/say.ts';
import type { Finding, FindingCode } from '../finding.ts';
import { atLeast, subject, type Sentence, type Told } from '../sentence-parts.ts';
import { besideWords, narrowFigures, pinchWords, together, whoDecides, widenWords } from './room-words.ts';

type WheelchairCode = Extract<
  FindingCode,
  `room.wheelchair${string}` | 'room.noStepFreeExit' | 'room.turning' | 'room.cableRamp'
>;

export const wheelchairSentence: Readonly<Record<WheelchairCode, Sentence>> = {
  'room.noStepFreeExit': (finding, document, setup) => ({
    headline: t`No way out is free of steps for ${everybody(finding, document, setup)}`,
    text: t`No exit of the platform is marked as free of steps, and a wheelchair goes over none.`,
    advice: t`Mark the exit that has a ramp or a lift, or agree on one with the venue.`,
    remark: whoDecides(),
  }),

  'room.wheelchairLevel': (finding, document, setup, units) => {
    const who = subject(finding, 0, document, setup);
    return {
      headline:
        finding.subjects[1] === undefined
          ? t`${who} cannot roll off a level`
          : t`${who} cannot roll off ${subject(finding, 1, document, setup)}`,
      text: t`The wheelchair is ${formatLength(finding.measured, units)} above the floor of the platform. Ramps between levels are not known to this plan.`,
      advice: t`Set them on the floor of the platform, or lay a ramp and try it together.`,
      remark: whoDecides(),
    };
  },

  'room.wheelchairRoute': wayWords,

  'room.turning': (finding, document, setup, units) => {
    const [measured, required] = formatApart([finding.measured, finding.required], units);
    return {
      headline: turningHeadline(finding, document, setup),
      text: t`The widest free circle there measures ${measured}; ADA/ABA 304.3.1 speaks of ${required}.`,
      advice: t`Clear ${atLeast(finding.required - finding.measured, units)} more there.`,
      remark: whoDecides(),
    };
  },

  'room.cableRamp': (finding, document, setup) => ({
    headline: t`Wheels go over the cover on the cable of ${subject(finding, 0, document, setup)}`,
    text:
      finding.measured === 1
        ? t`It lies across the way of ${subject(finding, 1, document, setup)}, who uses a wheelchair.`
        : t`It lies across the way of ${finding.measured} wheelchairs, that of ${subject(finding, 1, document, setup)} among them.`,
    advice: t`Cross it together beforehand, or lay the cable elsewhere: a ramp or mat may still stop or tip a wheelchair.`,
    remark: whoDecides(),
  }),
};

function wayWords(finding: Finding, document: Document, setup: Id<'setup'>, units: Units): Told {
  const who = subject(finding, 0, document, setup);
  if (finding.measured <= 0) {
    return {
      headline: t`${who} has no way out for a wheelchair`,
      text: t`No way from ${who} to an exit without steps is wide enough to get through.`,
      advice: t`Open a way of ${formatLength(finding.required, units)} without steps.`,
      remark: whoDecides(),
    };
  }
  const [measured, required] = narrowFigures(finding, units);
  return {
    headline: t`The way out for ${who} is narrow for a wheelchair`,
    text: together(
      t`${measured} at its narrowest${besideWords(finding, document, setup)}; ${required} are wanted.`,
      pinchWords(finding, units),
    ),
    advice: widenWords(finding, document, units),
    remark: whoDecides(),
  };
}

function turningHeadline(finding: Finding, document: Document, setup: Id<'setup'>): string {
  const who = subject(finding, 0, document, setup);
  if (finding.detail['at'] === 'bend')
    return t`${who} has little room to turn a wheelchair where the way out turns back`;
  return finding.subjects[1] === undefined
    ? t`${who} has little room to turn a wheelchair at the place`
    : t`${who} has little room to turn a wheelchair at ${subject(finding, 1, document, setup)}`;
}

/** "player 1", "player 1 and player 2", "player 1 and 2 more". */
function everybody({ subjects }: Finding, document: Document, setup: Id<'setup'>): string {
  const names = subjects.map((id) => labelOf(document, setup, id));
  return names.length > 2 ? andMore(names, 1) : listed(names);
}
