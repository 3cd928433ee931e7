/**
 * The directory of a compressed score, and single entries of it. Own code because the library reads no check sums, takes
 * lying sizes for true and keeps the last of two entries with one name; it does the inflating.
 * Source of the layout: PKWARE APPNOTE 6.3.10, sections 4.3.7, 4.3.12 and 4.3.16.
 */

import { crc32 } from 'node:zlib';
import { Inflate } from 'fflate';
import { t } from '#model/words/say.ts';
import { FaultError } from './faults.ts';

const MOST_INFLATED = 64 * 1024 * 1024;
const MOST_ENTRIES = 200;
/** Music compresses to a thirtieth at most. Small files may do better. */
const MOST_RATIO = 200;
const SMALL = 1024 * 1024;
/** Small enough that a bomb cannot overshoot the limits by much. */
const PIECE = 1024;

export interface ZipEntry {
  readonly name: string;
  readonly size: number;
  readonly packed: number;
  readonly crc: number;
  readonly method: number;
  /** Of its own header. */
  readonly offset: number;
}

export function isZip(bytes: Uint8Array): boolean {
  return bytes[0] === 0x50 && bytes[1] === 0x4b && ((bytes[2] === 3 && bytes[3] === 4) || bytes[2] === 5);
}

/** All entries by name. Throws `FaultError` for anything but a plain, whole archive of harmless names. */
export function zipEntries(bytes: Uint8Array, file: string): ReadonlyMap<string, ZipEntry> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = endOfDirectory(view);
  if (end === null) throw damaged(file, t`it is cut short`);
  const count = view.getUint16(end + 10, true);
  if (count > MOST_ENTRIES)
    throw unfit(file, t`it holds ${count} files, and a score has at most ${MOST_ENTRIES}`);
  const entries = new Map<string, ZipEntry>();
  let at = view.getUint32(end + 16, true);
  for (let index = 0; index < count; index += 1) {
    const { entry, next } = entryAt(view, bytes, at, file);
    if (entries.has(entry.name)) throw unfit(file, t`it holds "${shown(entry.name)}" twice`);
    entries.set(entry.name, entry);
    at = next;
  }
  checkSizes([...entries.values()], file);
  return entries;
}

/** `take` gets the content piece by piece; nothing of it counts before this has returned. Throws `FaultError`. */
export function inflate(
  bytes: Uint8Array,
  entry: ZipEntry,
  file: string,
  take: (piece: Uint8Array) => void,
): void {
  const packed = contentOf(bytes, entry, file);
  let size = 0;
  let crc = 0;
  const count = (piece: Uint8Array) => {
    size += piece.length;
    checkInflated(size, entry, file);
    crc = crc32(piece, crc);
    take(piece);
  };
  if (entry.method === 0) count(packed);
  else runInflate(packed, count, file);
  if (size !== entry.size) throw damaged(file, t`"${shown(entry.name)}" is not as long as it says`);
  if (crc !== entry.crc) throw damaged(file, t`the check sum of "${shown(entry.name)}" is wrong`);
}

function runInflate(packed: Uint8Array, take: (piece: Uint8Array) => void, file: string): void {
  let finished = false;
  const stream = new Inflate((piece, final) => {
    take(piece);
    finished = final;
  });
  try {
    for (let from = 0; from < packed.length; from += PIECE)
      stream.push(packed.subarray(from, from + PIECE), from + PIECE >= packed.length);
  } catch (error) {
    // The library throws plain errors with a number as their code.
    if (error instanceof Error && typeof (error as { code?: unknown }).code === 'number')
      throw damaged(file, t`its content cannot be unpacked`);
    throw error;
  }
  if (!finished) throw damaged(file, t`its content is cut short`);
}

/** The record at the very end, behind which only a comment may stand. */
function endOfDirectory(view: DataView): number | null {
  const lowest = Math.max(0, view.byteLength - 22 - 0xffff);
  for (let at = view.byteLength - 22; at >= lowest; at -= 1) {
    const isRecord = view.getUint32(at, true) === 0x06054b50;
    if (isRecord && at + 22 + view.getUint16(at + 20, true) <= view.byteLength) return at;
  }
  return null;
}

function entryAt(view: DataView, bytes: Uint8Array, at: number, file: string) {
  if (at + 46 > view.byteLength || view.getUint32(at, true) !== 0x02014b50)
    throw damaged(file, t`its directory is broken`);
  const lengths = [28, 30, 32].map((field) => view.getUint16(at + field, true));
  const [nameLength = 0] = lengths;
  const name = nameOf(bytes.subarray(at + 46, at + 46 + nameLength), file);
  const flags = view.getUint16(at + 8, true);
  if ((flags & 1) !== 0) throw unfit(file, t`it is protected by a password; take that off first`);
  const method = view.getUint16(at + 10, true);
  if (method !== 0 && method !== 8) throw unfit(file, t`"${shown(name)}" is packed in an unusual way`);
  const entry: ZipEntry = {
    name,
    method,
    crc: view.getUint32(at + 16, true),
    packed: view.getUint32(at + 20, true),
    size: view.getUint32(at + 24, true),
    offset: view.getUint32(at + 42, true),
  };
  return { entry, next: at + 46 + lengths.reduce((sum, length) => sum + length, 0) };
}

/** Nothing is ever written under these names; what tries to lead out of the archive is hostile all the same. */
function nameOf(bytes: Uint8Array, file: string): string {
  const name = new TextDecoder('utf-8').decode(bytes);
  const leadsOut = /^[/\\]|^[A-Za-z]:|\\|\0/.test(name) || name.split('/').some((step) => step === '..');
  if (leadsOut) throw unfit(file, t`"${shown(name)}" in it leads out of the file`);
  return name;
}

function checkSizes(entries: readonly ZipEntry[], file: string): void {
  const total = entries.reduce((sum, { size }) => sum + size, 0);
  if (total > MOST_INFLATED) throw unfit(file, tooMuch());
  const bomb = entries.find(({ size, packed }) => size > SMALL && size > MOST_RATIO * packed);
  if (bomb) throw unfit(file, t`"${shown(bomb.name)}" swells to more than ${MOST_RATIO} times its size`);
}

function checkInflated(size: number, { name, packed }: ZipEntry, file: string): void {
  if (size > MOST_INFLATED) throw unfit(file, tooMuch());
  if (size > SMALL && size > MOST_RATIO * packed)
    throw unfit(file, t`"${shown(name)}" swells to more than ${MOST_RATIO} times its size`);
}

function contentOf(bytes: Uint8Array, entry: ZipEntry, file: string): Uint8Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const { offset, packed } = entry;
  if (offset + 30 > bytes.length || view.getUint32(offset, true) !== 0x04034b50)
    throw damaged(file, t`its directory is broken`);
  const begin = offset + 30 + view.getUint16(offset + 26, true) + view.getUint16(offset + 28, true);
  if (begin + packed > bytes.length) throw damaged(file, t`it is cut short`);
  return bytes.subarray(begin, begin + packed);
}

function tooMuch(): string {
  return t`unpacked it has more than ${MOST_INFLATED / 1024 / 1024} MB`;
}

function damaged(file: string, reason: string): FaultError {
  return new FaultError(
    'score.damaged',
    t`"${file}" is not a whole compressed score: ${reason}. Fetch or export it again.`,
  );
}

function unfit(file: string, reason: string): FaultError {
  return new FaultError('score.refused', t`"${file}" is refused: ${reason}.`);
}

function shown(name: string): string {
  return name.length > 60 ? `${name.slice(0, 57)}...` : name;
}
