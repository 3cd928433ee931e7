/** Which running program a piece of unsaved work belongs to. */

import { readFileSync } from 'node:fs';
import * as v from 'valibot';

/** A process, told apart from a later one that got the same number where the system says when it started. */
export interface Owner {
  readonly pid: number;
  /** The kernel's start time of the process on Linux; null elsewhere. */
  readonly started: string | null;
}

export const OWNER_SCHEMA = v.object({
  pid: v.pipe(v.number(), v.integer(), v.minValue(1)),
  started: v.nullable(v.string()),
});

export function ownerOf(pid: number): Owner {
  return { pid, started: startTime(pid) };
}

export function isRunning(owner: Owner): boolean {
  if (!hasProcess(owner.pid)) return false;
  return owner.started === null || owner.started === startTime(owner.pid);
}

/** Signal 0 asks without sending anything. */
export function hasProcess(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
}

/** Field 22 of proc(5) `stat`, counted after the command name, which may hold spaces and brackets. */
function startTime(pid: number): string | null {
  if (process.platform !== 'linux') return null;
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, 'latin1');
    return stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19] ?? null;
  } catch {
    return null;
  }
}
