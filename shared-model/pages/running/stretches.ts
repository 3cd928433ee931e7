/** Stretches of time in order, each from where the one before it ends. */

import type { Interval, Seconds } from '../../score/time-line.ts';

/** Index of the last interval that begins at `time` or before it, by halving; -1: none. For intervals in order. */
export function lastBegun(intervals: readonly Pick<Interval, 'from'>[], time: Seconds): number {
  let [low, high] = [0, intervals.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((intervals[middle]?.from ?? Infinity) <= time) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}

/** The one of disjoint intervals in order that holds `time`; its end is no longer in it. */
export function holding<T extends Interval>(intervals: readonly T[], time: Seconds): T | null {
  const found = intervals[lastBegun(intervals, time)];
  return found && time < found.to ? found : null;
}
