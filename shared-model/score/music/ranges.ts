/** Bars in a row, as ranges; and ranges as text: "0-16, 1-14, 17-30". */

import type { BarRange } from '../music.ts';

/** Runs of bars that follow one another. */
export function rangesOf(order: Iterable<number>): BarRange[] {
  const ranges: [number, number][] = [];
  for (const bar of order) {
    const last = ranges.at(-1);
    if (last && last[1] + 1 === bar) last[1] = bar;
    else ranges.push([bar, bar]);
  }
  return ranges;
}

export function rangeText([first, last]: BarRange): string {
  return first === last ? String(first) : `${first}-${last}`;
}

export function barsIn(ranges: readonly BarRange[]): number {
  return ranges.reduce((sum, [first, last]) => sum + last - first + 1, 0);
}
