/** Music on the clock: when each bar is played, and what is played at a time. */

import type { BarRange, Music } from '../music.ts';
import type { Seconds } from '../time-line.ts';
import { clockOf, type Clock } from './clock.ts';
import { barsIn } from './ranges.ts';

export interface Performance {
  readonly clock: Clock;
  /** Bars in the order in which they are played. */
  readonly played: Int32Array;
  /** When each of them begins; one more, the end of all. */
  readonly begins: Float64Array;
  readonly seconds: Seconds;
}

/** What is played at a time. */
export interface Moment {
  /** How many bars have been begun before this one. */
  readonly playedBar: number;
  readonly bar: number;
  /** As printed. */
  readonly number: string;
  /** Since the beginning of the bar. */
  readonly seconds: Seconds;
}

export function performanceOf(music: Music): Performance {
  return performed(music, music.order);
}

/** Each bar once, as it stands in the score. */
export function inScoreOrder(music: Music): Performance {
  return performed(music, music.bars.length > 0 ? [[0, music.bars.length - 1]] : []);
}

function performed(music: Music, order: readonly BarRange[]): Performance {
  const clock = clockOf(music);
  const count = barsIn(order);
  const played = new Int32Array(count);
  const begins = new Float64Array(count + 1);
  let index = 0;
  for (const [first, last] of order) {
    for (let bar = first; bar <= last; bar += 1) {
      played[index] = bar;
      begins[index + 1] = (begins[index] ?? 0) + (clock.lengths[bar] ?? 0);
      index += 1;
    }
  }
  return { clock, played, begins, seconds: begins[count] ?? 0 };
}

/** Null before the beginning and from the end on. */
export function momentAt(
  music: Music,
  { played, begins, seconds }: Performance,
  time: Seconds,
): Moment | null {
  if (time < 0 || time >= seconds) return null;
  let [low, high] = [0, played.length - 1];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((begins[middle] ?? Infinity) <= time) low = middle;
    else high = middle - 1;
  }
  const bar = played[low] ?? 0;
  const number = music.bars[bar]?.number ?? '';
  return { playedBar: low, bar, number, seconds: time - (begins[low] ?? 0) };
}
