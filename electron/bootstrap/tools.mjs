/** Programs of the system that the editor and its tests use: found, or installed where that needs no question. */

import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { run } from './run.mjs';
import { isRoot, say } from './surroundings.mjs';

const PROGRAM_NAMES = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'microsoft-edge',
  'microsoft-edge-stable',
];

const MAC_PLACES = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
];

const WINDOWS_PLACES = [
  'Google\\Chrome\\Application\\chrome.exe',
  'Microsoft\\Edge\\Application\\msedge.exe',
];

/** `STANDLINES_BROWSER` goes before all others. Null when there is none. */
export function findBrowser() {
  return (
    [process.env['STANDLINES_BROWSER'] ?? '', ...places()].find((place) => place && existsSync(place)) ?? null
  );
}

function places() {
  if (process.platform === 'darwin') return MAC_PLACES;
  if (process.platform === 'win32') return windowsPlaces();
  return PROGRAM_NAMES.flatMap(placesOf);
}

/** @param {string} name */
function placesOf(name) {
  const folders = (process.env['PATH'] ?? '').split(delimiter);
  return [...folders, '/usr/bin', '/usr/local/bin', '/snap/bin'].map((folder) => join(folder, name));
}

/**
 * Path of a program of the system, or null.
 * @param {string} name
 */
export function findProgram(name) {
  return placesOf(name).find((place) => existsSync(place)) ?? null;
}

function windowsPlaces() {
  const bases = ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].map((name) => process.env[name]);
  return bases.flatMap((base) => (base ? WINDOWS_PLACES.map((place) => join(base, place)) : []));
}

/** Whether packages of the system can be installed without asking anybody. */
export function canInstall() {
  return process.platform === 'linux' && isRoot() && existsSync('/usr/bin/apt-get');
}

/**
 * Installs packages of the system. False when that failed.
 * @param {readonly string[]} packages
 */
export async function installPackages(packages) {
  say(`Installing ${packages.join(' and ')} ...`);
  const options = { quiet: true, limitMs: 600_000, env: { DEBIAN_FRONTEND: 'noninteractive' } };
  if ((await run('apt-get', ['update'], options)) !== 0) return false;
  return (await run('apt-get', ['install', '-y', '--no-install-recommends', ...packages], options)) === 0;
}
