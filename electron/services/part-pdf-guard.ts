/**
 * A look over the bytes of a foreign PDF before the library parses it. The library recovers from almost anything, at a
 * price: it tries every byte of rubbish as the start of an object, and unpacks every packed object however large. What
 * would take it longer than a second or two, or more than the memory at hand, is refused here, in one pass of native searches.
 */

import { constants, inflateSync } from 'node:zlib';
import { FaultError } from './faults.ts';

/** Of one part. A hundred scanned pages at 300 dpi. */
export const LARGEST_PDF = 32 * 1024 * 1024;
const MOST_OBJECTS = 100_000;
/** Bytes between objects that are neither an object nor a table of them. */
const MOST_RUBBISH = 8 * 1024;
/** Objects that are never closed. Each makes the library search to the end of the file. */
const MOST_UNCLOSED = 20;
/** Of all packed objects, when unpacked. A part of five hundred pages has less than one megabyte. */
const MOST_UNPACKED = 24 * 1024 * 1024;
/** Of one object outside its stream. Fonts and pictures are streams. */
const LARGEST_OBJECT = 2 * 1024 * 1024;

const HEADER_WITHIN = 1024;
const OBJECT = /\s*(\d{1,10})\s+(\d{1,5})\s+obj\b/y;
const TABLE = /\s*(?:xref|trailer|startxref|%)/y;
const NEXT = /\d{1,10}\s+\d{1,5}\s+obj\b|\bxref|trailer|startxref/g;

/** Throws `FaultError`. `name` is the file's, for the sentence. */
export function guardPdf(bytes: Uint8Array, name: string): void {
  if (bytes.length > LARGEST_PDF)
    throw new FaultError(
      'pdf.tooLarge',
      `"${name}" has ${Math.ceil(bytes.length / MEGABYTE)} MB; a part may have ${LARGEST_PDF / MEGABYTE} MB: scan it coarser, or split it.`,
    );
  const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const header = buffer.subarray(0, HEADER_WITHIN).indexOf('%PDF-');
  if (header < 0) throw new FaultError('pdf.notAPdf', `"${name}" is not a PDF.`);
  new Look(buffer, name).over(header);
}

const MEGABYTE = 1024 * 1024;

export function damaged(name: string): FaultError {
  return new FaultError(
    'pdf.damaged',
    `"${name}" is damaged or not complete: make it anew, for instance by printing it to a PDF again.`,
  );
}

export function tooMuchInside(name: string): FaultError {
  return new FaultError(
    'pdf.tooLarge',
    `"${name}" holds more than a part can: print it to a PDF again, or split it.`,
  );
}

class Look {
  #rubbish = 0;
  #unclosed = 0;
  #unpacked = 0;
  /** One character a byte. */
  readonly #text: string;

  constructor(
    private readonly bytes: Buffer,
    private readonly name: string,
  ) {
    this.#text = bytes.toString('latin1');
  }

  over(start: number): void {
    let at = this.#lineAfter(start);
    for (let objects = 0; at < this.bytes.length;) {
      const header = this.#match(OBJECT, at);
      if (header === null) at = this.#between(at);
      else {
        if (++objects > MOST_OBJECTS) throw tooMuchInside(this.name);
        at = this.#object(header);
      }
    }
  }

  /** Past tables, comments and rubbish. */
  #between(at: number): number {
    const table = this.#match(TABLE, at);
    NEXT.lastIndex = table ?? at;
    const next = NEXT.exec(this.#text);
    const end = next?.index ?? this.bytes.length;
    if (table === null)
      this.#rubbish += this.#text.slice(at, Math.min(end, at + 2 * MOST_RUBBISH)).trim().length;
    if (this.#rubbish > MOST_RUBBISH) throw damaged(this.name);
    // A word that begins a table has to be passed, or it would be found again.
    return end === at ? end + 1 : end;
  }

  /** From behind its "obj" to behind its "endobj". */
  #object(at: number): number {
    const end = this.#text.indexOf('endobj', at);
    const stream = this.#text.indexOf('stream', at);
    const hasStream = stream >= 0 && (end < 0 || stream < end);
    const head = hasStream ? stream : end < 0 ? this.bytes.length : end;
    if (head - at > LARGEST_OBJECT) throw tooMuchInside(this.name);
    if (hasStream) return this.#stream(at, stream);
    return end < 0 ? this.#leftOpen(at) : end + 'endobj'.length;
  }

  #leftOpen(at: number): number {
    if (++this.#unclosed > MOST_UNCLOSED) throw damaged(this.name);
    return at;
  }

  #stream(head: number, keyword: number): number {
    const dictionary = this.#text.slice(head, keyword);
    const start = keyword + 'stream'.length + (this.#text.startsWith('\r\n', keyword + 6) ? 2 : 1);
    const end = this.#endOfStream(dictionary, start);
    if (end < 0) return this.#leftOpen(start);
    if (/\/Type\s*\/(?:ObjStm|XRef)\b/.test(dictionary))
      this.#unpack(dictionary, this.bytes.subarray(start, end));
    const close = this.#text.indexOf('endobj', end);
    return close < 0 ? this.#leftOpen(end + 'endstream'.length) : close + 'endobj'.length;
  }

  #endOfStream(dictionary: string, start: number): number {
    const length = Number(/\/Length\s+(\d{1,10})(?!\s+\d+\s+R)/.exec(dictionary)?.[1] ?? NaN);
    const said = this.#text.slice(start + length, start + length + 20).search(/^\s*endstream/);
    return said === 0 ? start + length : this.#text.indexOf('endstream', start);
  }

  #unpack(dictionary: string, packed: Buffer): void {
    const left = MOST_UNPACKED - this.#unpacked;
    this.#unpacked += /\/FlateDecode/.test(dictionary) ? inflatedSize(packed, left) : packed.length;
    if (this.#unpacked > MOST_UNPACKED) throw tooMuchInside(this.name);
  }

  #match(pattern: RegExp, at: number): number | null {
    pattern.lastIndex = at;
    return pattern.test(this.#text) ? pattern.lastIndex : null;
  }

  #lineAfter(at: number): number {
    const end = this.#text.slice(at, at + HEADER_WITHIN).search(/[\r\n]/);
    return end < 0 ? this.bytes.length : at + end;
  }
}

/** More than `most` when it is more; 0 when it cannot be unpacked, as when it is encrypted: the library gives up there, too. */
function inflatedSize(packed: Buffer, most: number): number {
  try {
    return inflated(packed, most).length;
  } catch (error) {
    return error instanceof RangeError ? Infinity : 0;
  }
}

/** Throws `RangeError` beyond `most` bytes, and the system's error when it is not packed so. A missing end is forgiven. */
export function inflated(packed: Uint8Array, most: number): Uint8Array {
  return inflateSync(packed, { maxOutputLength: Math.max(1, most), finishFlush: constants.Z_SYNC_FLUSH });
}
