/** Reads the text of a `.standlines` file, strictly: what is not understood is refused, with the place and a remedy. */

import type { Document } from '../document/document.ts';
import type { AnyRecord } from '../document/records.ts';
import { fieldName, shown, unknownField, type Complaint } from './complaint.ts';
import { documentRuleBroken, tooManyRecords } from './document-rules.ts';
import { openEnvelope, type Understanding } from './envelope.ts';
import { fieldsHere } from './fields.ts';
import { MOST_RECORDS } from './limits.ts';
import { STEPS, type Json } from './migrate.ts';
import { unknownModel, type UnknownModel } from './models.ts';
import { badField, failure, type Failure } from './problem.ts';
import { readRecord } from './record.ts';
import { VERSION } from './schema.ts';
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
  const text = t`: "${id}" is already the id of records[${other}]; give each record its own`;
  return { field: 'id', text };
}

/** `records[12] (stand "stand-3").lip: -20 is not allowed; give ...` */
function aboutRecord(index: number, raw: unknown, { field, text }: Complaint): Failure {
  const rest = field === '' ? '' : `.${field}`;
  return failure(`records[${index}]${nameOf(raw)}${rest}${text}.`, `records[${index}]${rest}`);
}

/** ` (stand "stand-3")`, as far as the record says. */
function nameOf(raw: unknown): string {
  if (typeof raw !== 'object' || raw === null) return '';
  const { kind, id } = raw as { readonly kind?: unknown; readonly id?: unknown };
  if (typeof kind !== 'string' || typeof id !== 'string') return '';
  return ` (${JSON.stringify(kind.slice(0, 20)).slice(1, -1)} ${JSON.stringify(id.slice(0, 64))})`;
}

/** More than this nobody reads; how many there are besides is said in one more. */
const MOST_NOTES = 20;

function notesOn(records: Iterable<AnyRecord>): string[] {
  const notes: string[] = [];
  let more = 0;
  for (const record of records) {
    const unknown = unknownModel(record);
    if (!unknown) continue;
    if (notes.length === MOST_NOTES) more++;
    else notes.push(noteOn(record, unknown));
  }
  return more === 0
    ? notes
    : [...notes, t`The catalogue does not have what ${more} more of the records name.`];
}

function noteOn({ kind, id }: AnyRecord, { field, model }: UnknownModel): string {
  return t`${kind} ${shown(id)}: the catalogue has no ${field} ${shown(model)}; it is taken for a usual one.`;
}
