/** The user's own files by handle: read, saved in order, and remembered for "open recent". */

import { basename, dirname } from 'node:path';
import type { FileText, Handle, SaveRequest, Saved, SavedType } from '#contract/contract.ts';
import { readDocument } from '#model/file-format/read.ts';
import { t } from '#model/words/say.ts';
import { FaultError } from './faults.ts';
import { checkEnding } from './folders.ts';
import type { Fs } from './fs.ts';
import type { Handles } from './handles.ts';
import { createKeyedQueue } from './keyed-queue.ts';
import { LARGEST_FILE, openFile, tooLarge } from './open-file.ts';
import { rememberRecent } from './recent-files.ts';
import { saveFile, type SavedFile } from './save-file.ts';

export interface UserFiles {
  read(handle: Handle): Promise<FileText>;
  /** Refuses a text that could not be opened again. */
  saveDocument(request: SaveRequest): Promise<Saved>;
  /** Also what other programs read; `type` is the ending that the file has to have. */
  savePrint(handle: Handle, bytes: Uint8Array, replace: boolean, type?: SavedType): Promise<Saved>;
  /** The folder last read from or saved to; null: none yet. */
  lastFolder(): string | null;
  isIdle(): boolean;
  /** Resolves when every save under way has ended. */
  idle(): Promise<void>;
}

interface Surroundings {
  readonly fs: Fs;
  readonly state: string;
  readonly handles: Handles;
}

interface Writing {
  readonly handle: Handle;
  readonly bytes: Uint8Array;
  readonly type: SavedType;
  readonly expectedHash: string | null;
  readonly replace: boolean;
}

export function createUserFiles({ fs, state, handles }: Surroundings): UserFiles {
  const queue = createKeyedQueue();
  /** Device of each file when it was last read or saved, to notice a drive that has gone. */
  const devices = new Map<string, number>();
  const warned = new Set<string>();
  let folder: string | null = null;

  const wasAt = (path: string, device: number): void => {
    folder = dirname(path);
    devices.set(path, device);
  };

  const remember = (path: string): Promise<void> => rememberRecent(fs, state, path).catch(() => undefined);

  const write = (writing: Writing): Promise<Saved> => {
    const path = handles.pathOf(writing.handle);
    checkEnding(path, writing.type);
    return queue.run(path, async () => {
      const saved = await saveFile(fs, {
        path,
        bytes: writing.bytes,
        expectedHash: writing.expectedHash,
        replace: writing.replace,
        device: writing.expectedHash === null ? null : (devices.get(path) ?? null),
        backup: writing.type === 'standlines',
        newMode: 0o666,
      });
      if (writing.type === 'standlines') {
        wasAt(saved.path, saved.device);
        await remember(saved.path);
      }
      return describe(saved);
    });
  };

  const describe = (saved: SavedFile): Saved => ({
    handle: handles.handleOf(saved.path),
    name: basename(saved.path),
    location: saved.path,
    hash: saved.hash,
    warning: warnOnce(saved),
  });

  /** The same remark at every save would only be clicked away. */
  const warnOnce = ({ path, warning }: SavedFile): string | null => {
    if (warning === null || warned.has(path + warning)) return null;
    warned.add(path + warning);
    return warning;
  };

  return {
    async read(handle) {
      const opened = await openFile(fs, handles.pathOf(handle));
      wasAt(opened.path, opened.device);
      // What the window will refuse must not come before the user's own files at the next start.
      if (readDocument(opened.text).ok) await remember(opened.path);
      const { path, text, hash, readOnly } = opened;
      return { handle: handles.handleOf(path), name: basename(path), location: path, text, hash, readOnly };
    },
    async saveDocument({ handle, text, expectedHash, replace }) {
      checkDocument(text);
      const bytes = Buffer.from(text);
      if (bytes.length > LARGEST_FILE) throw tooLarge(basename(handles.pathOf(handle)), bytes.length);
      return write({ handle, bytes, type: 'standlines', expectedHash, replace });
    },
    savePrint: async (handle, bytes, replace, type = 'pdf') =>
      write({ handle, bytes, type, expectedHash: null, replace }),
    lastFolder: () => folder,
    isIdle: () => queue.isIdle(),
    idle: () => queue.idle(),
  };
}

function checkDocument(text: string): void {
  const read = readDocument(text);
  if (read.ok) return;
  throw new FaultError(
    'file.notADocument',
    t`Not saved, because it could not be opened again: ${read.problem.message}. The file on disk is unchanged.`,
  );
}
