/** A player's rests in the performance, across bar lines, repeats and jumps. */

import type { BarSilence, Music, Part } from '../music.ts';
import type { Interval } from '../time-line.ts';
import type { Performance } from './performance.ts';

export interface Rest extends Interval {
  /** Index of the bar in which it begins, and of that in which it ends; what ends with a bar ends in it. */
  readonly fromBar: number;
  readonly toBar: number;
}

/** In the order of the performance. Cue notes are silence; grace notes end a rest. */
export function restsOf(music: Music, part: Part, performance: Performance): Rest[] {
  const byBar = silencesByBar(part.silences, music.bars.length);
  const rests: Rest[] = [];
  let joins = false;
  performance.played.forEach((bar, index) => {
    const silences = byBar[bar] ?? [];
    silences.forEach((silence, place) => {
      const rest = restIn(silence, performance, index);
      const before = rests.at(-1);
      if (joins && before && place === 0 && silence[1] === 0) rests[rests.length - 1] = joined(before, rest);
      else rests.push(rest);
    });
    joins = silences.at(-1)?.[2] === music.bars[bar]?.ticks;
  });
  return rests.filter(({ from, to }) => to > from);
}

/** Two that touch at a bar line; one without length only keeps its neighbours apart. */
function joined(before: Rest, rest: Rest): Rest {
  if (before.to === before.from) return rest;
  return rest.to === rest.from ? before : { ...before, to: rest.to, toBar: rest.toBar };
}

function restIn([bar, from, to]: BarSilence, { begins, clock }: Performance, index: number): Rest {
  const begin = begins[index] ?? 0;
  return { from: begin + clock.into(bar, from), to: begin + clock.into(bar, to), fromBar: bar, toBar: bar };
}

function silencesByBar(silences: readonly BarSilence[], bars: number): BarSilence[][] {
  const byBar: BarSilence[][] = Array.from({ length: bars }, () => []);
  for (const silence of silences) byBar[silence[0]]?.push(silence);
  return byBar;
}
