/** Files on the way: written as a stream where nobody looks, then taken up whole or thrown away. */

import { createWriteStream, rmSync } from 'node:fs';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Writable } from 'node:stream';

export interface ScratchFile {
  /** What the stream has written by now. */
  read(): Promise<Uint8Array>;
  drop(): Promise<void>;
}

/** Fills a file by `write`; nothing of it is left when that fails. */
export async function scratchFile<T>(
  write: (sink: Writable) => Promise<T>,
): Promise<ScratchFile & { readonly outcome: T }> {
  const folder = await mkdtemp(join(tmpdir(), 'standlines-'));
  const path = join(folder, 'scratch');
  LEFT.add(folder);
  const drop = async (): Promise<void> => {
    LEFT.delete(folder);
    await rm(folder, { recursive: true, force: true });
  };
  const sink = createWriteStream(path, { mode: 0o600 });
  // Whoever writes meets the fault at his next step.
  sink.on('error', () => undefined);
  try {
    const outcome = await write(sink);
    return { outcome, read: () => readFile(path), drop };
  } catch (error) {
    await closed(sink);
    await drop();
    throw error;
  }
}

/** Folders that are still there; none of them outlives the program. */
const LEFT = new Set<string>();
process.once('exit', () => {
  for (const folder of LEFT) rmSync(folder, { recursive: true, force: true });
});

function closed(sink: Writable): Promise<void> {
  return new Promise((resolve) => {
    if (sink.closed) return resolve();
    sink.once('close', resolve);
    sink.destroy();
  });
}
