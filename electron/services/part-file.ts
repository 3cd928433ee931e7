/** The PDF of a part on disk: looked over before a concert names it, and found again by its name. */

import { basename, dirname, join } from 'node:path';
import type { PartFile } from '#contract/contract.ts';
import { LARGEST_PAGE, PDF_NAME, SMALLEST_PAGE } from '#model/file-format/limits.ts';
import { t } from '#model/words/say.ts';
import { FaultError } from './faults.ts';
import { errorCode, type Fs } from './fs.ts';
import { openBytes } from './open-file.ts';
import { openPartPdf, type OpenedPart, type PartPage, type SourcePage } from './part-pdf.ts';
import { hashOf } from './save-file.ts';

export interface OpenedPartFile {
  readonly bytes: Uint8Array;
  readonly part: OpenedPart;
}

/** Throws `FaultError` with one clear sentence for whatever cannot be printed and read from a stand. */
export async function openPartFile(fs: Fs, path: string): Promise<OpenedPartFile> {
  const name = basename(path);
  if (!PDF_NAME.test(name))
    throw new FaultError(
      'pdf.name',
      t`"${name.slice(0, 60)}" cannot be kept in a concert: give the file a plain name that ends in ".pdf", of at most 200 characters.`,
    );
  const bytes = await openBytes(fs, path, 'part');
  const part = await openPartPdf(bytes, name);
  refuseOddSizes(part);
  return { bytes, part };
}

/** Throws like `openPartFile`. */
export async function readPartFile(fs: Fs, path: string): Promise<PartFile> {
  const { bytes, part } = await openPartFile(fs, path);
  return {
    name: part.name,
    sha256: hashOf(bytes),
    sizes: part.pages.map(({ width, height }) => ({ width: rounded(width), height: rounded(height) })),
    notes: [...pageNotes(part), ...part.notes],
  };
}

/**
 * Where the PDF of that name lies beside the concert's file; null: nowhere. A name that leads elsewhere finds nothing.
 * Throws the system's error for a folder that cannot be read.
 */
export async function partBeside(fs: Fs, document: string, name: string): Promise<string | null> {
  if (!PDF_NAME.test(name) || basename(name) !== name) return null;
  const path = join(dirname(document), name);
  const stats = await orNull(fs.stat(path));
  return stats?.isFile() ? path : null;
}

/** Null when the file is gone. Throws like `openBytes`. */
export async function hashOfPart(fs: Fs, path: string): Promise<string | null> {
  const bytes = await orNull(openBytes(fs, path, 'part'));
  return bytes && hashOf(bytes);
}

async function orNull<T>(work: Promise<T>): Promise<T | null> {
  return work.catch((error: unknown) => {
    if (['ENOENT', 'ENOTDIR'].includes(errorCode(error) ?? '')) return null;
    throw error;
  });
}

function refuseOddSizes({ pages, name }: OpenedPart): void {
  const odd = pages.findIndex(
    ({ width, height }) => Math.min(width, height) < SMALLEST_PAGE || Math.max(width, height) > LARGEST_PAGE,
  );
  const page = pages[odd];
  if (page)
    throw new FaultError(
      'pdf.pageSize',
      t`Page ${odd + 1} of "${name}" is ${sizeWords(page)}: no page for a stand is that size (${SMALLEST_PAGE} to ${LARGEST_PAGE} mm a side).`,
    );
}

/** What a player might not expect of the pages, a sentence each. */
function pageNotes({ pages, name }: OpenedPart): string[] {
  const cropped = croppedNote(
    name,
    numbersOf(pages, (page) => page.cropped),
  );
  const turned = turnedNote(
    name,
    numbersOf(pages, ({ rotate }) => rotate !== 0),
  );
  return [cropped, turned, sizesNote(name, pages)].filter((note) => note !== null);
}

function croppedNote(name: string, [first, ...more]: readonly number[]): string | null {
  if (first === undefined) return null;
  return more.length === 0
    ? t`"${name}" is cropped on page ${first}: what lies outside is neither shown nor printed.`
    : t`"${name}" is cropped on ${more.length + 1} pages, the first of them page ${first}: what lies outside is neither shown nor printed.`;
}

function turnedNote(name: string, [first, ...more]: readonly number[]): string | null {
  if (first === undefined) return null;
  return more.length === 0
    ? t`"${name}" has page ${first} turned in the file: taken as they are looked at.`
    : t`"${name}" has ${more.length + 1} pages, the first of them page ${first} turned in the file: taken as they are looked at.`;
}

function sizesNote(name: string, pages: readonly PartPage[]): string | null {
  const [first] = pages;
  const other = pages.findIndex((page) => first !== undefined && !isAsLarge(page, first));
  const odd = pages[other];
  return first && odd
    ? t`"${name}" has pages of different sizes: page 1 is ${sizeWords(first)}, page ${other + 1} is ${sizeWords(odd)}.`
    : null;
}

/** Of the pages of which it is true, from 1. */
function numbersOf(pages: readonly SourcePage[], isSo: (page: SourcePage) => boolean): number[] {
  return pages.flatMap((page, index) => (isSo(page) ? [index + 1] : []));
}

/** PDFs round their pages to whole points, and scanners further. */
const SLACK = 2;

function isAsLarge(a: PartPage, b: PartPage): boolean {
  return Math.abs(a.width - b.width) <= SLACK && Math.abs(a.height - b.height) <= SLACK;
}

function sizeWords({ width, height }: PartPage): string {
  return `${Math.round(width)} x ${Math.round(height)} mm`;
}

function rounded(length: number): number {
  return Math.round(length * 1000) / 1000;
}
