/** What the bootstrap needs to know of the machine. Plain JavaScript: it runs before anything is installed. */

import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../../', import.meta.url));

const OLDEST_NODE = [20, 19];

/** Ends the program with one clear sentence when Node is too old for it. */
export function requireNode() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  const [oldestMajor = 0, oldestMinor = 0] = OLDEST_NODE;
  if (major > oldestMajor || (major === oldestMajor && minor >= oldestMinor)) return;
  console.error(`Standlines needs Node ${OLDEST_NODE.join('.')} or newer; this is ${process.versions.node}.`);
  process.exit(2);
}

export function hasDisplay() {
  if (process.platform !== 'linux') return true;
  return Boolean(process.env['DISPLAY'] || process.env['WAYLAND_DISPLAY']);
}

export function isRoot() {
  return process.getuid?.() === 0;
}

/** What the bootstrap does goes to stderr: stdout belongs to the program that it starts.
 * @param {string} message */
export function say(message) {
  process.stderr.write(`${message}\n`);
}
