/** Fields that several kinds of records share. */

import * as v from 'valibot';
import type { Kind } from '../../document/records.ts';
import { degreesBetween, field, fields, idOf, lengthBetween, line, listOf, modelId } from '../fields.ts';
import { FARTHEST, LONGEST_NAME, MOST_OUTLINE_CORNERS } from '../limits.ts';
import { t } from '../../words/say.ts';

/** `id`, `kind` and `name`, which every record starts with. */
export function common<const K extends Kind>(kind: K) {
  return {
    id: field(
      'Id',
      'Names the record; no two records of a file have the same id. Items of a kind are numbered in the order of ' +
        'the number their id ends with.',
      idOf<K>(),
    ),
    kind: field(
      'Kind',
      'What the record is.',
      v.literal(kind, () => t`give "${kind}"`),
    ),
    name: v.optional(
      field('Name', 'What people call it; empty: its kind and number stand for it.', line(LONGEST_NAME)),
      '',
    ),
  };
}

const x = field(
  'x',
  'Millimetres from the centre line, positive towards stage left (the performers’ left).',
  lengthBetween(-FARTHEST, FARTHEST),
);
const y = field(
  'y',
  'Millimetres from the front edge of the platform, positive upstage, negative towards the house.',
  lengthBetween(-FARTHEST, FARTHEST),
);

export const position = { x, y };

export const point = fields(position);

const facingSchema = field(
  'Facing',
  'Degrees from straight at the house, anticlockwise from above: 0 the house, 90 stage left, 180 upstage, ' +
    '-90 stage right.',
  degreesBetween(-360, 360),
);

export const requiredFacing = facingSchema;

export const facing = v.optional(facingSchema, 0);

export const setupOrNull = v.optional(
  field(
    'Setup',
    'Id of the setup it belongs to; null: it stays where it is for the whole concert.',
    v.nullable(idOf<'setup'>()),
  ),
  null,
);

export const playerOrNull = v.nullable(idOf<'player'>());

/** What every placed record has but its facing, which only some kinds may leave out. */
export function placed<const K extends Kind>(kind: K) {
  return { ...common(kind), setup: setupOrNull, ...position };
}

export function model(what: string) {
  return field('Model', `Id of the ${what} in the catalogue.`, modelId());
}

export function outline(description: string) {
  return field('Outline', description, listOf(point, 3, MOST_OUTLINE_CORNERS));
}
