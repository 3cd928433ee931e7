/** The folder that a verb writes into. */

import { mkdir } from 'node:fs/promises';
import { dirname } from 'node:path';
import { FaultError } from '../services/faults.ts';
import { errorCode, type Fs } from '../services/fs.ts';

/**
 * Made with the folders over it where they are missing, one after the other: asked to make all at once, Node never answers where
 * the system lets nobody make any. Throws `FaultError` or the system's error.
 */
export async function makeFolder(fs: Fs, folder: string): Promise<void> {
  if (await isFolder(fs, folder)) return;
  await makeFolder(fs, dirname(folder));
  try {
    await mkdir(folder);
  } catch (error) {
    // Somebody else may have been quicker.
    if (errorCode(error) === 'EEXIST' && (await isFolder(fs, folder))) return;
    if (errorCode(error) !== 'ENOENT') throw error;
    const reason = `No folder can be made in ${dirname(folder)}. Choose another place.`;
    throw new FaultError('folder.cannotBeMade', reason);
  }
}

/** Throws where something else has the name. */
async function isFolder(fs: Fs, path: string): Promise<boolean> {
  const stats = await fs.stat(path).catch((error: unknown) => {
    if (errorCode(error) === 'ENOENT') return null;
    throw error;
  });
  if (stats && !stats.isDirectory())
    throw new FaultError('folder.isFile', `${path} is a file, not a folder. Choose a folder, or a new name.`);
  return stats !== null;
}
