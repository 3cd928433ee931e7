/** Keeps two runs of the bootstrap from working on the same folder at once. */

import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';

const LOOK_AGAIN_MS = 200;

/**
 * Runs `work` when no other process that lives holds `lock`.
 * @template T
 * @param {string} lock path of a file that marks the holder
 * @param {() => Promise<T>} work
 * @returns {Promise<T>}
 */
export async function oneAtATime(lock, work) {
  mkdirSync(dirname(lock), { recursive: true });
  while (!take(lock)) await new Promise((resolve) => setTimeout(resolve, LOOK_AGAIN_MS));
  try {
    return await work();
  } finally {
    rmSync(lock, { force: true });
  }
}

/** A lock whose holder has died is taken over. @param {string} lock */
function take(lock) {
  try {
    writeFileSync(lock, String(process.pid), { flag: 'wx' });
    return true;
  } catch {
    if (!isHeld(lock)) rmSync(lock, { force: true });
    return false;
  }
}

/** @param {string} lock */
function isHeld(lock) {
  try {
    const pid = Number(readFileSync(lock, 'utf8'));
    if (pid > 0) process.kill(pid, 0);
    return true;
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
}
