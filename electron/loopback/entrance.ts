/**
 * A way in for the browser that this program starts itself. Its command line can be read by every user of the
 * machine, so it carries a word that works once and not for long, and the answer to it carries the token.
 */

import { randomBytes } from 'node:crypto';

const VALID_MS = 60_000;
const PATH = '/enter/';

export interface Entrance {
  /** A path that will work once. */
  issue(): string;
  /** Whether `path` is such a path; it no longer is afterwards. */
  redeem(path: string): boolean;
}

/** `now` is monotonic, in milliseconds. */
export function createEntrance(now: () => number): Entrance {
  const issued = new Map<string, number>();
  return {
    issue() {
      const path = PATH + randomBytes(32).toString('base64url');
      issued.set(path, now());
      return path;
    },
    redeem(path) {
      const since = issued.get(path);
      issued.delete(path);
      return since !== undefined && now() - since <= VALID_MS;
    },
  };
}
