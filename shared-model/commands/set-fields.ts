/** Changes fields of records, under the rules of the file format. */

import type { Id } from '../document/ids.ts';
import type { AnyRecord, Kind, RecordOf } from '../document/records.ts';
import { t } from '../words/say.ts';
import { changingWords } from './changing-words.ts';
import { refuse, type Outcome } from './command.ts';
import type { Document } from '../document/document.ts';
import { editsOf, propose } from './propose.ts';
import { recordsOf } from './targets.ts';
import { namesOf } from './words.ts';

export type FieldsOf<K extends Kind> = Partial<Omit<RecordOf<K>, 'id' | 'kind'>>;

export interface SetFields<K extends Kind> {
  /** All of one kind. */
  readonly ids: readonly Id<K>[];
  readonly fields: FieldsOf<K>;
}

/** Gives every record these fields; a field inside another one (a limit, a side) comes with all its neighbours. */
export function setFields<K extends Kind>(document: Document, { ids, fields }: SetFields<K>): Outcome {
  const targets = recordsOf(document, ids);
  if (!targets.ok) return targets;
  const [first] = targets.records;
  if (targets.records.some(({ kind }) => kind !== first.kind)) return refuse(t`Select things of one kind.`);
  const stranger = Object.keys(fields).find(
    (name) => name === 'id' || name === 'kind' || !Object.hasOwn(first, name),
  );
  if (stranger !== undefined)
    return refuse(t`A ${first.kind} has no field "${stranger}" that can be changed.`);
  // The schema checks the result; the type cannot follow a record through a spread of some of its fields.
  const changed = targets.records.map((record) => ({ ...record, ...fields }) as AnyRecord);
  const names = namesOf(document, targets.records);
  const [field, another] = Object.keys(fields);
  const label =
    field !== undefined && another === undefined ? changingWords(field, names) : t`change ${names}`;
  return propose(document, editsOf(changed), { label });
}
