/** `standlines pack` */

import { join, resolve } from 'node:path';
import { concertOf, type Document } from '#model/document/document.ts';
import { usualPaper, type PaperName } from '#model/drawing/papers.ts';
import { FaultError, faultOf } from '../services/faults.ts';
import { errorCode, type Fs } from '../services/fs.ts';
import { PDF_NAME, writePack, type FileTaker, type WrittenPack } from '../services/pack-files.ts';
import { readSettings } from '../services/settings.ts';
import { readInput } from './input.ts';
import { makeFolder } from './made-folder.ts';
import { savePrint } from './printed-file.ts';
import { tellNotes, type Surroundings } from './surroundings.ts';
import { onOneLine } from './terminal.ts';
import { UsageError, type PackOrder } from './usage.ts';

/** Each file is written whole or not at all. Throws `UsageError`. */
export async function pack(order: PackOrder, surroundings: Surroundings): Promise<number> {
  const { fs, print, state, now } = surroundings;
  const { document, notes: ofReading } = await readInput(fs, order.file);
  const paper = order.paper ?? (await paperFor(document, fs, state));
  const folder = resolve(order.outDir);
  const taker = takerInto(fs, folder, order.replace);
  try {
    await makeFolder(fs, folder);
    const written = await writePack({ ...order, document, paper, now: now() }, taker);
    tellNotes(ofReading, surroundings);
    const lines = [...told(order, written, paper), ...written.notes, ...taker.warnings];
    for (const line of lines) print(`${onOneLine(line)}\n`);
    return 0;
  } catch (error) {
    throw new UsageError(faultOf(error, taker.at()).message);
  }
}

/** What is where; of many files, how many. */
function told({ outDir, formats }: PackOrder, { names, sheets }: WrittenPack, paper: PaperName): string[] {
  const counted = `${sheets} ${sheets === 1 ? 'sheet' : 'sheets'} on ${paper}`;
  return formats.map((format) => {
    if (format === 'pdf') return `${join(outDir, PDF_NAME)}: ${counted}`;
    const files = names.filter((name) => name.endsWith(`.${format}`)).length;
    const tail =
      format === 'svg' || format === 'png' ? `: ${counted}` : `: ${files} ${files === 1 ? 'file' : 'files'}`;
    return `${join(outDir, `*.${format}`)}${tail}`;
  });
}

interface FolderTaker extends FileTaker {
  readonly warnings: ReadonlySet<string>;
  /** The file that is being written. */
  readonly at: () => string;
}

/** The pack's PDF is the program's own and replaces the one before; any other file only when that was said. */
function takerInto(fs: Fs, folder: string, replace: boolean): FolderTaker {
  const warnings = new Set<string>();
  let at = folder;
  return {
    warnings,
    at: () => at,
    async willTake(names) {
      if (replace) return;
      for (const name of names)
        if (name !== PDF_NAME && (await isThere(fs, join(folder, name))))
          throw new FaultError(
            'file.exists',
            `There is already a "${name}" in ${folder}. Say --replace to replace it and the others, or take another folder.`,
          );
    },
    async take(name, bytes) {
      at = join(folder, name);
      const isOwn = replace || name === PDF_NAME;
      const { warning } = await savePrint(fs, at, bytes, isOwn ? 'any' : null);
      if (warning) warnings.add(warning);
    },
  };
}

async function isThere(fs: Fs, path: string): Promise<boolean> {
  try {
    await fs.realpath(path);
    return true;
  } catch (error) {
    if (errorCode(error) === 'ENOENT') return false;
    throw error;
  }
}

/** As the window's print dialogs choose it. */
async function paperFor(document: Document, fs: Fs, state: string): Promise<PaperName> {
  return usualPaper((await readSettings(fs, state)).paper, concertOf(document).units);
}
