/** Times of a performance as places in it, and back. */

import type { Place } from '../../document/kept-plan.ts';
import type { Performance } from './performance.ts';
import type { Seconds } from '../time-line.ts';

/** Bars as performed, with the share of the bar by time; before the beginning 0, after the end the number of bars played. */
export function placeAt({ played, begins, seconds }: Performance, time: Seconds): Place {
  if (!(time > 0)) return 0;
  if (time >= seconds) return played.length;
  const bar = lastBegun(begins, time);
  const from = begins[bar] ?? 0;
  const length = (begins[bar + 1] ?? from) - from;
  return length > 0 ? bar + Math.min(1, (time - from) / length) : bar;
}

/** A place beyond the end of a performance that has become shorter is its end. */
export function timeAt({ played, begins, seconds }: Performance, place: Place): Seconds {
  if (place >= played.length) return seconds;
  const bar = Math.max(0, Math.floor(place));
  const from = begins[bar] ?? 0;
  return from + (Math.max(0, place) - bar) * ((begins[bar + 1] ?? from) - from);
}

/** Index of the last bar that begins at `time` or before, by halving. */
function lastBegun(begins: Float64Array, time: Seconds): number {
  let [low, high] = [0, begins.length - 2];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((begins[middle] ?? Infinity) <= time) low = middle;
    else high = middle - 1;
  }
  return low;
}
