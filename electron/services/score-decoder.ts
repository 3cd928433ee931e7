/** Bytes of XML as text, in pieces: the encoding is told by a byte order mark, by the first bytes or by the declaration. */

import { TextDecoder } from 'node:util';
import { t } from '#model/words/say.ts';
import { FaultError } from './faults.ts';

/** Encodings that the XML declaration of a score may name, each with the name by which they are decoded. */
const DECLARED: Readonly<Record<string, string>> = {
  'utf-8': 'utf-8',
  utf8: 'utf-8',
  'us-ascii': 'utf-8',
  ascii: 'utf-8',
  'iso-8859-1': 'windows-1252',
  latin1: 'windows-1252',
  'iso-8859-15': 'iso-8859-15',
  'windows-1252': 'windows-1252',
};

const MARKS: readonly (readonly [string, readonly number[]])[] = [
  ['utf-8', [0xef, 0xbb, 0xbf]],
  ['utf-16le', [0xff, 0xfe]],
  ['utf-16be', [0xfe, 0xff]],
  ['utf-16le', [0x3c, 0x00, 0x3f, 0x00]],
  ['utf-16be', [0x00, 0x3c, 0x00, 0x3f]],
  ['utf-16le', [0x3c, 0x00, 0x73, 0x00]],
  ['utf-16be', [0x00, 0x3c, 0x00, 0x73]],
];

/** A stream of bytes in, text out. Throws `FaultError` for bytes that are not what the file says they are. */
export class XmlDecoder {
  private decoder: TextDecoder | null = null;
  private label = '';
  private held = new Uint8Array(0);

  constructor(private readonly name: string) {}

  /** `last`: no bytes follow. */
  decode(bytes: Uint8Array, last: boolean): string {
    if (this.decoder) return this.run(bytes, last);
    this.held = joined(this.held, bytes);
    if (this.held.length < 200 && !last) return '';
    this.label = this.encodingOf(this.held);
    this.decoder = new TextDecoder(this.label, { fatal: true });
    return this.run(this.held, last);
  }

  private run(bytes: Uint8Array, last: boolean): string {
    try {
      return this.decoder?.decode(bytes, { stream: !last }) ?? '';
    } catch {
      throw new FaultError(
        'score.encoding',
        t`"${this.name}" is not text in ${this.label.toUpperCase()}, as it says or as XML has it; save it again from the music program.`,
      );
    }
  }

  private encodingOf(start: Uint8Array): string {
    const mark = MARKS.find(([, bytes]) => bytes.every((byte, index) => start[index] === byte));
    if (mark) return mark[0];
    const head = new TextDecoder('latin1').decode(start.subarray(0, 200));
    const declared = /^\s*<\?xml[^>]*?\sencoding\s*=\s*["']([A-Za-z0-9._-]{1,40})["']/.exec(head)?.[1];
    if (declared === undefined) return 'utf-8';
    const label = Object.hasOwn(DECLARED, declared.toLowerCase())
      ? DECLARED[declared.toLowerCase()]
      : undefined;
    if (label === undefined)
      throw new FaultError(
        'score.encoding',
        t`"${this.name}" is in the encoding ${declared}; save it as UTF-8 from the music program.`,
      );
    return label;
  }
}

function joined(a: Uint8Array, b: Uint8Array): Uint8Array<ArrayBuffer> {
  const both = new Uint8Array(a.length + b.length);
  both.set(a);
  both.set(b, a.length);
  return both;
}
