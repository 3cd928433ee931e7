/** Adds records. */

import type { AnyRecord, Kind, RecordOf } from '../document/records.ts';
import { kindWord } from '../document/labels.ts';
import { t } from '../words/say.ts';
import { refuse, type Command } from './command.ts';
import { freshId } from './fresh-id.ts';
import { editsOf, propose } from './propose.ts';
import { namesOf } from './words.ts';

/** A record that has no id yet. */
export type NewRecord = { [K in Kind]: Omit<RecordOf<K>, 'id'> }[Kind];

/** Adds one record under a fresh id and selects it. */
export const add: Command<NewRecord> = (document, fields) => {
  // Every kind has the fields of its own `NewRecord` and an id; the schema checks it again.
  const record = { ...fields, id: freshId(document, fields.kind) } as unknown as AnyRecord;
  const name = record.name || kindWord(record.kind);
  return propose(document, editsOf([record]), {
    label: t`add ${name}`,
    select: [record.id],
  });
};

export interface AddRecords {
  /** Complete, under ids that are free (see `freshIds`); they may name each other. */
  readonly records: readonly AnyRecord[];
}

/** Adds records that belong together, such as a player with an instrument, in one step. */
export const addRecords: Command<AddRecords> = (document, { records }) => {
  const taken = records.find(({ id }) => document.records.has(id));
  if (taken) return refuse(takenWords(taken));
  const names = namesOf(document, records);
  return propose(document, editsOf(records), {
    label: t`add ${names}`,
    select: records.map(({ id }) => id),
  });
};

function takenWords({ id }: AnyRecord): string {
  return t`The id "${id}" is taken.`;
}
