/** Files that a verb writes. */

import { FaultError } from '../services/faults.ts';
import type { Fs } from '../services/fs.ts';
import { saveFile } from '../services/save-file.ts';

/** The whole file or nothing. `expectedHash` null: only a new file. Throws `FaultError` or the system's error. */
export function savePrint(fs: Fs, path: string, bytes: Uint8Array, expectedHash: 'any' | null = 'any') {
  return saveFile(fs, {
    path,
    bytes,
    expectedHash,
    replace: false,
    device: null,
    backup: false,
    newMode: 0o666,
  });
}

/** Also through links. A file that is not there yet is no other. */
export async function isSameFile(fs: Fs, a: string, b: string): Promise<boolean> {
  try {
    const [first, second] = [await fs.stat(a), await fs.stat(b)];
    return first.dev === second.dev && first.ino === second.ino;
  } catch (error) {
    if (error instanceof FaultError) throw error;
    return false;
  }
}
