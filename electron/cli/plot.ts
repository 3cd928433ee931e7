/** `standlines plot` */

import { resolve } from 'node:path';
import { concertOf, type Document } from '#model/document/document.ts';
import { usualPaper, type PaperName } from '#model/drawing/papers.ts';
import { faultOf } from '../services/faults.ts';
import type { Fs } from '../services/fs.ts';
import { plotDocument } from '../services/plot.ts';
import { readSettings } from '../services/settings.ts';
import { tellNotes, type Surroundings } from './surroundings.ts';
import { chooseSetup, readInput } from './input.ts';
import { isSameFile, savePrint } from './printed-file.ts';
import { onOneLine } from './terminal.ts';
import { UsageError, type PlotOrder } from './usage.ts';

/** Writes the whole PDF or nothing. Throws `UsageError`. */
export async function plot(order: PlotOrder, surroundings: Surroundings): Promise<number> {
  const { fs, print, now, state } = surroundings;
  const { document, path, notes: ofReading } = await readInput(fs, order.file);
  const setup = chooseSetup(document, order.setup);
  const out = resolve(order.out);
  if (await isSameFile(fs, out, path))
    throw new UsageError('--out is the file that is being read; give another name');
  const paper = order.options.paper ?? (await paperFor(document, fs, state));
  try {
    const { bytes, pages, choice, notes } = await plotDocument(document, setup.id, {
      options: { ...order.options, paper },
      now: now(),
    });
    const { warning } = await savePrint(fs, out, bytes);
    tellNotes(ofReading, surroundings);
    const sheets = `${pages} ${pages === 1 ? 'sheet' : 'sheets'}`;
    const at = choice.scale === null ? '' : ` at 1:${choice.scale}`;
    const done = `${order.out}: "${setup.name || setup.id}"${at} on ${choice.paper} ${choice.orientation}, ${sheets}`;
    for (const line of [done, ...notes, ...(warning ? [warning] : [])]) print(`${onOneLine(line)}\n`);
    return 0;
  } catch (error) {
    throw new UsageError(faultOf(error, out).message);
  }
}

/** As the window's print dialog chooses it. */
async function paperFor(document: Document, fs: Fs, state: string): Promise<PaperName> {
  return usualPaper((await readSettings(fs, state)).paper, concertOf(document).units);
}
