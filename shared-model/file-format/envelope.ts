/** From the text of a file to the JSON of the current version: everything before its records are looked at. */

import { shown } from './complaint.ts';
import { findTextFault, lineAndColumn } from './json-text.ts';
import { MOST_TEXT } from './limits.ts';
import { migrate, type Json, type Steps } from './migrate.ts';
import { badField, failure, type Failure } from './problem.ts';
import { FORMAT } from './schema.ts';
import { t } from '../words/say.ts';

/** What the program understands; tests hand in versions that do not exist yet. */
export interface Understanding {
  readonly version: number;
  readonly steps: Steps;
}

export interface Opened {
  readonly ok: true;
  readonly file: Json;
  readonly notes: readonly string[];
}

export function openEnvelope(text: string, understanding: Understanding): Opened | Failure {
  const parsed = parse(text);
  return parsed.ok ? bringUpToDate(parsed.file, understanding) : parsed;
}

function parse(text: string): { readonly ok: true; readonly file: Json } | Failure {
  if (text.length > MOST_TEXT) return failure(t`The file is larger than ${MOST_TEXT / 1024 / 1024} MB.`);
  const body = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (body.includes('\0')) return failure(t`This is not a Standlines file: it holds binary data.`);
  const start = /\S/.exec(body)?.[0];
  if (start === undefined) return failure(t`The file is empty.`);
  if (start !== '{') return failure(t`This is not a Standlines file: it does not start with "{".`);
  const fault = findTextFault(body);
  if (!fault) return { ok: true, file: JSON.parse(body) as Json };
  const { line, column } = lineAndColumn(body, fault.at);
  return failure(t`Line ${line}, column ${column}: ${fault.message}.`);
}

function bringUpToDate(file: Json, { version: newest, steps }: Understanding): Opened | Failure {
  const { format, version } = file;
  if (format !== FORMAT) {
    const message =
      format === undefined
        ? t`This is not a Standlines file: "format" is missing.`
        : t`This is not a Standlines file: "format" is ${shown(format)} and not "${FORMAT}".`;
    return failure(message, 'format');
  }
  if (typeof version !== 'number' || !Number.isSafeInteger(version) || version < 1) {
    return badField('version', version, t`give ${newest}, the version that this program writes`);
  }
  if (version > newest) return madeByNewer(version, newest);
  const migrated = migrate(file, version, newest, steps);
  return migrated.ok ? migrated : failure(migrated.message, 'version');
}

function madeByNewer(version: number, newest: number): Failure {
  return failure(
    t`The file was made by a newer Standlines (file version ${version}, this program reads up to ${newest}); please update. The file is not touched.`,
    'version',
  );
}
