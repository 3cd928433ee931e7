/**
 * Brings files of older versions up to date, one version at a time. A step gets the whole JSON value of its version
 * and returns that of the next; it must not change what it gets.
 */

export type Json = Readonly<Record<string, unknown>>;

/** The step that leads away from a version. */
export type Steps = ReadonlyMap<number, (file: Json) => Json>;

/** Version 1 is the first, so there is nothing to bring up to date yet. */
export const STEPS: Steps = new Map();

export type Migrated =
  | { readonly ok: true; readonly file: Json; readonly notes: readonly string[] }
  | { readonly ok: false; readonly message: string };

/** `from` is at most `to`. A step that is missing or fails gives a refusal, never half a file. */
export function migrate(file: Json, from: number, to: number, steps: Steps = STEPS): Migrated {
  let current = file;
  for (let version = from; version < to; version++) {
    const next = stepOf(steps, version, current);
    if (!next) {
      return { ok: false, message: `The file is of version ${from} and could not be brought up to date.` };
    }
    current = { ...next, version: version + 1 };
  }
  const notes =
    from === to ? [] : [`The file was of version ${from} and has been brought up to version ${to}.`];
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
