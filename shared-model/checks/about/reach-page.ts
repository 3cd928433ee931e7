import { ANYONE, bodies } from '../../catalogue/people.ts';
import type { Person } from '../../document/records.ts';
import {
  CARE,
  REACH_BEYOND,
  SHOULDER_PUSH,
  SIDESTEP,
  START,
  STEP,
  STOOPED_SHOULDERS,
  TMU,
  TRUNK_LEAN,
  TURN_BODY,
  WALKING,
  BEND_AND_RISE,
  HANDS_AHEAD,
  STAND_AND_SIT,
  STAND_OFF,
} from '../reach/published.ts';
import { atMost } from '../../words/numbers.ts';
import { t } from '../../words/say.ts';
import type { AboutFigure, AboutPage, Teller } from './check-page.ts';
import {
  CONTROL_REACH,
  DESIGN_WALK,
  MOTION_CARD,
  MOTION_MEMORY,
  MOTION_TABLE,
  PRACTICE,
  SURVEY,
  TRUNK_MEMORY,
  USUAL_WALK,
} from './cited.ts';

export function reachPage({ length }: Teller): AboutPage<'reach'> {
  return {
    id: 'reach',
    title: t`Reaching: turning a page, taking an instrument up`,
    asks: t`Can a free hand get to it from where the player is, and in the rest there is?`,
    computes: [
      t`For every page that is turned and every instrument that waits, the distance in space from the nearer free shoulder to the point that a hand must get to: the lower outer corner of the page, over a back-to-back pair also the middle of its upper edge, or the instrument on its stand or table.`,
      t`The least effort that gets there counts: the arm alone, the arm with a lean, one step, a walk. The arm is a sphere about the shoulder joint; its length comes from the stature, or is measured. Who sits does not step: he gets up and walks.`,
      t`Times are added up from tables of motions: reaching, turning the body, stepping, getting up, walking there and back. They are compared with the rest in the part, or with the rest that was typed.`,
    ],
    verdicts: [
      {
        code: 'reach.far',
        severity: 'fail',
        when: t`A page turn needs a walk, or a hand gets to that height in no way.`,
      },
      {
        code: 'reach.far',
        severity: 'caution',
        when: t`A page turn needs a step; or an instrument needs a walk that does not fit the rest, or the rest is not known.`,
      },
      { code: 'reach.far', severity: 'note', when: t`An instrument needs a walk, and that fits the rest.` },
      { code: 'reach.late', severity: 'fail', when: t`It takes longer than the rest, as it usually goes.` },
      {
        code: 'reach.late',
        severity: 'caution',
        when: t`It takes longer than the rest when it goes slowly.`,
      },
      { code: 'reach.noHand', severity: 'fail', when: t`What the player holds leaves no hand free for it.` },
    ],
    figures: [...reachingFigures(length), ...timeFigures(length)],
    settings: [
      { kind: 'form', form: 'player', what: t`How tall the player is, or how long the arm was measured` },
      { kind: 'form', form: 'stand', what: t`Whether pages are turned there, and the rest to turn in` },
      { kind: 'form', form: 'instrument', what: t`Where an instrument waits, and the rest to take it up` },
      { kind: 'form', form: 'music', what: t`Rests of a part, from a score or a table` },
      { kind: 'form', form: 'turns', what: t`Who turns what, when a page plan is kept` },
    ],
    unknown: [
      t`Ways are straight lines here: what stands in between is not gone round.`,
      t`Whether a page comes away well, whether it is dark, or how much somebody is at ease is not known. Try it.`,
      t`The tables are of trained people at work, and the survey is of soldiers from 17 to 58 years: others may reach less far and take longer.`,
    ],
    caution: null,
    related: ['turns', 'tried'],
  };
}

const SOMEBODY: Person = {
  population: 'pooled',
  size: { by: 'percentile', percentile: 50 },
  shoes: 0,
  measured: { eyeHeight: null, shoulderHeight: null, armLength: null },
};

function reachingFigures(length: Teller['length']): AboutFigure[] {
  const { armResidual } = bodies(SOMEBODY, null).small;
  return [
    {
      what: t`Arms of people of one stature differ by (standard deviation)`,
      value: length(armResidual),
      source: SURVEY,
    },
    {
      what: t`“Anyone” reaches from the small to the tall end`,
      value: t`${ANYONE.small}th to ${ANYONE.tall}th percentile`,
      source: SURVEY,
    },
    { what: t`A shoulder pushed forward adds`, value: length(SHOULDER_PUSH), source: CONTROL_REACH },
    { what: t`The trunk leans by up to`, value: `${TRUNK_LEAN}°`, source: TRUNK_MEMORY },
    { what: t`One step brings the shoulder nearer by`, value: length(STEP), source: PRACTICE },
    { what: t`Stooping, shoulders come down to`, value: length(STOOPED_SHOULDERS), source: PRACTICE },
    { what: t`Nobody walks up closer than`, value: length(STAND_OFF), source: PRACTICE },
    { what: t`While playing, hands are before the body by`, value: length(HANDS_AHEAD), source: PRACTICE },
  ];
}

const seconds = (units: number): string => `${atMost(units * TMU, 2)} s`;

function timeFigures(length: Teller['length']): AboutFigure[] {
  const beyond = atMost(REACH_BEYOND.C * SIDESTEP.length * TMU, 2);
  return [
    {
      what: t`Time of a reach`,
      value: t`by its length; beyond the table ${beyond} s for every ${length(SIDESTEP.length)}`,
      source: MOTION_TABLE,
    },
    { what: t`Turning the body`, value: seconds(TURN_BODY.both), source: MOTION_CARD },
    {
      what: t`A sidestep of ${length(SIDESTEP.length)}`,
      value: seconds(SIDESTEP.both.base),
      source: MOTION_CARD,
    },
    { what: t`Bending down and rising`, value: seconds(BEND_AND_RISE), source: MOTION_MEMORY },
    { what: t`Getting up and sitting down`, value: seconds(STAND_AND_SIT), source: MOTION_MEMORY },
    { what: t`Walking, as it usually goes`, value: `${atMost(WALKING.usual, 2)} m/s`, source: DESIGN_WALK },
    {
      what: t`Walking, from slow to brisk`,
      value: t`${atMost(WALKING.slow, 2)} to ${atMost(WALKING.brisk, 2)} m/s`,
      source: USUAL_WALK,
    },
    {
      what: t`Getting going`,
      value: t`${atMost(START.brisk, 1)} to ${atMost(START.slow, 1)} s`,
      source: PRACTICE,
    },
    {
      what: t`A quiet, careful motion takes at most this much longer`,
      value: t`${atMost(CARE, 2)} times`,
      source: PRACTICE,
    },
  ];
}
