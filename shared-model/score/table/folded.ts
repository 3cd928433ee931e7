/** Music that was typed in the order of its performance, as a player has it before him: what is played again stands once. */

import type { Music, Part, Tempo } from '../music.ts';
import { rangesOf } from '../music/ranges.ts';
import { pageOfEachBar } from '../music/readings.ts';

/**
 * Bars that print the same number on the same pages, and are equally long, fast and silent for everybody, are one bar,
 * which the order then comes back to. What differs in anything stays two bars, as in two movements. It lasts as long as before.
 */
export function folded(music: Music): Music {
  const keyOf = barKeys(music);
  const firsts: number[] = [];
  const known = new Map<string, number>();
  const order = music.bars.map((_, bar) => {
    const key = keyOf(bar);
    const index = known.get(key) ?? firsts.length;
    if (index === firsts.length) {
      firsts.push(bar);
      known.set(key, index);
    }
    return index;
  });
  if (firsts.length === music.bars.length) return music;
  return {
    ...music,
    bars: music.bars.filter((_, bar) => order[bar] !== undefined && firsts[order[bar]] === bar),
    tempos: temposOf(music, firsts),
    order: rangesOf(order),
    parts: music.parts.map((part) => partOf(part, firsts, music.bars.length)),
  };
}

/** All that has to be alike. */
function barKeys(music: Music): (bar: number) => string {
  const pages = music.parts.map((part) => pageOfEachBar(part.pages, music.bars.length));
  const silent = music.parts.map(({ silences }) => new Set(silences.map(([bar]) => bar)));
  const tempos = temposOfEachBar(music);
  return (bar) =>
    [
      music.bars[bar]?.number,
      music.bars[bar]?.ticks,
      // A row timed by its seconds gives the same tempo but for its last bits.
      tempos[bar]?.quartersPerMinute.toPrecision(9),
      ...pages.map((own) => own[bar]),
      ...silent.map((own) => own.has(bar)),
    ].join(' ');
}

function temposOfEachBar({ tempos, bars }: Music): (Tempo | undefined)[] {
  let next = 0;
  let tempo: Tempo | undefined;
  return bars.map((_, bar) => {
    while ((tempos[next]?.bar ?? Infinity) <= bar) tempo = tempos[next++];
    return tempo;
  });
}

/** Of the bars that are left, by their old indices. */
function temposOf(music: Music, firsts: readonly number[]): Tempo[] {
  const tempos = temposOfEachBar(music);
  return firsts.flatMap((old, bar): Tempo[] => {
    const tempo = tempos[old];
    const before = tempos[firsts[bar - 1] ?? -1];
    return tempo && tempo.quartersPerMinute !== before?.quartersPerMinute ? [{ ...tempo, bar }] : [];
  });
}

function partOf(part: Part, firsts: readonly number[], bars: number): Part {
  const pages = pageOfEachBar(part.pages, bars);
  const at = new Map(firsts.map((old, bar) => [old, bar]));
  return {
    ...part,
    pages: firsts.flatMap((old, bar) => {
      const page = pages[old] ?? 1;
      return bar > 0 && pages[firsts[bar - 1] ?? 0] === page ? [] : [{ page, bar }];
    }),
    silences: part.silences.flatMap(([old, from, to]) => {
      const bar = at.get(old);
      return bar === undefined ? [] : [[bar, from, to]];
    }),
  };
}
