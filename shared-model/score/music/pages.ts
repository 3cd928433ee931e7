/** Pages of a part by the bars that begin them. */

import type { PageStart } from '../music.ts';

/** The first page begins with the music, whether or not a break says so. */
export function pagesFrom(breaks: readonly number[]): PageStart[] {
  const bars = [0, ...breaks.filter((bar) => bar > 0)];
  return bars.map((bar, index) => ({ page: index + 1, bar }));
}
