/** `score --json`: everything the score says, as data. Its form is described in the README. */

import type { Music, Part } from '#model/score/music.ts';
import { inScoreOrder, performanceOf, type Performance } from '#model/score/music/performance.ts';
import { barsIn, rangeText } from '#model/score/music/ranges.ts';
import { readingsOf } from '#model/score/music/readings.ts';
import { restsOf, type Rest } from '#model/score/music/rests.ts';
import { fractionText } from '#model/score/fraction.ts';
import type { Score } from '#model/score/score.ts';
import { remarkSentence } from '#model/score/words/remark-sentence.ts';

export interface ToldScore {
  readonly file: string;
  readonly root: string | null;
  readonly roots: readonly string[];
  readonly score: Score;
  readonly music: Music;
}

const LONGEST_RESTS = 10;
/** What floating point may take from a rest of exactly two seconds. */
const HAIR = 1e-6;

export function scoreAsData({ file, root, roots, score, music }: ToldScore): object {
  const performance = performanceOf(music);
  return {
    file,
    root,
    roots,
    title: music.title,
    version: score.version,
    measures: music.bars.length,
    movements: music.movements,
    quarters: music.bars.reduce((sum, { ticks }) => sum + ticks, 0) / music.ticksPerQuarter,
    seconds: { scoreOrder: inScoreOrder(music).seconds, performed: performance.seconds },
    playOrder: music.order.map(rangeText),
    playedMeasures: barsIn(music.order),
    ambiguous: music.ambiguous,
    defaultTempoUsed: music.remarks.some(({ code }) => code === 'tempo.assumed'),
    tempos: music.tempos.map(({ bar, at, quartersPerMinute, source }) => ({
      measure: bar,
      quarters: at / music.ticksPerQuarter,
      quartersPerMinute,
      source,
    })),
    bars: score.bars.map(({ number, quarters }, index) => ({
      index,
      number,
      quarters: fractionText(quarters),
      seconds: performance.clock.lengths[index] ?? 0,
    })),
    parts: music.parts.map((part, index) => partAsData(music, part, performance, score.parts[index])),
    remarks: music.remarks.map((remark) => ({ ...remark, text: remarkSentence(remark, music) })),
  };
}

function partAsData(
  music: Music,
  part: Part,
  performance: Performance,
  written: Score['parts'][number] | undefined,
) {
  const rests = restsOf(music, part, performance);
  return {
    id: part.id,
    name: part.name,
    notes: written?.counts.notes ?? 0,
    cueNotes: written?.counts.cueNotes ?? 0,
    rests: { ...restCounts(rests), longest: longestRests(rests).map((rest) => restAsData(music, rest)) },
    soundingSeconds: performance.seconds - rests.reduce((sum, { from, to }) => sum + to - from, 0),
    pages: part.pages.map(({ page, bar }) => ({
      page,
      firstMeasure: bar,
      number: music.bars[bar]?.number ?? '',
    })),
    pageReadings: readingsOf(music, part, performance),
    instrumentChanges: part.instruments.map(({ bar, name }) => ({ measure: bar, name })),
    transpositions: part.transpositions.map(({ bar, ...by }) => ({ measure: bar, ...by })),
  };
}

export function restCounts(rests: readonly Rest[]) {
  const atLeast = (seconds: number) => rests.filter(({ from, to }) => to - from >= seconds - HAIR).length;
  return { atLeast2s: atLeast(2), atLeast3s: atLeast(3), atLeast5s: atLeast(5) };
}

/** The longest first; those of one length as they come. */
export function longestRests(rests: readonly Rest[]): Rest[] {
  const length = ({ from, to }: Rest) => Math.round((to - from) / HAIR);
  return rests.toSorted((a, b) => length(b) - length(a) || a.from - b.from).slice(0, LONGEST_RESTS);
}

function restAsData(music: Music, { from, to, fromBar, toBar }: Rest) {
  const number = (bar: number) => music.bars[bar]?.number ?? '';
  return {
    seconds: to - from,
    from,
    to,
    fromMeasure: fromBar,
    toMeasure: toBar,
    fromNumber: number(fromBar),
    toNumber: number(toBar),
  };
}
