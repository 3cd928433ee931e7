/** Bars, pages and times of a piece in words, in the form in which they can be typed back. */

import type { BarRange, Music, Part } from '#model/document/music.ts';
import { movementOf } from '#model/score/music/bar-names.ts';
import { text } from '../text.ts';

/** By the printed number where that is plain and stands once, else "#14", the fourteenth bar of the file. */
export function barNames({ bars }: Music): (bar: number) => string {
  const counts = new Map<string, number>();
  for (const { number } of bars) counts.set(number, (counts.get(number) ?? 0) + 1);
  return (bar) => {
    const number = bars[bar]?.number ?? '';
    return counts.get(number) === 1 && PLAIN.test(number) ? number : `#${bar + 1}`;
  };
}

/**
 * "bar 3", "bars 3 to 4"; "movement 2, bars 3 to 4" where a number stands in several movements; "#14" where it stands
 * twice in one.
 */
export function barsInWords(music: Music): (first: number, last?: number) => string {
  const name = barNames(music);
  const inMovement = namesInMovements(music);
  return (first, last = first) => {
    const plain = [name(first), name(last)];
    const movement = movementOf(music, first);
    const near = movementOf(music, last) === movement ? [inMovement(first), inMovement(last)] : [null];
    const [from, to] = near;
    if (plain.some((one) => one.startsWith('#')) && from && to)
      return text.music.barsOfMovement(movement + 1, from, to);
    return text.music.barsNamed(name(first), name(last));
  };
}

/** The printed number where it stands once in its movement, else null. */
function namesInMovements(music: Music): (bar: number) => string | null {
  const keyOf = (bar: number): string => `${movementOf(music, bar)} ${music.bars[bar]?.number ?? ''}`;
  const counts = new Map<string, number>();
  music.bars.forEach((_, bar) => counts.set(keyOf(bar), (counts.get(keyOf(bar)) ?? 0) + 1));
  return (bar) => {
    const number = music.bars[bar]?.number ?? '';
    return counts.get(keyOf(bar)) === 1 && PLAIN.test(number) ? number : null;
  };
}

const PLAIN = /^[\p{L}\p{N}.]+$/u;

/** "0-12, 4-20" */
export function orderWords(music: Music): string {
  const name = barNames(music);
  const range = ([first, last]: BarRange): string =>
    first === last ? name(first) : `${name(first)}-${name(last)}`;
  return music.order.map(range).join(', ');
}

/** "1, 38, 77"; empty for pages that no player reads from. */
export function pageWords(music: Music, { pages, ownPages }: Part): string {
  const name = barNames(music);
  return ownPages ? pages.map(({ bar }) => name(bar)).join(', ') : '';
}
