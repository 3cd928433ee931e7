/** Where people can be hurt: edges, ways out, cables, wheelchairs. Each of them hands on to those who decide. */

import { FIRST_STEP, SQUEEZE } from '../room/first-step.ts';
import { GUARD_DROP } from '../room/edges.ts';
import { HIGHEST_STEP, LEAST_STEP } from '../room/level-edges.ts';
import { CLEAR_WIDTH, PINCH_APART, PINCH_LENGTH, PINCH_WIDTH } from '../room/pinch-points.ts';
import { whoDecides } from '../room/room-words.ts';
import { BEFORE_DOOR, BEND_LENGTH, TURNING_DIAMETER } from '../room/turning.ts';
import { USUAL_LIMITS } from '../sentence-parts.ts';
import { t } from '../../words/say.ts';
import type { AboutFigure, AboutPage, Teller } from './check-page.ts';
import {
  CLEAR_WAY,
  FLOOR_SPACE,
  GUARDS,
  OWN,
  PRACTICE,
  SMALL_RISE,
  TURN_BACK,
  TURNING_SPACE,
} from './cited.ts';

export function edgePage({ length }: Teller): AboutPage<'edge'> {
  return {
    id: 'edge',
    title: t`Open edges`,
    asks: t`Does anybody play, or anything stand, near an edge that drops?`,
    computes: [
      t`The distance on plan from players, chairs and the feet of stands to the nearest open edge of the platform, and to the nearest edge of the level that they stand on, where the floor beyond is lower by more than a step.`,
    ],
    verdicts: [
      { code: 'room.edge', severity: 'caution', when: t`The distance is less than the one you ask for.` },
    ],
    figures: [
      {
        what: t`Distance until you change it`,
        value: length(USUAL_LIMITS.edgeDistance),
        source: OWN,
      },
      {
        what: t`Guards are spoken of where the drop is more than`,
        value: length(GUARD_DROP),
        source: GUARDS,
      },
      { what: t`Down a level people take for a step, up to`, value: length(HIGHEST_STEP), source: PRACTICE },
    ],
    settings: [
      { kind: 'limit', limit: 'edgeDistance', what: t`Distance from open edges` },
      { kind: 'form', form: 'platform', what: t`Which edges are open, and how high the platform is` },
    ],
    unknown: [
      t`Whether an edge is lit, marked, railed or watched, and what lies below.`,
      t`Building codes mostly leave the audience’s edge of a stage without a guard on purpose. That makes it no safer: the distance is a precaution of this tool, and no code’s requirement.`,
    ],
    caution: t`Falls from platforms injure people. ${whoDecides()}`,
    related: ['overlap', 'ways', 'tried'],
  };
}

export function waysPage({ length }: Teller): AboutPage<'ways'> {
  return {
    id: 'ways',
    title: t`Ways out: width, doors, steps`,
    asks: t`Can everybody walk from his place to a way out of the platform?`,
    computes: [
      t`For every player a real path round everything that stands on the floor, to a door or steps that are marked as a way out. Who can get out as wide as you ask gets the shortest such way; any other gets the widest there is, and its narrowest place is told as a tape across it would measure.`,
      t`Right beside his own place a player may squeeze past. Nobody is led over the edge of a high level while there is another way, and ground before a door should be free as deep as the way is wide.`,
    ],
    verdicts: [
      { code: 'room.noExit', severity: 'caution', when: t`Nothing on the platform is marked as a way out.` },
      {
        code: 'room.route',
        severity: 'caution',
        when: t`There is no way, or its narrowest place is less than you ask for.`,
      },
      {
        code: 'room.step',
        severity: 'caution',
        when: t`The only way goes over a step that is too high for one.`,
      },
      { code: 'room.door', severity: 'caution', when: t`Something stands close before a door.` },
    ],
    figures: [
      { what: t`Width until you change it`, value: length(USUAL_LIMITS.routeWidth), source: OWN },
      ...clearWayFigures(length),
      {
        what: t`People take for a step what is not higher than`,
        value: length(HIGHEST_STEP),
        source: PRACTICE,
      },
      {
        what: t`Within this distance of his own place a player squeezes past`,
        value: t`${length(FIRST_STEP)}, through at least ${length(SQUEEZE)}`,
        source: PRACTICE,
      },
    ],
    settings: [
      { kind: 'limit', limit: 'routeWidth', what: t`Width of the ways` },
      { kind: 'form', form: 'door', what: t`Which openings are ways out` },
    ],
    unknown: [
      t`What lies beyond a door, whether it is locked, which way it opens, and how many people leave by it.`,
      t`Smoke, darkness and haste. This is no plan of escape.`,
      t`The ways of the audience: rows, aisles and exits of the house are not judged.`,
    ],
    caution: t`Ways out save lives, and only those who are responsible for the building can say what is enough. ${whoDecides()}`,
    related: ['wheelchair', 'cable', 'edge', 'tried'],
  };
}

function clearWayFigures(length: Teller['length']): AboutFigure[] {
  return [
    { what: t`Clear width that a standard speaks of`, value: length(CLEAR_WIDTH), source: CLEAR_WAY },
    {
      what: t`Narrower for a short piece`,
      value: t`${length(PINCH_WIDTH)} over at most ${length(PINCH_LENGTH)}, such pieces at least ${length(PINCH_APART)} apart`,
      source: CLEAR_WAY,
    },
  ];
}

export function cablePage({ length }: Teller): AboutPage<'cable'> {
  return {
    id: 'cable',
    title: t`Cables across ways`,
    asks: t`Does a cable lie where somebody walks or rolls out?`,
    computes: [
      t`The line of each lamp’s cable against the strip that everybody’s way out takes up. A cable that is covered is named only where wheels go over it.`,
    ],
    verdicts: [
      { code: 'room.cable', severity: 'caution', when: t`An uncovered cable lies across a way.` },
      { code: 'room.cableRamp', severity: 'note', when: t`Wheels go over the cover on a cable.` },
    ],
    figures: [
      {
        what: t`Right beside his place, up to here, a player’s own cable does not count`,
        value: length(FIRST_STEP),
        source: PRACTICE,
      },
    ],
    settings: [
      { kind: 'form', form: 'lamp', what: t`Where the cable runs, and whether it is covered` },
      { kind: 'limit', limit: 'routeWidth', what: t`Width of the ways` },
    ],
    unknown: [
      t`Other cables than those of lamps, and slack that lies about.`,
      t`Whether a cover is fit to be walked or rolled over, and anything electrical: load, damp, earthing, heat.`,
    ],
    caution: t`People trip over cables and are hurt by current. ${whoDecides()}`,
    related: ['ways', 'wheelchair'],
  };
}

export function wheelchairPage({ length }: Teller): AboutPage<'wheelchair'> {
  return {
    id: 'wheelchair',
    title: t`Wheelchairs: step-free ways and room to turn`,
    asks: t`Can somebody in a wheelchair get to his place and away, and turn there?`,
    computes: [
      t`For everybody who comes in a wheelchair a way without steps to a way out that is marked as step-free, as wide as you ask for and never less than the clear width below.`,
      t`The widest free circle over his place, over each bend in which his way turns back, and where it ends.`,
    ],
    verdicts: [
      { code: 'room.noStepFreeExit', severity: 'caution', when: t`No way out is marked as step-free.` },
      {
        code: 'room.wheelchairLevel',
        severity: 'caution',
        when: t`The place is on a level that wheels cannot leave.`,
      },
      {
        code: 'room.wheelchairRoute',
        severity: 'caution',
        when: t`There is no step-free way, or it is narrower than asked.`,
      },
      { code: 'room.turning', severity: 'caution', when: t`The circle to turn in is smaller than below.` },
    ],
    figures: [
      ...clearWayFigures(length),
      { what: t`Circle to turn in`, value: length(TURNING_DIAMETER), source: TURNING_SPACE },
      {
        what: t`One turns back in a single bend round what is less wide than`,
        value: length(BEND_LENGTH),
        source: TURN_BACK,
      },
      {
        what: t`Before a door the middle of a wheelchair comes to a stand at`,
        value: length(BEFORE_DOOR),
        source: FLOOR_SPACE,
      },
      { what: t`Wheels get over a rise of`, value: length(LEAST_STEP), source: SMALL_RISE },
    ],
    settings: [
      { kind: 'form', form: 'player', what: t`Who comes in a wheelchair` },
      { kind: 'limit', limit: 'routeWidth', what: t`Width of the ways` },
      { kind: 'form', form: 'door', what: t`Which ways out are step-free` },
    ],
    unknown: [
      t`Ramps and lifts on the platform, slopes, thresholds and the size of the wheelchair itself.`,
      t`What somebody can and wants to do. Ask, and try the way together.`,
    ],
    caution: t`Nothing here says that a place is accessible or that any rule is kept. ${whoDecides()}`,
    related: ['ways', 'cable'],
  };
}
