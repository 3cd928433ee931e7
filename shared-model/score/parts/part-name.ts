/** What the name of a part or of a player says: which instrument, in what key, and which of several. */

import { isVoiceNamed, kindNamed } from './names-of-instruments.ts';

export interface PartName {
  /** The same for every name of the instrument. */
  readonly kind: string;
  /** "b flat"; null: not said. */
  readonly key: string | null;
  /** 2 in "Violin II"; null: not said. */
  readonly number: number | null;
}

/** Null: a word of it is not understood, or it is for several at once ("Horns 1 and 2", "Flutes a 2"). */
export function partNameOf(name: string): PartName | null {
  const words = plainWords(name);
  if (/(?<!\bin )\ba [2-9]$/.test(words)) return null;
  const numbers = words.split(' ').flatMap((word) => NUMBERS.get(word) ?? []);
  if (numbers.length > 1) return null;
  const said = words
    .split(' ')
    .filter((word) => !NUMBERS.has(word))
    .join(' ');
  const number = numbers[0] ?? null;
  const plain = kindNamed(said);
  if (plain !== undefined) return { kind: plain, key: null, number };
  for (const pattern of KEYED) {
    const { name: rest = '', key = '' } = pattern.exec(said)?.groups ?? {};
    const kind = kindNamed(rest);
    if (kind !== undefined) return { kind, key: KEYS.get(key) ?? key, number };
  }
  return null;
}

/** "Alto", "Bass II": it may be sung, and played on the instrument of that family. */
export function isVoice(name: string): boolean {
  const words = plainWords(name).split(' ');
  return isVoiceNamed(words.filter((word) => !NUMBERS.has(word)).join(' '));
}

/** In small letters without accents, stops and what stands in brackets. */
function plainWords(name: string): string {
  return name
    .replace(/\([^)]*\)|\[[^\]]*\]/g, ' ')
    .replace(/\u266D/g, ' flat ')
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/(\d+)\s*(?:st|nd|rd|th|o|a|\u00BA|\u00B0)(?![\p{L}\d])/gu, '$1')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .replace(/(?<=\p{L})(?=\d)/gu, ' ')
    .trim();
}

const NUMBERS: ReadonlyMap<string, number> = new Map(
  [
    '1 i first primo prima primi erste erster premier premiere premiers',
    '2 ii second secondo seconda secondi zweite zweiter deuxieme seconds',
    '3 iii third terzo terza dritte dritter troisieme',
    '4 iv fourth quarto quarta vierte vierter quatrieme',
    '5 v',
    '6 vi',
    '7 vii',
    '8 viii',
  ].flatMap((words, index) => words.split(' ').map((word): [string, number] => [word, index + 1])),
);

/** Keys that instruments are built in, however they are written; "in B" is the German for B flat. */
const KEYS: ReadonlyMap<string, string> = new Map([
  ...'b flat, bb, b, si b, sib, si bemolle, si bemol'.split(', ').map((key) => [key, 'b flat'] as const),
  ...'e flat, eb, es, mi b, mib, mi bemolle, mi bemol'.split(', ').map((key) => [key, 'e flat'] as const),
  ...'a, la'.split(', ').map((key) => [key, 'a'] as const),
  ...'c, do, ut'.split(', ').map((key) => [key, 'c'] as const),
  ...'d, re'.split(', ').map((key) => [key, 'd'] as const),
  ...'f, fa'.split(', ').map((key) => [key, 'f'] as const),
  ...'g, sol'.split(', ').map((key) => [key, 'g'] as const),
]);

const KEY = `(?<key>${[...KEYS.keys()].join('|')})`;

const KEYED = [new RegExp(`^(?<name>.+?)(?: in| en)? ${KEY}$`), new RegExp(`^${KEY} (?<name>.+)$`)];
