/** Opaque names for paths. A window only ever sees and sends these, so it cannot ask for a path of its own making. */

import { randomBytes } from 'node:crypto';
import type { Handle } from '#contract/contract.ts';
import { t } from '#model/words/say.ts';
import { FaultError } from './faults.ts';

export interface Handles {
  /** The same path always gets the same handle while the program runs. */
  handleOf(path: string): Handle;
  /** Throws `FaultError` for a handle that was not given out. */
  pathOf(handle: Handle): string;
}

export function createHandles(): Handles {
  const paths = new Map<Handle, string>();
  const handles = new Map<string, Handle>();
  return {
    handleOf(path) {
      const known = handles.get(path);
      if (known !== undefined) return known;
      const handle = randomBytes(16).toString('hex');
      handles.set(path, handle);
      paths.set(handle, path);
      return handle;
    },
    pathOf(handle) {
      const path = paths.get(handle);
      if (path === undefined)
        throw new FaultError('file.unknownHandle', t`That file is no longer known here. Open it again.`);
      return path;
    },
  };
}
