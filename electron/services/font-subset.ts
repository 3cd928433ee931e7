/**
 * The part of a typeface that a drawing uses, as a TrueType file that stands by itself: its glyphs, which character each is for,
 * and how far letters move together. Source: OpenType specification 1.9, the tables named below.
 */

import type { Face } from './fonts.ts';

/** Two code points that are set next to each other, and how much wider that is, in units of the font. */
export interface KernPair {
  readonly left: number;
  readonly right: number;
  readonly units: number;
}

interface SubsetOrder {
  readonly face: Face;
  /** What it is called from now on. */
  readonly family: string;
  readonly isBold: boolean;
  readonly codePoints: ReadonlySet<number>;
  readonly pairs: ReadonlyMap<string, KernPair>;
}

type Table = readonly [tag: string, bytes: Uint8Array];

/** The glyphs are fontkit's subset; what that leaves out because a PDF needs none of it is added. */
export function subsetFont(order: SubsetOrder): Uint8Array {
  const { face, codePoints } = order;
  const { font } = face;
  const subset = font.createSubset();
  // The types take the number of the glyph within the subset for a yes.
  const include = (codePoint: number): number =>
    Number(subset.includeGlyph(font.glyphForCodePoint(codePoint)));
  const glyphs = [...codePoints]
    .sort((a, b) => a - b)
    .map((codePoint) => [codePoint, include(codePoint)] as const);
  const own = tablesOf(face.file);
  return fontFile([
    ...tablesOf(subset.encode()),
    ...[...own].filter(([tag]) => tag === 'OS/2'),
    ['cmap', cmapTable(glyphs)],
    ['kern', kernTable(order, new Map(glyphs))],
    ['name', nameTable(order)],
    ['post', postTable()],
  ]);
}

/** The tables of a font file by their tags (`Table Directory`). */
function tablesOf(file: Uint8Array): Map<string, Uint8Array> {
  const bytes = Buffer.from(file.buffer, file.byteOffset, file.byteLength);
  const records = Array.from({ length: bytes.readUInt16BE(4) }, (_, index) => 12 + 16 * index);
  return new Map(
    records.map((at) => {
      const [offset, length] = [bytes.readUInt32BE(at + 8), bytes.readUInt32BE(at + 12)];
      return [bytes.toString('latin1', at, at + 4), bytes.subarray(offset, offset + length)];
    }),
  );
}

type Field = readonly [bytes: 1 | 2 | 4, value: number];

/** Numbers one behind the other; negative ones as their complement. */
function packed(fields: readonly Field[]): Buffer {
  const bytes = Buffer.alloc(fields.reduce((sum, [size]) => sum + size, 0));
  let at = 0;
  for (const [size, value] of fields) {
    bytes.writeUIntBE(value < 0 ? value + 256 ** size : value, at, size);
    at += size;
  }
  return bytes;
}

const short = (value: number): Field => [2, value];
const long = (value: number): Field => [4, value];

/** What a table says before a list that is searched by halving: three figures that follow from its length. */
function searchFields(count: number, size: number): Field[] {
  const steps = Math.floor(Math.log2(Math.max(1, count)));
  const range = size * 2 ** steps;
  return [short(range), short(steps), short(Math.max(0, count * size - range))];
}

type Mapped = readonly (readonly [codePoint: number, glyph: number])[];

/** `cmap` in the formats 4, for old readers, and 12, which holds every code point. */
function cmapTable(glyphs: Mapped): Buffer {
  const [old, whole] = [segmentsOf(glyphs.filter(([codePoint]) => codePoint < 0xffff)), groupsOf(glyphs)];
  const header = [short(0), short(2)];
  const first = [short(3), short(1), long(20)];
  const second = [short(3), short(10), long(20 + old.length)];
  return Buffer.concat([packed([...header, ...first, ...second]), old, whole]);
}

/** Format 4, a segment for each character, and one that ends the list. */
function segmentsOf(glyphs: Mapped): Buffer {
  const segments = [...glyphs, [0xffff, 0] as const];
  const count = segments.length;
  const characters = segments.map(([codePoint]) => short(codePoint));
  const deltas = segments.map(([codePoint, glyph]) => short((glyph - codePoint + 0x10000) % 0x10000));
  return packed([
    ...[short(4), short(16 + 8 * count), short(0)],
    ...[short(2 * count), ...searchFields(count, 2)],
    ...[...characters, short(0), ...characters],
    ...[...deltas, ...segments.map(() => short(0))],
  ]);
}

/** Format 12. */
function groupsOf(glyphs: Mapped): Buffer {
  return packed([
    ...[short(12), short(0), long(16 + 12 * glyphs.length), long(0), long(glyphs.length)],
    ...glyphs.flatMap(([codePoint, glyph]) => [long(codePoint), long(codePoint), long(glyph)]),
  ]);
}

/** `kern`, format 0: a shaper that finds no positions by context goes by it. */
function kernTable({ pairs }: SubsetOrder, glyphs: ReadonlyMap<number, number>): Buffer {
  const values = new Map<number, number>();
  for (const { left, right, units } of pairs.values())
    values.set((glyphs.get(left) ?? 0) * 0x10000 + (glyphs.get(right) ?? 0), units);
  const sorted = [...values].sort(([a], [b]) => a - b);
  const horizontal = 1;
  return packed([
    ...[short(0), short(1), short(0), short(14 + 6 * sorted.length), short(horizontal)],
    ...[short(sorted.length), ...searchFields(sorted.length, 6)],
    ...sorted.flatMap(([pair, units]) => [long(pair), short(units)]),
  ]);
}

/** `name`: whose it is and under which licence it may be passed on stays with it (ids 0 and 14). */
function nameTable({ face: { font }, family, isBold }: SubsetOrder): Buffer {
  const style = isBold ? 'Bold' : 'Regular';
  const names: (readonly [id: number, text: string])[] = [
    [0, font.copyright],
    [1, family],
    [2, style],
    [3, `${family} ${style}`],
    [4, `${family} ${style}`],
    [6, `${family.replaceAll(' ', '')}-${style}`],
    [14, font.getName('licenseURL', 'en') ?? ''],
  ];
  const texts = names.map(([, text]) => Buffer.from(text, 'utf16le').swap16());
  let at = 0;
  const records = names.flatMap(([id], index) => {
    const length = texts[index]?.length ?? 0;
    at += length;
    return [short(3), short(1), short(0x409), short(id), short(length), short(at - length)];
  });
  return Buffer.concat([
    packed([short(0), short(names.length), short(6 + 12 * names.length), ...records]),
    ...texts,
  ]);
}

/** `post` in the version that names no glyph. */
function postTable(): Buffer {
  return packed([long(0x00030000), ...Array.from({ length: 7 }, () => long(0))]);
}

/** What all 32-bit words of a font file add up to once `head` holds the difference (`head`, checksumAdjustment). */
const SUM_OF_ALL = 0xb1b0afba;
const ADJUSTMENT_AT = 8;

function fontFile(tables: readonly Table[]): Buffer {
  const sorted = tables
    .map(([tag, bytes]) => ({ tag, length: bytes.length, bytes: padded(bytes) }))
    .sort((a, b) => (a.tag < b.tag ? -1 : 1));
  const begin = 12 + 16 * sorted.length;
  let at = begin;
  let head = begin;
  const records = sorted.map(({ tag, length, bytes }) => {
    if (tag === 'head') {
      head = at;
      bytes.writeUInt32BE(0, ADJUSTMENT_AT);
    }
    const record = packed([long(sumOf(bytes)), long(at), long(length)]);
    at += bytes.length;
    return Buffer.concat([Buffer.from(tag, 'latin1'), record]);
  });
  const version = packed([long(0x00010000), short(sorted.length), ...searchFields(sorted.length, 16)]);
  const file = Buffer.concat([version, ...records, ...sorted.map(({ bytes }) => bytes)]);
  file.writeUInt32BE((SUM_OF_ALL - sumOf(file)) >>> 0, head + ADJUSTMENT_AT);
  return file;
}

function sumOf(bytes: Buffer): number {
  let sum = 0;
  for (let at = 0; at < bytes.length; at += 4) sum = (sum + bytes.readUInt32BE(at)) >>> 0;
  return sum;
}

/** Tables begin at multiples of four. */
function padded(bytes: Uint8Array): Buffer {
  return Buffer.concat([bytes, Buffer.alloc((4 - (bytes.length % 4)) % 4)]);
}
