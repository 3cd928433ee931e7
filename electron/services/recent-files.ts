/** The files last opened or saved, newest first. */

import { join } from 'node:path';
import * as v from 'valibot';
import type { Fs } from './fs.ts';
import { readOwnFile, writeOwnFile } from './own-file.ts';

const MOST = 12;
const pathList = v.array(v.pipe(v.string(), v.minLength(1), v.maxLength(8192)));

/** Those that are still there. */
export async function recentFiles(fs: Fs, state: string): Promise<string[]> {
  const paths = (await readOwnFile(fs, recentPath(state), pathList)) ?? [];
  const there = await Promise.all(paths.slice(0, MOST).map((path) => isFile(fs, path)));
  return paths.filter((_, index) => there[index]);
}

export async function rememberRecent(fs: Fs, state: string, path: string): Promise<void> {
  const earlier = (await readOwnFile(fs, recentPath(state), pathList)) ?? [];
  const others = earlier.filter((other) => other !== path);
  await writeOwnFile(fs, recentPath(state), [path, ...others].slice(0, MOST));
}

export async function clearRecent(fs: Fs, state: string): Promise<void> {
  await writeOwnFile(fs, recentPath(state), []);
}

async function isFile(fs: Fs, path: string): Promise<boolean> {
  return fs.stat(path).then(
    (stats) => stats.isFile(),
    () => false,
  );
}

function recentPath(state: string): string {
  return join(state, 'recent.json');
}
