/** Schemas of players and what they carry. */

import * as v from 'valibot';
import { field, fields, idOf, lengthBetween, numberBetween, oneOf, secondsUpTo } from '../fields.ts';
import { common, facing, model, placed, setupOrNull } from './common.ts';
import { t } from '../../words/say.ts';

const size = v.variant(
  'by',
  [
    fields({
      by: field('By', 'A stature in millimetres.', v.literal('stature')),
      stature: field('Stature', 'Height of the person without shoes, millimetres.', lengthBetween(700, 2500)),
    }),
    fields({
      by: field('By', 'A percentile of the population.', v.literal('percentile')),
      percentile: field(
        'Percentile',
        'The share of the population, in per cent, that is shorter: 1 to 99.',
        numberBetween(1, 99, () => t`give a percentile from 1 to 99`),
      ),
    }),
    fields({ by: field('By', 'Anyone: the small and the tall end both count.', v.literal('anyone')) }),
  ],
  () =>
    t`give {"by": "anyone"}, {"by": "percentile", "percentile": 50} or {"by": "stature", "stature": 1700}`,
);

const measuredOrNull = (title: string, description: string, least: number, most: number) =>
  v.optional(field(title, description, v.nullable(lengthBetween(least, most))), null);

const measured = fields({
  eyeHeight: measuredOrNull(
    'Eye height',
    'From the floor, as the person stands or sits to play, millimetres; null: not measured.',
    300,
    2500,
  ),
  shoulderHeight: measuredOrNull(
    'Shoulder height',
    'From the floor, as the person stands or sits to play, millimetres; null: not measured.',
    200,
    2200,
  ),
  armLength: measuredOrNull(
    'Arm length',
    'From the shoulder joint to the fingertip, millimetres; null: not measured.',
    200,
    1200,
  ),
});

const person = fields({
  population: v.optional(
    field(
      'Population',
      'Whose body measures are used; pooled weighs both sexes equally.',
      oneOf(['female', 'male', 'pooled']),
    ),
    'pooled',
  ),
  size: field('Size', 'How tall: by stature, by percentile, or anyone.', size),
  shoes: v.optional(field('Shoes', 'Height that shoes add, millimetres.', lengthBetween(0, 200)), 25),
  measured: v.optional(
    field('Measured', 'Measures taken of the person; they replace what the size predicts.', measured),
    {},
  ),
});

const chair = fields({
  model: model('seat model'),
  height: field('Height', 'Height of the seat above the floor, millimetres.', lengthBetween(100, 1500)),
});

export const player = fields({
  ...placed('player'),
  facing,
  person: v.optional(
    field('Person', 'How large the player is. (x, y) is the axis of head and shoulders.', person),
    {
      size: { by: 'anyone' },
    },
  ),
  chair: v.optional(
    field('Chair', 'What the player sits on, at his own spot; null: he stands.', v.nullable(chair)),
    null,
  ),
  mobility: v.optional(
    field(
      'Mobility',
      'How the player gets to the place and away: on foot, or in a wheelchair, which asks for a step-free way.',
      oneOf(['walks', 'wheelchair']),
    ),
    'walks',
  ),
});

export const instrument = fields({
  ...common('instrument'),
  setup: setupOrNull,
  model: model('instrument model'),
  player: field('Player', 'Id of the player who plays it.', idOf<'player'>()),
  support: v.optional(
    field(
      'Support',
      'Id of the instrument stand or table it waits on; null: it is in the player’s hands.',
      v.nullable(idOf<'instrumentStand' | 'table'>()),
    ),
    null,
  ),
  freeTime: v.optional(
    field(
      'Free time',
      'Seconds of rest in which it has to be picked up; null: not known.',
      v.nullable(secondsUpTo(36_000)),
    ),
    null,
  ),
});
