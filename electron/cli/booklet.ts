/** `standlines booklet` */

import { basename, dirname, resolve } from 'node:path';
import { readBookletDescription, type BookletDescription } from '../services/booklet-description.ts';
import { jobFrom } from '../services/booklet-job.ts';
import { renderBooklet } from '../services/booklet.ts';
import { faultOf } from '../services/faults.ts';
import type { Fs } from '../services/fs.ts';
import { openFile } from '../services/open-file.ts';
import { isSameFile, savePrint } from './printed-file.ts';
import { tellNotes, type Surroundings } from './surroundings.ts';
import { onOneLine } from './terminal.ts';
import { UsageError, type BookletOrder } from './usage.ts';

/** Writes the whole PDF or nothing. Throws `UsageError`. */
export async function booklet(order: BookletOrder, surroundings: Surroundings): Promise<number> {
  const { fs, now, print } = surroundings;
  const path = resolve(order.file);
  const out = resolve(order.out);
  const folder = dirname(path);
  const described = await describedIn(fs, path);
  await refuseOverwriting(fs, out, [path, ...partPaths(described, folder)]);
  const { bytes, printed, sheets, notes } = await asUsage(path, async () =>
    renderBooklet(await jobFrom(described, { fs, folder, now: now() })),
  );
  const { warning } = await asUsage(out, () => savePrint(fs, out, bytes));
  const instructions = sheets - printed;
  const pages = `${printed} ${printed === 1 ? 'sheet' : 'sheets'} and ${instructions} of instructions`;
  print(`${onOneLine(`${order.out}: "${described.title}", ${pages}`)}\n`);
  tellNotes([...notes, ...(warning ? [warning] : [])], surroundings);
  return 0;
}

async function describedIn(fs: Fs, path: string): Promise<BookletDescription> {
  const { text } = await asUsage(path, () => openFile(fs, path));
  return asUsage(path, async () => readBookletDescription(text));
}

function partPaths({ sides }: BookletDescription, folder: string): string[] {
  return sides.flatMap(({ pdf }) => (pdf === null ? [] : [resolve(folder, pdf)]));
}

async function refuseOverwriting(fs: Fs, out: string, read: readonly string[]): Promise<void> {
  for (const path of read) {
    if (await isSameFile(fs, out, path))
      throw new UsageError('--out is a file that is being read; give another name');
  }
}

/** What is wrong with the booklet is told with the name of its description. */
async function asUsage<T>(path: string, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    const { code, message } = faultOf(error, path);
    throw new UsageError(code.startsWith('booklet.') ? `${basename(path)}: ${message}` : message);
  }
}
