/** Where in the music a moment of a run is, in words. */

import type { Seconds } from '../../score/time-line.ts';
import { barWords as namedBar } from '../../score/words/bar-words.ts';
import type { Run, RunBar } from './run.ts';
import { holding } from './stretches.ts';

/** "bar 48, second time"; empty: no bar is known there. */
export function barAt({ bars }: Run, time: Seconds): string {
  return barWords(holding(bars, time));
}

export function barWords(bar: RunBar | null): string {
  if (bar === null || bar.name === '') return '';
  return namedBar(bar.name, { time: bar.pass, of: bar.passes });
}
