/** Installs the packages when they are missing or are not those of package-lock.json. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { oneAtATime } from './one-at-a-time.mjs';
import { run } from './run.mjs';
import { root, say } from './surroundings.mjs';

/** @typedef {{ version?: string, integrity?: string, optional?: boolean, link?: boolean }} Package */

/** Ends the program when the packages cannot be installed. */
export async function ensureDependencies() {
  if (areInstalled() || (await oneAtATime(join(root, 'dist', 'installing.lock'), install))) return;
  say(
    'The packages could not be installed; npm says why above. Is there a connection to the package registry?',
  );
  process.exit(2);
}

async function install() {
  if (areInstalled()) return true;
  // Warnings about engines and deprecations are about what builds packages, and nothing the reader can act on.
  say('Installing the packages (once) ...');
  return (await npm(['ci', '--no-audit', '--no-fund', '--loglevel=error'])) === 0;
}

/** npm keeps a list of what it has installed; compare that with what is wanted. */
function areInstalled() {
  const wanted = packagesIn(join(root, 'package-lock.json'));
  const installed = packagesIn(join(root, 'node_modules', '.package-lock.json'));
  return wanted !== null && installed !== null && missingPackages(wanted, installed).length === 0;
}

/**
 * Paths of the packages that are not there as wanted. Optional ones are for other systems and may be left out.
 * @param {Readonly<Record<string, Package>>} wanted
 * @param {Readonly<Record<string, Package>>} installed
 */
export function missingPackages(wanted, installed) {
  return Object.keys(wanted).filter((path) => path !== '' && !agrees(wanted[path], installed[path]));
}

/**
 * @param {Package | undefined} wanted
 * @param {Package | undefined} installed
 */
function agrees(wanted, installed) {
  if (!installed) return wanted?.optional === true;
  return installed.version === wanted?.version && installed.integrity === wanted?.integrity;
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
