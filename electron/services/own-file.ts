/** The program's own small JSON files in its state folder: private to the user, written whole, checked when read. */

import { dirname } from 'node:path';
import * as v from 'valibot';
import type { Fs } from './fs.ts';
import { openFile } from './open-file.ts';
import { saveFile } from './save-file.ts';

/** Null when the file is missing, damaged or of another form: the caller has a default for all three. */
export async function readOwnFile<T>(
  fs: Fs,
  path: string,
  schema: v.GenericSchema<unknown, T>,
): Promise<T | null> {
  try {
    const parsed: unknown = JSON.parse((await openFile(fs, path)).text);
    const checked = v.safeParse(schema, parsed);
    return checked.success ? checked.output : null;
  } catch {
    return null;
  }
}

/** Makes the folder when needed. Throws the system's error. */
export async function writeOwnFile(
  fs: Fs,
  path: string,
  value: unknown,
  options: { readonly backup: boolean } = { backup: false },
): Promise<void> {
  await fs.mkdir(dirname(path), { recursive: true, mode: 0o700 });
  await saveFile(fs, {
    path,
    bytes: Buffer.from(JSON.stringify(value)),
    expectedHash: 'any',
    replace: true,
    device: null,
    backup: options.backup,
    newMode: 0o600,
  });
}
