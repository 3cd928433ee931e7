/** Schemas of what there is to set up with, and where it waits. */

import * as v from 'valibot';
import { PLACED_KINDS, type StockItem } from '../../document/records.ts';
import { field, fields, idOf, oneOf, textLike, wholeBetween } from '../fields.ts';
import { MOST_OF_A_THING } from '../limits.ts';
import { common, position } from './common.ts';
import { t } from '../../words/say.ts';

export const storage = fields({
  ...common('storage'),
  ...position,
  door: v.optional(
    field(
      'Door',
      'Id of the opening through which things are carried to it; null: the one that makes the shortest way.',
      v.nullable(idOf<'door'>()),
    ),
    null,
  ),
});

const [, ...carried] = PLACED_KINDS;
const items = [...carried, 'cable'] as const satisfies readonly StockItem[];

const count = (title: string, description: string) =>
  v.optional(field(title, description, wholeBetween(0, MOST_OF_A_THING)), 0);

export const stock = fields({
  ...common('stock'),
  item: field('Item', 'Kind of thing; "seat" counts the players’ chairs too.', oneOf(items)),
  model: v.optional(
    field(
      'Model',
      'Id of its model in the catalogue; empty: any, or the kind has no models.',
      textLike(
        /^(?:[A-Za-z0-9][A-Za-z0-9._-]{0,63})?$/,
        () => t`give the id of a catalogue model: up to 64 letters, digits, ".", "-" or "_", or ""`,
      ),
    ),
    '',
  ),
  owned: count('Owned', 'How many the venue has of its own.'),
  borrowed: count('Borrowed', 'How many are brought in for this concert.'),
  storage: v.optional(
    field(
      'Storage',
      'Id of where they are when they are not on the platform; null: not said.',
      v.nullable(idOf<'storage'>()),
    ),
    null,
  ),
});
