/** `standlines pack` */

import { mkdir } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { concertOf, type Document } from '#model/document/document.ts';
import { usualPaper, type PaperName } from '#model/drawing/papers.ts';
import { faultOf } from '../services/faults.ts';
import type { Fs } from '../services/fs.ts';
import { printPack, type PrintedPack } from '../services/pack.ts';
import { scratchFile } from '../services/scratch-file.ts';
import { readSettings } from '../services/settings.ts';
import { readInput } from './input.ts';
import { savePrint } from './printed-file.ts';
import { tellNotes, type Surroundings } from './surroundings.ts';
import { onOneLine } from './terminal.ts';
import { UsageError, type PackOrder } from './usage.ts';

const FILE = 'pack.pdf';

/** Writes the whole PDF or nothing. Throws `UsageError`. */
export async function pack(order: PackOrder, surroundings: Surroundings): Promise<number> {
  const { fs, print, state, now } = surroundings;
  const { document, notes: ofReading } = await readInput(fs, order.file);
  const paper = order.paper ?? (await paperFor(document, fs, state));
  const out = join(resolve(order.outDir), FILE);
  try {
    await mkdir(resolve(order.outDir), { recursive: true });
    const { sheets, notes, warning } = await packInto(out, fs, { ...order, document, paper, now: now() });
    tellNotes(ofReading, surroundings);
    const done = `${join(order.outDir, FILE)}: ${sheets} ${sheets === 1 ? 'sheet' : 'sheets'} on ${paper}`;
    for (const line of [done, ...notes, ...(warning ? [warning] : [])]) print(`${onOneLine(line)}\n`);
    return 0;
  } catch (error) {
    throw new UsageError(faultOf(error, out).message);
  }
}

async function packInto(
  out: string,
  fs: Fs,
  order: Parameters<typeof printPack>[0],
): Promise<PrintedPack & { readonly warning: string | null }> {
  const scratch = await scratchFile((sink) => printPack(order, sink));
  try {
    const { warning } = await savePrint(fs, out, await scratch.read());
    return { ...scratch.outcome, warning };
  } finally {
    await scratch.drop();
  }
}

/** As the window's print dialogs choose it. */
async function paperFor(document: Document, fs: Fs, state: string): Promise<PaperName> {
  return usualPaper((await readSettings(fs, state)).paper, concertOf(document).units);
}
