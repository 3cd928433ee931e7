/** Child processes. */

import { spawn } from 'node:child_process';
import { root } from './surroundings.mjs';

/** What ends this program is passed on to the one it waits for, which then ends in its own good order. */
const ENDINGS = /** @type {const} */ (['SIGINT', 'SIGTERM', 'SIGHUP']);

/**
 * Runs a program to its end, its output on stderr. Resolves to its exit code, or null when it could not be started
 * or was stopped.
 * @param {string} command
 * @param {readonly string[]} args
 * @param {{ limitMs?: number, quiet?: boolean, env?: Record<string, string>, inherit?: boolean }} [options]
 * @returns {Promise<number | null>}
 */
export function run(command, args, { limitMs, quiet = false, env = {}, inherit = false } = {}) {
  const output = quiet ? 'ignore' : inherit ? 'inherit' : 2;
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      cwd: root,
      env: { ...process.env, ...env },
      stdio: ['ignore', output, quiet ? 'ignore' : 'inherit'],
    });
    const passOn = (/** @type {NodeJS.Signals} */ signal) => void child.kill(signal);
    for (const ending of ENDINGS) process.on(ending, passOn);
    const timer = limitMs === undefined ? undefined : setTimeout(() => child.kill('SIGKILL'), limitMs);
    const done = (/** @type {number | null} */ code) => {
      clearTimeout(timer);
      for (const ending of ENDINGS) process.off(ending, passOn);
      resolve(code);
    };
    child.on('error', () => done(null));
    child.on('exit', done);
  });
}

/**
 * Runs a script with this Node.
 * @param {string} script path below the repository
 * @param {readonly string[]} args
 * @param {Parameters<typeof run>[2]} [options]
 */
export function runScript(script, args, options) {
  return run(process.execPath, [script, ...args], options);
}
