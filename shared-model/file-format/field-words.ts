/** Fields as people are told of them: as the window names them, never by their path in the file. */

import type { Kind } from '../document/records.ts';
import { t } from '../words/say.ts';
import { FIELD_WORDS, FIELDS_OF_ALL, type FieldWords } from './field-words/table.ts';
import { patternOf } from './field-tree.ts';

/**
 * "pages side by side", "corner 4, from the centre line": each entry of a list on the way, and the field itself. What no
 * schema has is told as it was given.
 */
export function fieldWords(kind: Kind, path: string): string {
  const told = waysTo(path).filter((way) => way === path || way.endsWith(']'));
  const parts = told.map((way) => wordsOf(kind, way) ?? t`“${lastName(way)}”`);
  return parts.filter((part) => part !== '').join(', ');
}

/** Null: nobody has given it words. */
export function wordsOf(kind: Kind, path: string): string | null {
  const pattern = patternOf(path);
  const words = entryOf(FIELD_WORDS[kind], pattern) ?? entryOf(FIELDS_OF_ALL, pattern);
  const index = Number(/\[(\d+)\]$/.exec(path)?.[1] ?? 0);
  return words?.(index + 1) ?? null;
}

function entryOf(words: FieldWords, pattern: string): FieldWords[string] | undefined {
  return Object.hasOwn(words, pattern) ? words[pattern] : undefined;
}

/** "sides[1].reader": "sides", "sides[1]", "sides[1].reader". */
function waysTo(path: string): string[] {
  const ends = [...path.matchAll(/\.|\[|$/g)].map(({ index }) => index).filter((end) => end > 0);
  return [...new Set(ends.map((end) => path.slice(0, end)))];
}

function lastName(path: string): string {
  return path.split('.').at(-1) ?? path;
}
