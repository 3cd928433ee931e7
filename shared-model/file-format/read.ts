/** Reads the text of a `.standlines` file, strictly: what is not understood is refused, with the place and a remedy. */

import type { Document } from '../document/document.ts';
import { kindWord } from '../document/labels.ts';
import type { AnyRecord, Kind } from '../document/records.ts';
import { fieldName, shown, unknownField, type Complaint } from './complaint.ts';
import { documentRuleBroken, tooManyRecords } from './document-rules.ts';
import { openEnvelope, type Understanding } from './envelope.ts';
import { fieldWords } from './field-words.ts';
import { fieldsHere } from './fields.ts';
import { MOST_RECORDS } from './limits.ts';
import { STEPS, type Json } from './migrate.ts';
import { unknownModel } from './models.ts';
import { badField, failure, type Failure } from './problem.ts';
import { readRecord } from './record.ts';
import { isKind, VERSION } from './schema.ts';
import { t } from '../words/say.ts';

export type { Problem } from './problem.ts';

export type ReadResult = Read | Failure;

interface Read {
  readonly ok: true;
  readonly document: Document;
  /** What a user should know about a file that was read. */
  readonly notes: readonly string[];
  /** Those of the notes that ask nothing of the user. */
  readonly quiet: readonly string[];
}

const CURRENT: Understanding = { version: VERSION, steps: STEPS };

/** Never throws, whatever the text. */
export function readDocument(text: string, understanding: Understanding = CURRENT): ReadResult {
  const opened = openEnvelope(text, understanding);
  if (!opened.ok) return opened;
  const raw = rawRecords(opened.file);
  if (!raw.ok) return raw;
  const read = documentFrom(raw.records);
  return read.ok ? { ...read, notes: [...opened.notes, ...read.notes], quiet: opened.notes } : read;
}

const FIELDS: readonly string[] = ['format', 'version', 'records'];

function rawRecords(file: Json): { readonly ok: true; readonly records: readonly unknown[] } | Failure {
  const stranger = Object.keys(file).find((key) => !FIELDS.includes(key));
  if (stranger !== undefined) {
    const name = fieldName(stranger);
    return failure(`${name}${unknownField(name, fieldsHere(FIELDS)).text}.`, name);
  }
  const { records } = file;
  if (!Array.isArray(records)) return badField('records', records, t`give a list of records`);
  if (records.length <= MOST_RECORDS) return { ok: true, records };
  return failure(tooManyRecords(records.length), 'records');
}

function documentFrom(raw: readonly unknown[]): ReadResult {
  const records = new Map<string, AnyRecord>();
  const places = new Map<string, number>();
  for (const [index, item] of raw.entries()) {
    const result = readRecord(item);
    if (!result.ok) return aboutRecord(index, item, result.complaint);
    const { record } = result;
    const other = places.get(record.id);
    if (other !== undefined) return aboutRecord(index, item, usedTwice(record.id, other));
    places.set(record.id, index);
    records.set(record.id, record);
  }
  const document = { records };
  const broken = documentRuleBroken(document);
  if (!broken) return { ok: true, document, notes: notesOn(records.values()), quiet: [] };
  if (!broken.record) return failure(broken.text, 'records');
  return aboutRecord(places.get(broken.record.id) ?? 0, broken.record, broken);
}

function usedTwice(id: string, other: number): Complaint {
  const text = t`: "${id}" is already the id of record ${other + 1}; give each record its own`;
  return { field: 'id', text };
}

/** `stand "stand-3", lip above the floor: -20 is not allowed; give ...` */
function aboutRecord(index: number, raw: unknown, { field, text }: Complaint): Failure {
  const { name, kind } = namedAs(index, raw);
  const words = kind ? fieldWords(kind, field) : field;
  const where = words === '' ? '' : `, ${words}`;
  return failure(`${name}${where}${text}.`, `records[${index}]${field === '' ? '' : `.${field}`}`);
}

/** `stand "stand-3"`, as far as the record says; else its place in the file, from 1. */
function namedAs(index: number, raw: unknown): { readonly name: string; readonly kind: Kind | null } {
  const { kind, id, name } = Object(raw) as Partial<Readonly<Record<string, unknown>>>;
  const called = [name, id].find((each) => typeof each === 'string' && each !== '');
  if (!isKind(kind) || called === undefined)
    return { name: t`record ${index + 1}`, kind: isKind(kind) ? kind : null };
  return { name: `${kindWord(kind)} ${shown(called)}`, kind };
}

/** More than this nobody reads; how many there are besides is said in one more. */
const MOST_NOTES = 20;

function notesOn(records: Iterable<AnyRecord>): string[] {
  const notes: string[] = [];
  let more = 0;
  for (const record of records) {
    const unknown = unknownModel(record);
    if (unknown === null) continue;
    if (notes.length === MOST_NOTES) more++;
    else notes.push(noteOn(record, unknown));
  }
  return more === 0
    ? notes
    : [...notes, t`The catalogue does not have what ${more} more of the records name.`];
}

function noteOn({ kind, id, name }: AnyRecord, model: string): string {
  return t`${kindWord(kind)} ${shown(name || id)}: the catalogue has no model ${shown(model)}; it is taken for a usual one.`;
}
