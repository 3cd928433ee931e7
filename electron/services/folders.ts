/** Browsing folders for a shell that has no file dialog of the system. */

import { homedir } from 'node:os';
import { basename, dirname, extname, join, parse } from 'node:path';
import type { FolderEntry, FolderListing, SavedType } from '#contract/contract.ts';
import { t } from '#model/words/say.ts';
import { FaultError } from './faults.ts';
import type { Fs } from './fs.ts';
import type { Handles } from './handles.ts';

const SHOWN_ENDINGS: readonly string[] = [
  ...['.standlines', '.pdf'],
  ...['.musicxml', '.xml', '.mxl'],
  ...['.csv', '.tsv'],
  ...['.png', '.jpg', '.jpeg', '.dxf'],
  '.zip',
];
const MOST_ENTRIES = 2_000;

/** Folders, documents, prints, scores, tables, pictures and drawings of a folder, each with a handle; hidden ones left out. */
export async function listFolder(fs: Fs, handles: Handles, path: string): Promise<FolderListing> {
  const folder = await fs.realpath(path);
  const names = (await fs.readdir(folder)).filter((name) => !name.startsWith('.')).sort(inNaturalOrder);
  const entries: FolderEntry[] = [];
  for (const name of names) {
    if (entries.length === MOST_ENTRIES) break;
    const entry = await describe(fs, handles, join(folder, name));
    if (entry) entries.push(entry);
  }
  const parent = folder === parse(folder).root ? null : handles.handleOf(dirname(folder));
  entries.sort((a, b) => Number(b.type === 'folder') - Number(a.type === 'folder'));
  return { handle: handles.handleOf(folder), location: folder, parent, entries };
}

async function describe(fs: Fs, handles: Handles, path: string): Promise<FolderEntry | null> {
  const stats = await fs.stat(path).catch(() => null);
  if (!stats) return null;
  const shown =
    stats.isDirectory() || (stats.isFile() && SHOWN_ENDINGS.includes(extname(path).toLowerCase()));
  if (!shown) return null;
  const type = stats.isDirectory() ? 'folder' : 'file';
  return {
    name: basename(path),
    handle: handles.handleOf(path),
    type,
    size: stats.isFile() ? stats.size : 0,
  };
}

const collator = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

function inNaturalOrder(a: string, b: string): number {
  return collator.compare(a, b);
}

/** The user's documents folder when there is one, else the home folder. */
export async function startFolder(fs: Fs, home: string = homedir()): Promise<string> {
  const documents = join(home, 'Documents');
  const stats = await fs.stat(documents).catch(() => null);
  return stats?.isDirectory() ? documents : home;
}

const WINDOWS_DEVICES = /^(con|prn|aux|nul|com[0-9]|lpt[0-9])(\.|$)/i;
/** What Windows, and a shared drive, cannot have in a name; control characters, for the reader's sake, too. */
const FORBIDDEN = /[/\\:*?"<>|\u0000-\u001f\u007f]/;

/** Refuses names that are not one plain file name on every system. Throws `FaultError`. */
export function checkFileName(name: string): void {
  const wrong = whatIsWrong(name);
  if (wrong) throw new FaultError('file.badName', t`"${name.slice(0, 60)}" cannot be a file name: ${wrong}.`);
}

function whatIsWrong(name: string): string | null {
  if (name.trim() === '' || name === '.' || name === '..') return t`it is empty`;
  if (FORBIDDEN.test(name)) return t`it holds a character that file names cannot have`;
  if (/\p{Surrogate}/u.test(name)) return t`it holds half a character`;
  if (WINDOWS_DEVICES.test(name)) return t`the system keeps that name for a device`;
  if (/[. ]$/.test(name)) return t`it ends with a dot or a space`;
  if (Buffer.byteLength(name) > 255) return t`it is too long`;
  return null;
}

/** Documents are saved as documents and prints as prints, so that no other file of the user is ever replaced. */
export function checkEnding(path: string, type: SavedType): void {
  if (extname(path).toLowerCase() === `.${type}`) return;
  throw new FaultError('file.wrongEnding', t`Give the file a name that ends in ".${type}".`);
}

export function withEnding(path: string, type: SavedType): string {
  return extname(path).toLowerCase() === `.${type}` ? path : `${path}.${type}`;
}
