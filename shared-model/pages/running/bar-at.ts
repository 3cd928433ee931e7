/** Where in the music a moment of a run is, in words. */

import type { Seconds } from '../../score/time-line.ts';
import type { Run, RunBar } from './run.ts';
import { holding } from './stretches.ts';

const TIMES = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth'] as const;

/** "bar 48, second time"; empty: no bar is known there. */
export function barAt({ bars }: Run, time: Seconds): string {
  return barWords(holding(bars, time));
}

export function barWords(bar: RunBar | null): string {
  if (bar === null || bar.label === '') return '';
  return bar.pass === 1 ? `bar ${bar.label}` : `bar ${bar.label}, ${timesWords(bar.pass)}`;
}

function timesWords(pass: number): string {
  return `${TIMES[pass - 1] ?? `${pass}th`} time`;
}
