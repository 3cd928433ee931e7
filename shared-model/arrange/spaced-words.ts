/** Players written one behind another with nothing but blanks between: "2 vl va vc". */

import { abbreviations } from './abbreviations.ts';
import { memberOf } from './instrument-words.ts';
import { playersOfEnsemble } from './named-ensembles.ts';
import { plainWords } from './plain-words.ts';

/** Names of two words may begin or end so: an alto clarinet is neither an alto nor a clarinet. */
const MODIFIERS: ReadonlySet<string> = new Set(
  (
    'bass, alto, alt, tenor, soprano, sopran, mezzo, baritone, bariton, treble, piccolo, piano, klavier, bugle, voice, ' +
    'stimme, drum, double, rec, b, a, s, t, v'
  ).split(', '),
);

/** Words of the longest name that there is. */
const MOST_WORDS = 4;

/**
 * The pieces, each one kind of player with the number before or behind him; null: it cannot be told where one ends. A line
 * that begins with a number counts, "2 vl 1 va"; one that begins with a name numbers its players from 1, "vl 1 vl 2 va".
 */
export function spacedPieces(words: string): string[] | null {
  const tokens = words.split(/\s+/u);
  const counts = isNumber(tokens[0] ?? '');
  const pieces: string[] = [];
  let at = 0;
  while (at < tokens.length) {
    const number = counts && isNumber(tokens[at] ?? '') ? tokens[at] : undefined;
    const from = number === undefined ? at : at + 1;
    const length = lengthOfName(tokens, from);
    if (length === 0) return null;
    const which = !counts && isNumber(tokens[from + length] ?? '') ? 1 : 0;
    pieces.push(tokens.slice(at, from + length + which).join(' '));
    at = from + length + which;
  }
  return pieces.length > 1 && (counts || numbersRun(pieces)) ? pieces : null;
}

function isNumber(token: string): boolean {
  return /^\d{1,2}[x×]?$/u.test(token);
}

/** In words, of the longest name that begins there; 0: none does, or it may be part of another name. */
function lengthOfName(tokens: readonly string[], from: number): number {
  for (let length = Math.min(MOST_WORDS, tokens.length - from); length > 0; length--) {
    const name = plainWords(tokens.slice(from, from + length).join(' '));
    if (length === 1 && MODIFIERS.has(name)) return 0;
    if (playersOfEnsemble(name)?.length || memberOf(name) || abbreviations().includes(name)) return length;
  }
  return 0;
}

/** "vl 1 vl 2": whoever has a number comes after the one before him; "vl 2 va" may be two violas. */
function numbersRun(pieces: readonly string[]): boolean {
  const last = new Map<string, number>();
  return pieces.every((piece) => {
    const [, name = '', number] = /^(.*?)\s+(\d+)$/u.exec(piece) ?? [];
    if (number === undefined) return true;
    const isNext = Number(number) === (last.get(name) ?? 0) + 1;
    last.set(name, Number(number));
    return isNext;
  });
}
