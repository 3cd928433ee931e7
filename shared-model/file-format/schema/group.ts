/** Schema of what is taken hold of together, locked or hidden. */

import * as v from 'valibot';
import type { PlacedRecord } from '../../document/records.ts';
import { field, fields, idOf, listOf, yesOrNo } from '../fields.ts';
import { MOST_MEMBERS } from '../limits.ts';
import { common, setupOrNull } from './common.ts';

export const group = fields({
  ...common('group'),
  setup: setupOrNull,
  members: field(
    'Members',
    'Ids of the things in it, all of the same setup as the group (null: all for the whole concert). No thing is in two groups.',
    listOf(idOf<PlacedRecord['kind']>(), 1, MOST_MEMBERS),
  ),
  locked: v.optional(field('Locked', 'Not to be moved, turned or removed by hand.', yesOrNo()), false),
  hidden: v.optional(
    field('Hidden', 'Not drawn on the screen; every check counts its members all the same.', yesOrNo()),
    false,
  ),
});
