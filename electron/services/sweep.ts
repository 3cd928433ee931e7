/** Clears away what a save left behind when its program was killed on the way. */

import { join } from 'node:path';
import type { Fs } from './fs.ts';
import { hasProcess } from './running.ts';
import { makerOf } from './temporary-names.ts';

const OLD_ENOUGH_MS = 60 * 60 * 1000;

/** Removes this program's temporary files that are over an hour old and whose maker is gone. Never throws. */
export async function sweepFolders(fs: Fs, folders: Iterable<string>, now: Date): Promise<number> {
  let removed = 0;
  for (const folder of new Set(folders)) {
    const names = await fs.readdir(folder).catch((): string[] => []);
    for (const name of names)
      if (await isStale(fs, folder, name, now)) removed += await remove(fs, join(folder, name));
  }
  return removed;
}

async function isStale(fs: Fs, folder: string, name: string, now: Date): Promise<boolean> {
  const maker = makerOf(name);
  if (maker === null || hasProcess(maker)) return false;
  const stats = await fs.stat(join(folder, name)).catch(() => null);
  return stats !== null && stats.isFile() && now.getTime() - stats.mtimeMs > OLD_ENOUGH_MS;
}

async function remove(fs: Fs, path: string): Promise<number> {
  return fs.unlink(path).then(
    () => 1,
    () => 0,
  );
}
