/**
 * Brings files of older versions up to date, one version at a time. A step gets the whole JSON value of its version
 * and returns that of the next; it must not change what it gets.
 */

import { t } from '../words/say.ts';

export type Json = Readonly<Record<string, unknown>>;

/** The step that leads away from a version. */
export type Steps = ReadonlyMap<number, (file: Json) => Json>;

export const STEPS: Steps = new Map([
  [1, toVersion2],
  [2, toVersion3],
  [3, toVersion4],
]);

/**
 * Version 2 says of each player whether he walks or uses a wheelchair. Version 1 could only name a seat of that model,
 * which its catalogue did not have; whoever wrote it meant it.
 */
function toVersion2(file: Json): Json {
  return eachRecord(file, withMobility);
}

/** Version 3 keeps which PDF each part is printed in, and page plans; version 2 knew none of either. */
function toVersion3(file: Json): Json {
  return eachRecord(file, withPdfs);
}

/** Version 4 knows contacts, chosen views, variants, stock, storage, underlays and groups; what version 3 says stays true without. */
function toVersion4(file: Json): Json {
  return file;
}

function eachRecord(file: Json, change: (record: unknown) => unknown): Json {
  const { records } = file;
  return Array.isArray(records) ? { ...file, records: records.map(change) } : file;
}

function withMobility(record: unknown): unknown {
  if (!isObject(record) || record['kind'] !== 'player') return record;
  const { chair } = record;
  const inWheelchair = isObject(chair) && chair['model'] === 'wheelchair';
  return { ...record, mobility: inWheelchair ? 'wheelchair' : 'walks' };
}

function withPdfs(record: unknown): unknown {
  if (!isObject(record) || record['kind'] !== 'score') return record;
  const { players } = record;
  return Array.isArray(players) ? { ...record, pdfs: players.map(() => null) } : record;
}

function isObject(value: unknown): value is Json {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

export type Migrated =
  | { readonly ok: true; readonly file: Json; readonly notes: readonly string[] }
  | { readonly ok: false; readonly message: string };

/** `from` is at most `to`. A step that is missing or fails gives a refusal, never half a file. */
export function migrate(file: Json, from: number, to: number, steps: Steps = STEPS): Migrated {
  let current = file;
  for (let version = from; version < to; version++) {
    const next = stepOf(steps, version, current);
    if (!next) {
      return { ok: false, message: t`The file is of version ${from} and could not be brought up to date.` };
    }
    current = { ...next, version: version + 1 };
  }
  const notes =
    from === to ? [] : [t`The file was of version ${from} and has been brought up to version ${to}.`];
  return { ok: true, file: current, notes };
}

function stepOf(steps: Steps, version: number, file: Json): Json | null {
  try {
    return steps.get(version)?.(file) ?? null;
  } catch {
    // An old file may break what its version promised: that is the file's fault and not a bug here.
    return null;
  }
}
