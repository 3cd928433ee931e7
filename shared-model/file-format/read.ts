/** Reads the text of a `.standlines` file, strictly: what is not understood is refused, with the place and a remedy. */

import type { Document } from '../document/document.ts';
import type { AnyRecord } from '../document/records.ts';
import { shown, type Complaint } from './complaint.ts';
import { documentRuleBroken } from './document-rules.ts';
import { findTextFault, lineAndColumn } from './json-text.ts';
import { MOST_RECORDS, MOST_TEXT } from './limits.ts';
import { migrate, STEPS, type Json, type Steps } from './migrate.ts';
import { readRecord } from './record.ts';
import { FORMAT, VERSION } from './schema.ts';

export interface Problem {
  /** What is wrong, where, and what to do. One line. */
  readonly message: string;
  /** `records[12].lip`; empty when it is about the file as a whole. */
  readonly path: string;
}

export type ReadResult =
  | { readonly ok: true; readonly document: Document; readonly notes: readonly string[] }
  | { readonly ok: false; readonly problem: Problem };

/** What the program understands; tests hand in versions that do not exist yet. */
export interface Understanding {
  readonly version: number;
  readonly steps: Steps;
}

/** Never throws, whatever the text. The notes say what a user should know about a file that was read. */
export function readDocument(
  text: string,
  understanding: Understanding = { version: VERSION, steps: STEPS },
): ReadResult {
  const parsed = parse(text);
  if ('problem' in parsed) return { ok: false, problem: parsed.problem };
  const upToDate = bringUpToDate(parsed.file, understanding);
  if ('problem' in upToDate) return { ok: false, problem: upToDate.problem };
  const records = readRecords(upToDate.file);
  if ('problem' in records) return { ok: false, problem: records.problem };
  return { ok: true, document: records.document, notes: upToDate.notes };
}

type Failure = { readonly problem: Problem };

function failure(message: string, path = ''): Failure {
  return { problem: { message, path } };
}

function parse(text: string): { readonly file: Json } | Failure {
  if (text.length > MOST_TEXT) return failure(`The file is larger than ${MOST_TEXT / 1024 / 1024} MB.`);
  const body = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (body.includes('\0')) return failure('This is not a Standlines file: it holds binary data.');
  const start = body.trimStart().charAt(0);
  if (start === '') return failure('The file is empty.');
  if (start !== '{') return failure('This is not a Standlines file: it does not start with "{".');
  const fault = findTextFault(body);
  if (fault) {
    const { line, column } = lineAndColumn(body, fault.at);
    return failure(`Line ${line}, column ${column}: ${fault.message}.`);
  }
  return { file: JSON.parse(body) as Json };
}

function bringUpToDate(
  file: Json,
  { version: newest, steps }: Understanding,
): { readonly file: Json; readonly notes: readonly string[] } | Failure {
  const { format, version } = file;
  if (format !== FORMAT) {
    return failure(
      `This is not a Standlines file: "format" is ${shown(format)} and not "${FORMAT}".`,
      'format',
    );
  }
  if (typeof version !== 'number' || !Number.isSafeInteger(version) || version < 1) {
    return failure(
      `version: ${shown(version)} is not allowed; give a whole number from 1 to ${newest}.`,
      'version',
    );
  }
  if (version > newest) {
    return failure(
      `The file was made by a newer Standlines (file version ${version}, this program reads up to ${newest}); ` +
        'please update. The file is not touched.',
      'version',
    );
  }
  const migrated = migrate(file, version, newest, steps);
  return migrated.ok ? migrated : failure(migrated.message, 'version');
}

function readRecords(file: Json): { readonly document: Document } | Failure {
  const stranger = Object.keys(file).find((key) => !['format', 'version', 'records'].includes(key));
  if (stranger !== undefined) {
    return failure(
      `${stranger}: not a known field; the fields here are format, version and records.`,
      stranger,
    );
  }
  const raw = file['records'];
  if (!Array.isArray(raw)) {
    return failure(`records: ${shown(raw)} is not allowed; give a list of records.`, 'records');
  }
  if (raw.length > MOST_RECORDS) {
    return failure(`records: there are ${raw.length}; at most ${MOST_RECORDS} are possible.`, 'records');
  }
  return documentFrom(raw);
}

function documentFrom(raw: readonly unknown[]): { readonly document: Document } | Failure {
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
  if (!broken) return { document };
  if (!broken.record) return failure(broken.text, 'records');
  return aboutRecord(places.get(broken.record.id) ?? 0, broken.record, broken);
}

function usedTwice(id: string, other: number): Complaint {
  return { field: 'id', text: `: "${id}" is already the id of records[${other}]; give each record its own` };
}

/** `records[12] (stand "stand-3").lip: -20 is not allowed; give ...` */
function aboutRecord(index: number, raw: unknown, { field, text }: Complaint): Failure {
  const path = field === '' ? `records[${index}]` : `records[${index}].${field}`;
  const named = `records[${index}]${nameOf(raw)}${field === '' ? '' : `.${field}`}`;
  return failure(`${named}${text}.`, path);
}

function nameOf(raw: unknown): string {
  if (typeof raw !== 'object' || raw === null) return '';
  const { kind, id } = raw as { readonly kind?: unknown; readonly id?: unknown };
  if (typeof kind !== 'string' || typeof id !== 'string') return '';
  return ` (${kind.slice(0, 20)} ${JSON.stringify(id.slice(0, 64))})`;
}
