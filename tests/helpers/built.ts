/** The built programs, as a user runs them. */

import { spawnSync, type SpawnSyncReturns } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Builds what is older than its sources. Throws when that fails. */
export function buildPrograms(): void {
  const { status, stderr } = runStandlines(['help']);
  if (status !== 0) throw new Error(`the program could not be built: ${stderr}`);
}

/** By way of the bootstrap, as `npm run -s standlines` does. */
export function runStandlines(words: readonly string[]): SpawnSyncReturns<string> {
  return run(join(root, 'electron/bootstrap/standlines.mjs'), words, root);
}

/** The built command line by itself, in `folder`. */
export function runBuilt(words: readonly string[], folder: string): SpawnSyncReturns<string> {
  return run(join(root, 'dist/node/cli.js'), words, folder);
}

function run(script: string, words: readonly string[], cwd: string): SpawnSyncReturns<string> {
  const env = { ...process.env, INIT_CWD: cwd };
  return spawnSync(process.execPath, [script, ...words], { cwd, env, encoding: 'utf8', maxBuffer: 1e9 });
}
