/** Electron's own program, which its npm package fetches in a step of its own. */

import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { runScript } from './run.mjs';
import { root, say } from './surroundings.mjs';

const FETCH_LIMIT_MS = 180_000;
const folder = join(root, 'node_modules', 'electron');
/** Goes with the packages, so that newly installed packages try again. */
const triedMark = join(root, 'node_modules', '.cache', 'standlines-electron-tried');

/** Path of the program, or null when it is not there. */
export function findElectron() {
  const name = textOf(join(folder, 'path.txt'));
  const program = name === null ? null : join(folder, 'dist', name);
  return program !== null && existsSync(program) ? program : null;
}

/** Tries once to fetch it. Null when that failed, now or earlier. */
export async function fetchElectron() {
  if (existsSync(triedMark)) return null;
  say("Fetching Electron's runtime (once) ...");
  await runScript('node_modules/electron/install.js', [], { limitMs: FETCH_LIMIT_MS, quiet: true });
  rememberTrying();
  return findElectron();
}

/** In a folder of somebody else it is tried again at every start. */
function rememberTrying() {
  try {
    mkdirSync(dirname(triedMark), { recursive: true });
    writeFileSync(triedMark, '');
  } catch {
    say('(That could not be noted down, so it will be tried again next time.)');
  }
}

/** @param {string} file */
function textOf(file) {
  try {
    return readFileSync(file, 'utf8').trim();
  } catch {
    return null;
  }
}
