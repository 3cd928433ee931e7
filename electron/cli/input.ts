/** The document and the setup that a command line names. */

import { existsSync } from 'node:fs';
import { basename, resolve } from 'node:path';
import { setupsOf, type Document } from '#model/document/document.ts';
import type { Setup } from '#model/document/records.ts';
import { readDocument } from '#model/file-format/read.ts';
import { messageWithPath } from '#model/file-format/problem.ts';
import { faultOf } from '../services/faults.ts';
import type { Fs } from '../services/fs.ts';
import { openFile } from '../services/open-file.ts';
import { demoPath } from '../services/program.ts';
import { UsageError } from './usage.ts';

export interface Input {
  readonly file: string;
  /** Where it really is. */
  readonly path: string;
  readonly document: Document;
  /** What the reader of the file should know; the file was read all the same. */
  readonly notes: readonly string[];
}

/** Throws `UsageError` for anything that cannot be read as a document. */
export async function readInput(fs: Fs, file: string): Promise<Input> {
  const path = file === 'demo' && !existsSync(file) ? demoPath() : resolve(file);
  const { text, path: real } = await openFile(fs, path).catch((error: unknown) => {
    throw new UsageError(faultOf(error, path).message);
  });
  const read = readDocument(text);
  if (!read.ok) throw new UsageError(`${basename(path)}: ${messageWithPath(read.problem)}`);
  return { file, path: real, document: read.document, notes: read.notes };
}

/** By id, name or place in the programme; the first setup for null. Throws `UsageError` naming those there are. */
export function chooseSetup(document: Document, wanted: string | null): Setup {
  const setups = setupsOf(document);
  const rules: ((setup: Setup) => boolean)[] = [
    (setup) => wanted === null || setup.id === wanted,
    (setup) => setup.name === wanted,
    (setup) => setup.name.toLowerCase() === wanted?.toLowerCase(),
    (setup) => String(setup.order) === wanted,
  ];
  for (const rule of rules) {
    const found = setups.find(rule);
    if (found) return found;
  }
  const names = setups.map((setup) => `"${setup.name || setup.id}"`).join(', ');
  throw new UsageError(`there is no setup "${wanted?.slice(0, 60)}"; there are ${names}`);
}
