/** Installs the packages when they are missing or are not those of package-lock.json. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { run } from './run.mjs';
import { root, say } from './surroundings.mjs';

/** @typedef {{ version?: string, integrity?: string, optional?: boolean, link?: boolean }} Package */

/** Ends the program when the packages cannot be installed. */
export async function ensureDependencies() {
  if (areInstalled()) return;
  say('Installing the packages (once) ...');
  if ((await npm(['ci', '--no-audit', '--no-fund'])) === 0) return;
  say(
    'The packages could not be installed; npm says why above. Is there a connection to the package registry?',
  );
  process.exit(2);
}

/** npm keeps a list of what it has installed; compare that with what is wanted. */
function areInstalled() {
  const wanted = packagesIn(join(root, 'package-lock.json'));
  const installed = packagesIn(join(root, 'node_modules', '.package-lock.json'));
  if (!wanted || !installed) return false;
  return Object.entries(wanted).every(([path, entry]) => path === '' || agrees(entry, installed[path]));
}

/**
 * Optional packages are for other platforms and may be missing.
 * @param {Package} wanted
 * @param {Package | undefined} installed
 */
function agrees(wanted, installed) {
  if (!installed) return wanted.optional === true;
  return installed.version === wanted.version && installed.integrity === wanted.integrity;
}

/**
 * @param {string} file
 * @returns {Record<string, Package> | null}
 */
function packagesIn(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8')).packages ?? null;
  } catch {
    return null;
  }
}

/**
 * The npm that started this, or the one on the path.
 * @param {string[]} args
 */
function npm(args) {
  const script = process.env['npm_execpath'];
  if (script?.endsWith('.js')) return run(process.execPath, [script, ...args]);
  return run(process.platform === 'win32' ? 'npm.cmd' : 'npm', args);
}
