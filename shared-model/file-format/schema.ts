/**
 * The schema of every kind of record: what the reader accepts, what the commands may make, and what the published
 * JSON Schema says. The order of the fields here is their order in a written file.
 */

import * as v from 'valibot';
import type { AnyRecord, Kind, RecordOf } from '../document/records.ts';
import { group } from './schema/group.ts';
import * as items from './schema/items.ts';
import { pagePlan } from './schema/page-plan.ts';
import * as people from './schema/people.ts';
import { score } from './schema/score.ts';
import * as stock from './schema/stock.ts';
import { underlay } from './schema/underlay.ts';
import * as venue from './schema/venue.ts';

export const FORMAT = 'standlines';

/** The file version that this program writes. */
export const VERSION = 4;

/** In the order in which their records stand in a written file: the venue first. */
export const RECORD_SCHEMAS = {
  concert: venue.concert,
  platform: venue.platform,
  door: venue.door,
  seatBlock: venue.seatBlock,
  place: venue.place,
  storage: stock.storage,
  stock: stock.stock,
  underlay,
  setup: venue.setup,
  player: people.player,
  instrument: people.instrument,
  score,
  stand: items.stand,
  instrumentStand: items.instrumentStand,
  table: items.table,
  seat: items.seat,
  piano: items.piano,
  largeInstrument: items.largeInstrument,
  lamp: items.lamp,
  riser: items.riser,
  shape: items.shape,
  pagePlan,
  group,
} satisfies { readonly [K in Kind]: v.GenericSchema<unknown, RecordOf<K>> };

export const KINDS = Object.keys(RECORD_SCHEMAS) as readonly Kind[];

export function isKind(value: unknown): value is Kind {
  return typeof value === 'string' && Object.hasOwn(RECORD_SCHEMAS, value);
}

export function schemaOf(kind: Kind): v.GenericSchema<unknown, AnyRecord> {
  return RECORD_SCHEMAS[kind] as unknown as v.GenericSchema<unknown, AnyRecord>;
}

/** What people call a field: the title it has in the published schema. */
export function fieldTitle(kind: Kind, name: string): string {
  const entries: v.ObjectEntries = RECORD_SCHEMAS[kind].entries;
  const entry = Object.hasOwn(entries, name) ? entries[name] : undefined;
  if (!entry) return name;
  const schema = 'wrapped' in entry && entry.type === 'optional' ? entry.wrapped : entry;
  return v.getTitle(schema as v.GenericSchema) ?? name;
}
