/** The document: immutable records by id, and the questions everything else asks of it. */

import { compareIds, type Id } from './ids.ts';
import type { AnyRecord, Concert, Kind, Platform, RecordOf, Setup, PlacedRecord } from './records.ts';
import { PLACED_KINDS } from './records.ts';

export interface Document {
  readonly records: ReadonlyMap<string, AnyRecord>;
}

export function documentOf(records: Iterable<AnyRecord>): Document {
  return { records: new Map([...records].map((record) => [record.id, record])) };
}

export function find<K extends Kind>(document: Document, id: Id<K> | null): RecordOf<K> | undefined {
  return id === null ? undefined : (document.records.get(id) as RecordOf<K> | undefined);
}

/** All records of one kind in natural id order, which is the order of their numbers. */
export function allOf<K extends Kind>(document: Document, kind: K): readonly RecordOf<K>[] {
  return listed(document, kind, () => {
    const found = (byKind(document).get(kind) ?? []) as RecordOf<K>[];
    return found.toSorted((a, b) => compareIds(a.id, b.id));
  });
}

/** All records sorted out in one go: whoever asks for one kind mostly asks for many. */
function byKind({ records }: Document): ReadonlyMap<string, AnyRecord[]> {
  const known = KINDS.get(records);
  if (known) return known;
  const kinds = new Map<string, AnyRecord[]>();
  for (const record of records.values()) {
    const alike = kinds.get(record.kind);
    if (alike) alike.push(record);
    else kinds.set(record.kind, [record]);
  }
  KINDS.set(records, kinds);
  return kinds;
}

const KINDS = new WeakMap<Document['records'], ReadonlyMap<string, AnyRecord[]>>();

/** The records of one kind that stand in `setup`: its own and those that stay for the whole concert. */
export function inSetup<K extends Kind>(
  document: Document,
  setup: Id<'setup'>,
  kind: K,
): readonly RecordOf<K>[] {
  return listed(document, `${kind} ${setup}`, () =>
    allOf(document, kind).filter((record) => belongsTo(record, setup)),
  );
}

/** Every placed record of the setup, kind by kind, in the order of their numbers. */
export function placedInSetup(document: Document, setup: Id<'setup'>): PlacedRecord[] {
  return PLACED_KINDS.flatMap((kind): readonly PlacedRecord[] => inSetup(document, setup, kind));
}

/**
 * Records never change, so a list of them is made once. Without this, naming every item of a document by its number
 * among its kind would take time with the square of their count.
 */
const LISTS = new WeakMap<Document['records'], Map<string, readonly AnyRecord[]>>();

function listed<R extends AnyRecord>(
  document: Document,
  key: string,
  list: () => readonly R[],
): readonly R[] {
  const lists = LISTS.get(document.records) ?? new Map<string, readonly AnyRecord[]>();
  LISTS.set(document.records, lists);
  const known = lists.get(key);
  if (known) return known as readonly R[];
  const made = list();
  lists.set(key, made);
  return made;
}

export function belongsTo(record: AnyRecord, setup: Id<'setup'>): boolean {
  if (!('setup' in record)) return true;
  return record.setup === null || record.setup === setup;
}

export function concertOf(document: Document): Concert {
  return theOnly(document, 'concert');
}

export function platformOf(document: Document): Platform {
  return theOnly(document, 'platform');
}

/** The setups that are played, in their order: all but variants. */
export function programmeOf(document: Document): Setup[] {
  return setupsOf(document).filter(({ variantOf }) => variantOf === null);
}

/** All setups, variants too, in programme order; at least one. */
export function setupsOf(document: Document): Setup[] {
  return allOf(document, 'setup').toSorted((a, b) => a.order - b.order || compareIds(a.id, b.id));
}

/** The reader and the commands keep exactly one of these, so its absence is a bug and throws. */
function theOnly<K extends 'concert' | 'platform'>(document: Document, kind: K): RecordOf<K> {
  const record = allOf(document, kind)[0];
  if (!record) throw new Error(`document without a ${kind}`);
  return record;
}
