/** Reading a document from disk, with what has to be remembered for saving it again. */

import { constants } from 'node:fs';
import { basename } from 'node:path';
import { t } from '#model/words/say.ts';
import { FaultError } from './faults.ts';
import type { Fs } from './fs.ts';
import { hashOf, isReadOnly } from './save-file.ts';

/** Far above any concert; keeps a mistaken choice from filling the memory. */
export const LARGEST_FILE = 64 * 1024 * 1024;

export interface OpenedFile {
  /** Where it really is, links followed. */
  readonly path: string;
  readonly text: string;
  readonly hash: string;
  readonly device: number;
  readonly readOnly: boolean;
}

/** The whole text of a file, a byte order mark included. Throws `FaultError` or the system's error. */
export async function openFile(fs: Fs, path: string): Promise<OpenedFile> {
  const real = await fs.realpath(path);
  const { dev, mode } = await checkedStats(fs, real);
  const bytes = await readWhole(fs, real);
  return {
    path: real,
    text: decode(bytes, real),
    hash: hashOf(bytes),
    device: dev,
    readOnly: await isReadOnly(fs, real, mode & 0o7777),
  };
}

/** The bytes of any ordinary file of up to `LARGEST_FILE`. Throws `FaultError` or the system's error. */
export async function openBytes(fs: Fs, path: string, kind: FileKind): Promise<Uint8Array> {
  const real = await fs.realpath(path);
  await checkedStats(fs, real, kind);
  return readWhole(fs, real);
}

/** Looks before it opens: opening a named pipe would wait for ever. */
async function checkedStats(fs: Fs, path: string, kind?: FileKind): Promise<{ dev: number; mode: number }> {
  const stats = await fs.stat(path);
  const name = basename(path);
  if (stats.isDirectory()) throw new FaultError('file.isFolder', t`"${name}" is a folder, not a file.`);
  if (!stats.isFile()) throw new FaultError('file.notRegular', t`"${name}" is not an ordinary file.`);
  if (stats.size > LARGEST_FILE) throw tooLarge(name, stats.size, kind);
  return stats;
}

async function readWhole(fs: Fs, path: string): Promise<Uint8Array> {
  const file = await fs.open(path, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
  try {
    return await file.readFile();
  } finally {
    await file.close();
  }
}

function decode(bytes: Uint8Array, path: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new FaultError(
      'file.notText',
      t`"${basename(path)}" is not a Standlines file: it is not text in UTF-8.`,
    );
  }
}

/** What a file was opened as. */
export type FileKind = 'document' | 'table' | 'part' | 'score' | 'underlay';

const TOO_LARGE: Readonly<Record<FileKind, (name: string, size: number, most: number) => string>> = {
  document: (name, size, most) => t`"${name}" has ${size} MB; a Standlines file has at most ${most} MB.`,
  table: (name, size, most) => t`"${name}" has ${size} MB; a table has at most ${most} MB.`,
  part: (name, size, most) => t`"${name}" has ${size} MB; a part has at most ${most} MB.`,
  score: (name, size, most) => t`"${name}" has ${size} MB; a score has at most ${most} MB.`,
  underlay: (name, size, most) => t`"${name}" has ${size} MB; a file for an underlay has at most ${most} MB.`,
};

export function tooLarge(name: string, size: number, kind: FileKind = 'document'): FaultError {
  const megabytes = (count: number) => Math.ceil(count / 1024 / 1024);
  return new FaultError('file.tooLarge', TOO_LARGE[kind](name, megabytes(size), megabytes(LARGEST_FILE)));
}
