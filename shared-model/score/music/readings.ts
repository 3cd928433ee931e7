/** Which page a player reads when. */

import type { Music, PageStart, Part } from '../music.ts';
import type { PageReading, Seconds, TimeLine } from '../time-line.ts';
import { performanceOf, type Performance } from './performance.ts';
import { restsOf } from './rests.ts';

/** A new reading at every change of page and at every jump back. */
export function readingsOf(music: Music, part: Part, { played, begins }: Performance): PageReading[] {
  const pages = pageOfEachBar(part.pages, music.bars.length);
  const readings: { page: number; from: Seconds; to: Seconds }[] = [];
  let before = -1;
  played.forEach((bar, index) => {
    const page = pages[bar] ?? 1;
    const to = begins[index + 1] ?? 0;
    const last = readings.at(-1);
    if (last && last.page === page && bar > before) last.to = to;
    else readings.push({ page, from: begins[index] ?? 0, to });
    before = bar;
  });
  return readings;
}

export function pageOfEachBar(pages: readonly PageStart[], bars: number): Int32Array {
  const result = new Int32Array(bars).fill(1);
  pages.forEach(({ page, bar }, index) => result.fill(page, bar, pages[index + 1]?.bar ?? bars));
  return result;
}

/** One player's music on the clock. */
export function timeLineOf(music: Music, part: Part, performance = performanceOf(music)): TimeLine {
  return {
    seconds: performance.seconds,
    readings: readingsOf(music, part, performance),
    silences: restsOf(music, part, performance).map(({ from, to }) => ({ from, to })),
  };
}
