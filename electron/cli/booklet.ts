/** `standlines booklet` */

import { basename, dirname, resolve } from 'node:path';
import { readBookletDescription, type BookletDescription } from '../services/booklet-description.ts';
import { jobFrom } from '../services/booklet-job.ts';
import { renderBooklet } from '../services/booklet.ts';
import { faultOf } from '../services/faults.ts';
import type { Fs } from '../services/fs.ts';
import { openFile } from '../services/open-file.ts';
import { isSameFile, savePrint } from './printed-file.ts';
import { plannedBooklet, type AskedBooklet } from './planned-booklet.ts';
import { tellNotes, type Surroundings } from './surroundings.ts';
import { onOneLine } from './terminal.ts';
import { UsageError, type BookletOrder } from './usage.ts';

/** Writes the whole PDF or nothing. Throws `UsageError`. */
export async function booklet(order: BookletOrder, surroundings: Surroundings): Promise<number> {
  const { fs, now, print } = surroundings;
  const { path, pdfs, remarks, job } = await askedBy(order, fs);
  const out = resolve(order.out);
  await refuseOverwriting(fs, out, [path, ...pdfs]);
  const { title, booklet: made } = await asUsage(path, async () => {
    const known = await job(now());
    return { title: known.title, booklet: await renderBooklet(known) };
  });
  const { bytes, printed, sheets, notes } = made;
  const { warning } = await asUsage(out, () => savePrint(fs, out, bytes));
  const instructions = sheets - printed;
  const pages = `${printed} ${printed === 1 ? 'sheet' : 'sheets'} and ${instructions} of instructions`;
  print(`${onOneLine(`${order.out}: "${title}", ${pages}`)}\n`);
  tellNotes([...remarks, ...notes, ...(warning ? [warning] : [])], surroundings);
  return 0;
}

async function askedBy(order: BookletOrder, fs: Fs): Promise<AskedBooklet> {
  const path = resolve(order.file);
  if (order.file === 'demo' || (await isConcert(fs, path))) return plannedBooklet(order, fs);
  refuseOptions(order);
  const described = await describedIn(fs, path);
  const folder = dirname(path);
  return {
    path,
    pdfs: partPaths(described, folder),
    remarks: [],
    job: (now) => jobFrom(described, { fs, folder, now }),
  };
}

/** Anything that does not say so is read as a description, which has the better words for what is wrong. */
async function isConcert(fs: Fs, path: string): Promise<boolean> {
  const { text } = await asUsage(path, () => openFile(fs, path));
  return /"format"\s*:\s*"standlines"/.test(text.slice(0, 1000));
}

function refuseOptions({ file, setup, stand, paper, score, plays, pages, pdfs }: BookletOrder): void {
  const isBare = [setup, stand, paper, score].every((said) => said === null);
  if (isBare && plays.length + pages.length + pdfs.length === 0) return;
  throw new UsageError(
    `"${basename(file)}" is no concert; a description says all of the booklet: leave the options out`,
  );
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
    if (error instanceof UsageError) throw error;
    const { code, message } = faultOf(error, path);
    throw new UsageError(code.startsWith('booklet.') ? `${basename(path)}: ${message}` : message);
  }
}
