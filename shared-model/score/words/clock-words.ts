/** Times of a performance as people read them off a clock. */

import type { Seconds } from '../time-line.ts';
import { fixed } from '../../words/numbers.ts';

/** 137.6 as "2:17": the second that is running. */
export function clockWords(time: Seconds): string {
  const whole = Math.floor(time);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}

/** 137.6 as "2:17.6". */
export function tenthsWords(time: Seconds): string {
  const tenths = Math.round(time * 10);
  const rest = fixed((tenths % 600) / 10, 1).padStart(4, '0');
  return `${Math.floor(tenths / 600)}:${rest}`;
}
