/** The findings of the room checks in words. They are cautions of the tool's own and say so. */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { formatApart, formatLength, type Units } from '../../document/measures.ts';
import type { Finding, FindingCode } from '../finding.ts';
import {
  atLeast,
  capital,
  figure,
  subject,
  USUAL_LIMITS,
  wished,
  type Sentence,
  type Told,
} from '../sentence-parts.ts';
import { GUARD_DROP } from './edges.ts';
import { besideWords, narrowFigures, pinchWords, widenWords, WHO_DECIDES } from './room-words.ts';
import { wheelchairSentence } from './wheelchair-sentence.ts';

type RoomCode = Extract<FindingCode, `room.${string}`>;

export const roomSentence: Readonly<Record<RoomCode, Sentence>> = {
  'room.overlap': (finding, document, setup, units) => {
    const [a, b] = [subject(finding, 0, document, setup), subject(finding, 1, document, setup)];
    return {
      headline: `${a} and ${b} run into each other`,
      text: `They overlap by ${formatLength(-finding.measured, units)}${finding.detail['part'] === 'floor' ? ' on the floor' : ''}.`,
      advice: `Set them ${atLeast(-finding.measured, units)} apart.${finding.detail['more'] === 1 ? ' There are more of these; mend the ones in the list first.' : ''}`,
    };
  },

  'room.offPlatform': (finding, document, setup, units) => ({
    headline: `${subject(finding, 0, document, setup)} reaches over ${edgeWords(finding)}`,
    text: `The part outside is ${formatLength(-finding.measured, units)} deep.`,
    advice: `Move ${itOrThem(finding, document)} in by ${atLeast(-finding.measured, units)}.`,
    remark: WHO_DECIDES,
  }),

  'room.elbow': (finding, document, setup, units) => {
    const [free, wanted] = formatApart([figure(finding, 'free'), figure(finding, 'wanted')], units);
    return {
      headline: `${subject(finding, 0, document, setup)} lacks elbow room`,
      text:
        `${neighbourWords(finding, document, setup)} leaves ${free} on the ` +
        `${finding.detail['side'] === 'left' ? 'left' : 'right'}, counted from the middle of the body; ` +
        `${wanted} are wanted.`,
      advice: `Make ${atLeast(finding.required - finding.measured, units)} more room there.`,
    };
  },

  'room.edge': (finding, document, setup, units) => {
    const [measured, required] = formatApart([finding.measured, finding.required], units);
    const drop = formatLength(figure(finding, 'drop'), units);
    const level = finding.subjects[1] === undefined ? null : subject(finding, 1, document, setup);
    return {
      headline: `${subject(finding, 0, document, setup)} is near an open edge${level === null ? '' : ` of ${level}`}`,
      text:
        (level === null
          ? `${measured} to the edge, with a drop of ${drop}; `
          : `${measured} from the edge of ${level}, which drops ${drop}; `) +
        `${wished(required, finding.required === USUAL_LIMITS.edgeDistance)}. ${guardWords(finding, units)}`,
      advice: `Move ${itOrThem(finding, document)} in by ${atLeast(finding.required - finding.measured, units)}, or mark and watch the edge.`,
      remark: WHO_DECIDES,
    };
  },

  'room.door': (finding, document, setup, units) => {
    const [measured, required] = formatApart([finding.measured, finding.required], units);
    return {
      headline: `${subject(finding, 1, document, setup)} stands before ${subject(finding, 0, document, setup)}`,
      text: `${measured} are free before the door; ${required} are wanted.`,
      advice: 'Keep the way through the door free.',
      remark: WHO_DECIDES,
    };
  },

  'room.route': routeSentence,

  'room.step': (finding, document, setup, units) => {
    const [measured, required] = formatApart([finding.measured, finding.required], units);
    const level = subject(finding, 1, document, setup);
    return {
      headline: `The way out for ${subject(finding, 0, document, setup)} goes over a step of ${measured}`,
      text: `It is at ${level}, and no way round it was found. Up to ${required} the tool takes it for a step like any other, a figure of its own.`,
      advice: `Set steps at ${level}, or open a way round.`,
      remark: WHO_DECIDES,
    };
  },

  'room.cable': (finding, document, setup) => ({
    headline: `The cable of ${subject(finding, 0, document, setup)} lies across a way out`,
    text:
      finding.measured === 1
        ? `${capital(subject(finding, 1, document, setup))} goes over it.`
        : `${finding.measured} of them go over it, ${subject(finding, 1, document, setup)} among them.`,
    advice: 'Lay it along the wall, or cover it with a ramp or mat.',
    remark: WHO_DECIDES,
  }),

  'room.noExit': () => ({
    headline: 'The platform has no way out',
    text: 'No door or step of the platform is marked as a way out.',
    advice: 'Add the door or the steps that people leave by.',
    remark: WHO_DECIDES,
  }),

  ...wheelchairSentence,
};

function routeSentence(finding: Finding, document: Document, setup: Id<'setup'>, units: Units): Told {
  const player = subject(finding, 0, document, setup);
  if (finding.measured <= 0) {
    return {
      headline: `${player} has no way out`,
      text: `No way from ${player} to an exit is wide enough for a person.`,
      advice: `Open a way of ${formatLength(finding.required, units)}.`,
      remark: WHO_DECIDES,
    };
  }
  const [measured, required] = narrowFigures(finding, units);
  return {
    headline: `The way out for ${player} is narrow`,
    text: `${measured} at its narrowest${besideWords(finding, document, setup)}; ${wished(required, finding.required === USUAL_LIMITS.routeWidth)}.${pinchWords(finding, units)}`,
    advice: widenWords(finding, document, units),
    remark: WHO_DECIDES,
  };
}

/** What is known of guards at such a drop: why the distance is the tool's own precaution. */
function guardWords({ detail }: Finding, units: Units): string {
  const own = 'The distance is the tool’s own precaution';
  const drop = formatLength(GUARD_DROP, units);
  switch (detail['guard']) {
    case 'guard':
      return `${own}; over drops of more than ${drop} IBC 1015.2 asks for guards.`;
    // Most codes want none on the audience's side: said here it would read as if that edge were harmless.
    default:
      return `${own}.`;
  }
}

/** Of people as they: "Move them in". */
function itOrThem({ subjects }: Finding, document: Document): string {
  return document.records.get(subjects[0] ?? '')?.kind === 'player' ? 'them' : 'it';
}

function neighbourWords(finding: Finding, document: Document, setup: Id<'setup'>): string {
  const isWall = document.records.get(finding.subjects[1] ?? '')?.kind === 'platform';
  return isWall ? 'The wall' : capital(subject(finding, 1, document, setup));
}

function edgeWords({ subjects }: Finding): string {
  return subjects.length > 1 ? 'the edge of its level' : 'the edge of the platform';
}
