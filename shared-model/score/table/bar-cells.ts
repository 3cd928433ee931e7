/** Bars as the cells of a table name them: by the printed number, or as "#14", the fourteenth bar of the file. */

import type { Music } from '../music.ts';

/** Index of the bar that "#14" means; null: it is no such name. */
export function ordinalOf(name: string): number | null {
  const ordinal = /^#(\d{1,6})$/.exec(name.trim())?.[1];
  return ordinal === undefined ? null : Number(ordinal) - 1;
}

/** "all" bars of a row; in German "alle". */
export function isAll(text: string): boolean {
  return /^alle?$/i.test(text);
}

/** A name by which the bar is found by who looks from bar `from` on: its number where that comes first there. */
export function nameFrom({ bars }: Music, bar: number, from: number): string {
  const number = bars[bar]?.number ?? '';
  const isPlain = /^[\p{L}\d.]+$/u.test(number) && !isAll(number);
  const isFirst = !bars.slice(from, bar).some((other) => other.number === number);
  return isPlain && isFirst ? number : `#${bar + 1}`;
}
