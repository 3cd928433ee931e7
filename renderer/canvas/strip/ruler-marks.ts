/** What is written on the ruler of a time strip: moments on the clock, numbers of bars, stretches that are repeated. */

import type { Run, RunBar } from '#model/pages/running/run.ts';
import { lastBegun } from '#model/pages/running/stretches.ts';
import { clockWords } from '#model/score/words/clock-words.ts';
import { pixelOf, type TimeWindow } from './time-window.ts';

export interface RulerMark {
  readonly x: number;
  readonly words: string;
}

export interface RepeatMark {
  readonly from: number;
  readonly to: number;
  /** How often it is played by then. */
  readonly pass: number;
}

export interface Ruler {
  readonly clock: readonly RulerMark[];
  readonly bars: readonly RulerMark[];
  readonly repeats: readonly RepeatMark[];
}

const CLOCK_STEPS = [1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 1200, 3600] as const;
/** Pixels between two writings, at the least. */
const [CLOCK_ROOM, BAR_ROOM] = [64, 34] as const;

export function rulerOf({ bars, seconds }: Run, window: TimeWindow, width: number): Ruler {
  const end = Math.min(seconds, window.from + window.seconds);
  const shown = bars.slice(Math.max(0, lastBegun(bars, window.from)), lastBegun(bars, end) + 1);
  return {
    clock: clockMarks(window, width, end),
    bars: barMarks(shown, window, width),
    repeats: repeatsIn(shown).map(({ from, to, pass }) => ({
      pass,
      from: pixelOf(window, width, from),
      to: pixelOf(window, width, to),
    })),
  };
}

function clockMarks(window: TimeWindow, width: number, end: number): RulerMark[] {
  const least = (CLOCK_ROOM / Math.max(1, width)) * window.seconds;
  const step = CLOCK_STEPS.find((one) => one >= least) ?? 7200;
  const marks: RulerMark[] = [];
  for (let time = Math.ceil(window.from / step) * step; time <= end; time += step)
    marks.push({ x: pixelOf(window, width, time), words: clockWords(time) });
  return marks;
}

/** Every bar where there is room; else those that are a little farther apart, and where a jump leads. */
function barMarks(bars: readonly RunBar[], window: TimeWindow, width: number): RulerMark[] {
  const marks: RulerMark[] = [];
  let free = -Infinity;
  for (const { label, from } of bars) {
    const x = pixelOf(window, width, from);
    if (label === '' || x < free) continue;
    marks.push({ x, words: label });
    free = x + BAR_ROOM;
  }
  return marks;
}

function repeatsIn(bars: readonly RunBar[]): RepeatMark[] {
  const repeats: { from: number; to: number; pass: number }[] = [];
  for (const { pass, from, to } of bars) {
    const last = repeats.at(-1);
    if (pass === 1) continue;
    if (last && last.pass === pass && Math.abs(last.to - from) < 1e-6) last.to = to;
    else repeats.push({ from, to, pass });
  }
  return repeats;
}
