/** Where movements begin: several pieces may lie in one file, and D.C. means the beginning of its own. */

import type { ScoreBar } from '../score.ts';

/** Index of the first bar of each movement: the printed number falls back to 0 or 1. */
export function movementStarts(bars: readonly ScoreBar[]): number[] {
  const starts = [0];
  let before = -1;
  bars.forEach(({ number }, index) => {
    if (!/^\d{1,9}$/.test(number)) return;
    const current = Number(number);
    if (current <= 1 && before > current) starts.push(index);
    before = current;
  });
  return starts;
}

export interface Movement {
  readonly first: number;
  readonly last: number;
}

export function movementsOf(starts: readonly number[], bars: number): Movement[] {
  return starts.map((first, index) => ({ first, last: (starts[index + 1] ?? bars) - 1 }));
}
