/**
 * A look over the bytes of a foreign PDF before the library parses it. The library recovers from almost anything, at a
 * price: it tries every byte of rubbish as the start of an object, and unpacks every packed object however large. What
 * would take it longer than a second or two, or more than the memory at hand, is refused here, in one pass of native searches.
 */

import { constants, inflateSync } from 'node:zlib';
import { t } from '#model/words/say.ts';
import { FaultError } from './faults.ts';

/** Of one part. A hundred scanned pages at 300 dpi. */
export const LARGEST_PDF = 32 * 1024 * 1024;
/** Of one that is encrypted: the library reads it twice, and takes it apart byte by byte. */
const LARGEST_ENCRYPTED = 10 * 1024 * 1024;
const MOST_OBJECTS = 30_000;
/** Tables of objects, one for each time that the file was changed and saved again. */
const MOST_TABLES = 2000;
/** Bytes between objects that are neither an object nor a table of them. */
const MOST_RUBBISH = 8 * 1024;
/** Objects that are never closed. Each makes the library search to the end of the file. */
const MOST_UNCLOSED = 20;
/** Bytes that the library reads one by one: all outside of streams, and packed objects when unpacked. Music is in streams. */
const MOST_STRUCTURE = 6 * 1024 * 1024;

const HEADER_WITHIN = 1024;
const OBJECT = /\s*(\d{1,10})\s+(\d{1,5})\s+obj\b/y;
const TABLE = /\s*(?:xref|trailer|startxref|%)/y;
const NEXT = /\d{1,10}\s+\d{1,5}\s+obj\b|\bxref|trailer|startxref/g;

/** Throws `FaultError`. `name` is the file's, for the sentence. */
export function guardPdf(bytes: Uint8Array, name: string): void {
  if (bytes.length > LARGEST_PDF)
    throw new FaultError(
      'pdf.tooLarge',
      t`"${name}" has ${Math.ceil(bytes.length / MEGABYTE)} MB; a part may have ${LARGEST_PDF / MEGABYTE} MB: scan it coarser, or split it.`,
    );
  const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length > LARGEST_ENCRYPTED && buffer.includes('/Encrypt'))
    throw new FaultError(
      'pdf.tooLarge',
      t`"${name}" is encrypted and has ${Math.ceil(bytes.length / MEGABYTE)} MB; an encrypted part may have ${LARGEST_ENCRYPTED / MEGABYTE} MB: save it without encryption.`,
    );
  const header = buffer.subarray(0, HEADER_WITHIN).indexOf('%PDF-');
  if (header < 0) throw new FaultError('pdf.notAPdf', t`"${name}" is not a PDF.`);
  new Look(buffer, name).over(header);
}

const MEGABYTE = 1024 * 1024;

export function damaged(name: string): FaultError {
  return new FaultError(
    'pdf.damaged',
    t`"${name}" is damaged or not complete: make it anew, for instance by printing it to a PDF again.`,
  );
}

export function tooMuchInside(name: string): FaultError {
  return new FaultError(
    'pdf.tooLarge',
    t`"${name}" holds more than a part can: print it to a PDF again, or split it.`,
  );
}

class Look {
  #rubbish = 0;
  #unclosed = 0;
  #tables = 0;
  #unpacked = 0;
  #inStreams = 0;
  /** One character a byte. */
  readonly #text: string;
  /** Where a word was found last, so that no stretch is searched twice. */
  readonly #found = new Map<string, number>();

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
      if (at - this.#inStreams + this.#unpacked > MOST_STRUCTURE) throw tooMuchInside(this.name);
    }
  }

  /** Past tables, comments and rubbish. */
  #between(at: number): number {
    const table = this.#match(TABLE, at);
    if (table !== null && ++this.#tables > MOST_TABLES) throw damaged(this.name);
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
    const end = this.#next('endobj', at);
    const stream = this.#next('stream', at);
    if (stream < end) return this.#stream(at, stream);
    return end < this.bytes.length ? end + 'endobj'.length : this.#leftOpen(at);
  }

  #leftOpen(at: number): number {
    if (++this.#unclosed > MOST_UNCLOSED) throw damaged(this.name);
    return at;
  }

  #stream(head: number, keyword: number): number {
    const dictionary = this.#text.slice(head, keyword);
    const start = keyword + 'stream'.length + (this.#text.startsWith('\r\n', keyword + 6) ? 2 : 1);
    const end = this.#endOfStream(dictionary, start);
    if (end === this.bytes.length) return this.#leftOpen(start);
    this.#inStreams += end - start;
    if (/\/Type\s*\/(?:ObjStm|XRef)\b/.test(dictionary))
      this.#unpack(dictionary, this.bytes.subarray(start, end));
    const close = this.#next('endobj', end);
    return close < this.bytes.length ? close + 'endobj'.length : this.#leftOpen(end + 'endstream'.length);
  }

  #endOfStream(dictionary: string, start: number): number {
    const length = Number(/\/Length\s+(\d{1,10})(?!\s+\d+\s+R)/.exec(dictionary)?.[1] ?? NaN);
    const said = this.#text.slice(start + length, start + length + 20).search(/^\s*endstream/);
    return said === 0 ? start + length : this.#next('endstream', start);
  }

  /** Where the word comes next; the end of the file when it does not. Asked for with rising `at`. */
  #next(word: string, at: number): number {
    const last = this.#found.get(word) ?? -1;
    if (last >= at) return last;
    const found = this.#text.indexOf(word, at);
    const next = found < 0 ? this.bytes.length : found;
    this.#found.set(word, next);
    return next;
  }

  #unpack(dictionary: string, packed: Buffer): void {
    const left = MOST_STRUCTURE - this.#unpacked;
    this.#unpacked += /\/FlateDecode/.test(dictionary) ? inflatedSize(packed, left) : packed.length;
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
