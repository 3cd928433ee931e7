/** The findings of the room checks in words. They are cautions of the tool's own and say so. */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { formatApart, formatLength, type Units } from '../../document/measures.ts';
import { t } from '../../words/say.ts';
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
import { besideWords, narrowFigures, pinchWords, together, whoDecides, widenWords } from './room-words.ts';
import { wheelchairSentence } from './wheelchair-sentence.ts';

type RoomCode = Extract<FindingCode, `room.${string}`>;

export const roomSentence: Readonly<Record<RoomCode, Sentence>> = {
  'room.overlap': (finding, document, setup, units) => {
    const [a, b] = [subject(finding, 0, document, setup), subject(finding, 1, document, setup)];
    return {
      headline: t`${a} and ${b} run into each other`,
      text: overlapText(finding, units),
      advice: together(
        t`Set them ${atLeast(-finding.measured, units)} apart.`,
        finding.detail['more'] === 1 ? t`There are more of these; mend the ones in the list first.` : '',
      ),
    };
  },

  'room.offPlatform': (finding, document, setup, units) => ({
    headline: overEdge(finding, subject(finding, 0, document, setup)),
    text: t`The part outside is ${formatLength(-finding.measured, units)} deep.`,
    advice: inwards(finding, document, atLeast(-finding.measured, units)),
    remark: whoDecides(),
  }),

  'room.elbow': (finding, document, setup, units) => ({
    headline: t`${subject(finding, 0, document, setup)} lacks elbow room`,
    text: elbowText(finding, neighbourWords(finding, document, setup), units),
    advice: t`Make ${atLeast(finding.required - finding.measured, units)} more room there.`,
  }),

  'room.edge': (finding, document, setup, units) => {
    const [thing, level] = [subject(finding, 0, document, setup), levelOf(finding, document, setup)];
    return {
      headline:
        level === null ? t`${thing} is near an open edge` : t`${thing} is near an open edge of ${level}`,
      text: together(edgeText(finding, level, units), guardWords(finding, units)),
      advice: edgeAdvice(finding, document, units),
      remark: whoDecides(),
    };
  },

  'room.door': (finding, document, setup, units) => {
    const [measured, required] = formatApart([finding.measured, finding.required], units);
    return {
      headline: t`${subject(finding, 1, document, setup)} stands before ${subject(finding, 0, document, setup)}`,
      text: t`${measured} are free before the door; ${required} are wanted.`,
      advice: t`Keep the way through the door free.`,
      remark: whoDecides(),
    };
  },

  'room.route': routeSentence,

  'room.step': (finding, document, setup, units) => {
    const [measured, required] = formatApart([finding.measured, finding.required], units);
    const level = subject(finding, 1, document, setup);
    return {
      headline: t`The way out for ${subject(finding, 0, document, setup)} goes over a step of ${measured}`,
      text: t`It is at ${level}, and no way round it was found. Up to ${required} the tool takes it for a step like any other, a figure of its own.`,
      advice: t`Set steps at ${level}, or open a way round.`,
      remark: whoDecides(),
    };
  },

  'room.cable': (finding, document, setup) => ({
    headline: t`The cable of ${subject(finding, 0, document, setup)} lies across a way out`,
    text:
      finding.measured === 1
        ? t`${capital(subject(finding, 1, document, setup))} goes over it.`
        : t`${finding.measured} of them go over it, ${subject(finding, 1, document, setup)} among them.`,
    advice: t`Lay it along the wall, or cover it with a ramp or mat.`,
    remark: whoDecides(),
  }),

  'room.noExit': () => ({
    headline: t`The platform has no way out`,
    text: t`No door or step of the platform is marked as a way out.`,
    advice: t`Add the door or the steps that people leave by.`,
    remark: whoDecides(),
  }),

  ...wheelchairSentence,
};

function routeSentence(finding: Finding, document: Document, setup: Id<'setup'>, units: Units): Told {
  const player = subject(finding, 0, document, setup);
  if (finding.measured <= 0) {
    return {
      headline: t`${player} has no way out`,
      text: t`No way from ${player} to an exit is wide enough for a person.`,
      advice: t`Open a way of ${formatLength(finding.required, units)}.`,
      remark: whoDecides(),
    };
  }
  const [measured, required] = narrowFigures(finding, units);
  const isUsual = finding.required === USUAL_LIMITS.routeWidth;
  return {
    headline: t`The way out for ${player} is narrow`,
    text: together(
      t`${measured} at its narrowest${besideWords(finding, document, setup)}; ${wished(required, isUsual)}.`,
      pinchWords(finding, units),
    ),
    advice: widenWords(finding, document, units),
    remark: whoDecides(),
  };
}

function overlapText({ measured, detail }: Finding, units: Units): string {
  const by = formatLength(-measured, units);
  return detail['part'] === 'floor' ? t`They overlap by ${by} on the floor.` : t`They overlap by ${by}.`;
}

function elbowText(finding: Finding, neighbour: string, units: Units): string {
  const [free, wanted] = formatApart([figure(finding, 'free'), figure(finding, 'wanted')], units);
  return finding.detail['side'] === 'left'
    ? t`${neighbour} leaves ${free} on the left, counted from the middle of the body; ${wanted} are wanted.`
    : t`${neighbour} leaves ${free} on the right, counted from the middle of the body; ${wanted} are wanted.`;
}

/** The level over whose edge one would fall; null: the platform itself. */
function levelOf(finding: Finding, document: Document, setup: Id<'setup'>): string | null {
  return finding.subjects[1] === undefined ? null : subject(finding, 1, document, setup);
}

function edgeText(finding: Finding, level: string | null, units: Units): string {
  const [measured, required] = formatApart([finding.measured, finding.required], units);
  const drop = formatLength(figure(finding, 'drop'), units);
  const limit = wished(required, finding.required === USUAL_LIMITS.edgeDistance);
  return level === null
    ? t`${measured} to the edge, with a drop of ${drop}; ${limit}.`
    : t`${measured} from the edge of ${level}, which drops ${drop}; ${limit}.`;
}

/** Of people as they. */
function edgeAdvice(finding: Finding, document: Document, units: Units): string {
  const by = atLeast(finding.required - finding.measured, units);
  return isPlayer(finding, document)
    ? t`Move them in by ${by}, or mark and watch the edge.`
    : t`Move it in by ${by}, or mark and watch the edge.`;
}

/** What is known of guards at such a drop: why the distance is the tool's own precaution. */
function guardWords({ detail }: Finding, units: Units): string {
  const drop = formatLength(GUARD_DROP, units);
  switch (detail['guard']) {
    case 'guard':
      return t`The distance is the tool’s own precaution; over drops of more than ${drop} IBC 1015.2 asks for guards.`;
    // Most codes want none on the audience's side: said here it would read as if that edge were harmless.
    default:
      return t`The distance is the tool’s own precaution.`;
  }
}

function inwards(finding: Finding, document: Document, by: string): string {
  return isPlayer(finding, document) ? t`Move them in by ${by}.` : t`Move it in by ${by}.`;
}

function isPlayer({ subjects }: Finding, document: Document): boolean {
  return document.records.get(subjects[0] ?? '')?.kind === 'player';
}

function neighbourWords(finding: Finding, document: Document, setup: Id<'setup'>): string {
  const isWall = document.records.get(finding.subjects[1] ?? '')?.kind === 'platform';
  return isWall ? t`The wall` : capital(subject(finding, 1, document, setup));
}

function overEdge({ subjects }: Finding, thing: string): string {
  return subjects.length > 1
    ? t`${thing} reaches over the edge of its level`
    : t`${thing} reaches over the edge of the platform`;
}
