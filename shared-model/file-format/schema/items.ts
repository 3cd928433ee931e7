/** Schemas of the things that stand on the platform. */

import * as v from 'valibot';
import type { Stand } from '../../document/records.ts';
import {
  degreesBetween,
  field,
  fields,
  lengthBetween,
  listOf,
  millimetresBetween,
  oneOf,
  secondsUpTo,
  wholeBetween,
  yesOrNo,
} from '../fields.ts';
import { MOST_OUTLINE_CORNERS } from '../limits.ts';
import { facing, model, outline, placed, playerOrNull, point, requiredFacing } from './common.ts';

const width = (description: string) => field('Width', description, lengthBetween(10, 50_000));
const depth = (description: string) => field('Depth', description, lengthBetween(10, 50_000));
const height = (description: string, least: number, most: number) =>
  field('Height', description, lengthBetween(least, most));

const side = fields({
  reader: v.optional(field('Reader', 'Id of the player who reads here, or null.', playerOrNull), null),
  pagesAcross: v.optional(
    field('Pages across', 'Pages side by side on the lip, 0 to 3.', wholeBetween(0, 3)),
    2,
  ),
  pageWidth: v.optional(field('Page width', 'Width of a page, millimetres.', lengthBetween(50, 1000)), 210),
  pageHeight: v.optional(
    field('Page height', 'Height of a page, millimetres.', lengthBetween(50, 1000)),
    297,
  ),
  staffSize: v.optional(
    field(
      'Staff size',
      'From the bottom to the top line of a staff as printed, millimetres; null: not known.',
      v.nullable(millimetresBetween(1, 100)),
    ),
    null,
  ),
  turned: v.optional(
    field('Turned', 'Whether the reader turns pages here, so that he must reach their corner.', yesOrNo()),
    false,
  ),
  freeTime: v.optional(
    field(
      'Free time',
      'Seconds of rest in which the turn has to be made; null: not known.',
      v.nullable(secondsUpTo(36_000)),
    ),
    null,
  ),
});

const sides = listOf(side, 1, 2) as unknown as v.GenericSchema<v.InferInput<typeof side>[], Stand['sides']>;

export const stand = fields({
  ...placed('stand'),
  facing: requiredFacing,
  form: v.optional(
    field(
      'Form',
      'single: one desk, its middle over (x, y), its page looking along its facing. backToBack: two desks whose ' +
        'upper edges meet over (x, y); the page of the first side looks along the facing, the second the other way.',
      oneOf(['single', 'backToBack']),
    ),
    'single',
  ),
  model: model('stand model'),
  deskWidth: field('Desk width', 'Millimetres across the desk.', lengthBetween(100, 3000)),
  deskHeight: field(
    'Desk height',
    'Millimetres along the slope, from the lip to the upper edge.',
    lengthBetween(50, 1500),
  ),
  lip: field(
    'Lip',
    'Height of the lip above the floor that the stand is on, millimetres.',
    lengthBetween(100, 2500),
  ),
  tilt: field('Tilt', 'Degrees of the desk from the horizontal: 90 is upright.', degreesBetween(0, 90)),
  sides: field(
    'Sides',
    'Who reads and what lies on each desk: one side for a single stand, two for a back-to-back pair.',
    sides,
  ),
});

export const instrumentStand = fields({
  ...placed('instrumentStand'),
  facing,
  model: model('instrument stand model'),
  height: height('Height at which a hand takes the instrument, millimetres.', 10, 2500),
});

export const table = fields({
  ...placed('table'),
  facing,
  model: model('table model'),
  width: width('Millimetres across its facing.'),
  depth: depth('Millimetres along its facing.'),
  height: height('Height of the top above the floor, millimetres.', 10, 2500),
});

export const seat = fields({
  ...placed('seat'),
  facing,
  model: model('seat model'),
  height: height('Height of the seat above the floor, millimetres.', 100, 1500),
});

const itsPlayer = v.optional(field('Player', 'Id of the player who plays it, or null.', playerOrNull), null);

export const piano = fields({
  ...placed('piano'),
  facing: field(
    'Facing',
    'The way its player looks when he plays, from the keyboard to the tail; (x, y) is the middle of the case. ' +
      'Degrees from straight at the house, anticlockwise from above.',
    degreesBetween(-360, 360),
  ),
  model: model('piano model'),
  lid: v.optional(field('Lid', 'How far the lid is open.', oneOf(['closed', 'half', 'full'])), 'closed'),
  player: itsPlayer,
});

export const largeInstrument = fields({
  ...placed('largeInstrument'),
  facing: v.optional(
    field(
      'Facing',
      'The way its player looks over it. Degrees from straight at the house, anticlockwise from above.',
      degreesBetween(-360, 360),
    ),
    0,
  ),
  model: model('large instrument model'),
  player: itsPlayer,
});

export const lamp = fields({
  ...placed('lamp'),
  facing,
  height: height('Height of the lamp above the floor, millimetres.', 10, 10_000),
  cable: v.optional(
    field(
      'Cable',
      'Corners of the cable on the floor of the platform, from the lamp to its socket; empty: no cable.',
      listOf(point, 0, MOST_OUTLINE_CORNERS),
    ),
    [],
  ),
  cableCovered: v.optional(
    field('Cable covered', 'Whether a ramp or mat covers the cable where people walk.', yesOrNo()),
    false,
  ),
});

export const riser = fields({
  ...placed('riser'),
  facing,
  width: width('Millimetres across its facing.'),
  depth: depth('Millimetres along its facing.'),
  height: height('How much higher things stand on it, millimetres.', 1, 5000),
});

export const shape = fields({
  ...placed('shape'),
  facing,
  outline: outline(
    'Corners about (x, y) before it is turned by its facing, in order, without crossing itself; x and y of each ' +
      'in millimetres.',
  ),
  height: height('Height above the floor, millimetres.', 1, 50_000),
  fixed: v.optional(field('Fixed', 'Whether it is part of the building.', yesOrNo()), false),
});
