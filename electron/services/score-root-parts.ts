/** Which parts the scores of a compressed file hold: from the list at the beginning of each, without reading it whole. */

import { FaultError } from './faults.ts';
import { XmlDecoder } from './score-decoder.ts';
import { inflate, type ZipEntry } from './score-zip.ts';

/** A part list is a few kilobytes; behind this nobody looks for one, bytes. */
const MOST_HEAD = 256 * 1024;

/** Names as they are printed, in their order; empty where none is found, or the score cannot be read. */
export function partsOfRoot(bytes: Uint8Array, entry: ZipEntry | undefined, file: string): string[] {
  return entry ? namesIn(headOf(bytes, entry, file)) : [];
}

const ENOUGH = new Error('the rest is not needed');

function headOf(bytes: Uint8Array, entry: ZipEntry, file: string): string {
  const decoder = new XmlDecoder(file);
  let head = '';
  let size = 0;
  try {
    inflate(bytes, entry, file, (piece) => {
      head += decoder.decode(piece, false);
      size += piece.length;
      if (size >= MOST_HEAD || head.includes(LIST_END)) throw ENOUGH;
    });
  } catch (error) {
    // What is wrong with it is told when it is chosen.
    if (error !== ENOUGH && !(error instanceof FaultError)) throw error;
  }
  return head;
}

const LIST_END = '</part-list>';

function namesIn(head: string): string[] {
  const list = head.slice(0, head.indexOf(LIST_END)).replace(/<!--[^]*?-->/g, '');
  return [...list.matchAll(/<part-name(?:\s[^>]*)?>([^<]*)</g)]
    .map(([, name = '']) => plain(name).replace(/\s+/g, ' ').trim())
    .filter((name) => name !== '');
}

const NAMED: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

/** Without references to characters. */
function plain(text: string): string {
  return text.replace(/&(?:#(\d{1,7})|#x([\da-f]{1,6})|(\w{1,8}));/gi, (whole, decimal, hex, name) => {
    if (name) return NAMED[String(name)] ?? whole;
    const code = decimal ? Number(decimal) : Number.parseInt(String(hex), 16);
    return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : whole;
  });
}
