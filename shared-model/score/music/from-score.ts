/** From a score to music: jumps are carried out, lengths become ticks, sounding becomes silence. */

import { compare, ZERO, type Fraction } from '../fraction.ts';
import { MOST_REMARKS } from '../limits.ts';
import { performanceOrder, type OrderOptions } from '../jumps/performance-order.ts';
import type { BarSilence, Music, Part, Tempo } from '../music.ts';
import { outcomeOf, type Outcome } from '../problem.ts';
import type { Remark } from '../remark.ts';
import type { Score, ScorePart, Span } from '../score.ts';
import { pagesFrom } from './pages.ts';
import { rangesOf } from './ranges.ts';
import { inTicks, ticksFor, type Ticks } from './ticks.ts';

const AS_A_RULE: OrderOptions = { repeatsAfterJump: false };

/** Refuses a score whose repeats go on beyond all music. */
export function musicFromScore(score: Score, options: OrderOptions = AS_A_RULE): Outcome<Music> {
  return outcomeOf(() => {
    const { order, otherwise, movementStarts, ambiguous, remarks } = performanceOrder(score, options);
    const ticks = ticksFor(edgesOf(score));
    const rounded: Remark[] = ticks.rounded ? [{ code: 'time.rounded', bar: null }] : [];
    return {
      title: score.title,
      ticksPerQuarter: ticks.perQuarter,
      bars: score.bars.map(({ number, quarters }) => ({ number, ticks: inTicks(quarters, ticks) })),
      tempos: temposOf(score, ticks),
      movements: movementStarts,
      order: rangesOf(order),
      afterJump: otherwise && { repeats: options.repeatsAfterJump, otherwise: rangesOf(otherwise) },
      ambiguous,
      parts: score.parts.map((part) => partOf(part, score, ticks)),
      remarks: listed([...score.remarks, ...remarks, ...rounded]),
    };
  });
}

/** The first of each kind; a file may be wrong in every bar. */
function listed(remarks: readonly Remark[]): Remark[] {
  const counts = new Map<string, number>();
  return remarks.filter(({ code }) => {
    const count = (counts.get(code) ?? 0) + 1;
    counts.set(code, count);
    return count <= MOST_REMARKS;
  });
}

function* edgesOf({ bars, parts, tempos }: Score): Generator<Fraction> {
  for (const { quarters } of bars) yield quarters;
  for (const { at } of tempos) yield at;
  for (const { sounding } of parts) {
    for (const spans of sounding) {
      for (const { from, to } of spans) {
        yield from;
        yield to;
      }
    }
  }
}

/** Of marks at one place the last holds: that of the later part, or the later one in the part. */
function temposOf({ tempos, bars }: Score, ticks: Ticks): Tempo[] {
  const starts = [0];
  for (const { quarters } of bars) starts.push((starts.at(-1) ?? 0) + inTicks(quarters, ticks));
  const absolute = tempos.map((mark, index) => ({
    mark,
    index,
    tick: (starts[mark.bar] ?? 0) + inTicks(mark.at, ticks),
  }));
  absolute.sort((a, b) => a.tick - b.tick || a.mark.bar - b.mark.bar || a.index - b.index);
  return absolute.flatMap(({ mark: { quartersPerMinute, source }, tick }, index) => {
    if (absolute[index + 1]?.tick === tick) return [];
    const bar = barAt(starts, tick);
    return bar < bars.length ? [{ bar, at: tick - (starts[bar] ?? 0), quartersPerMinute, source }] : [];
  });
}

/** A mark at the end of a bar is one at the beginning of the next. */
function barAt(starts: readonly number[], tick: number): number {
  let [low, high] = [0, starts.length - 1];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((starts[middle] ?? Infinity) <= tick) low = middle;
    else high = middle - 1;
  }
  return low;
}

function partOf(part: ScorePart, score: Score, ticks: Ticks): Part {
  const { id, name, pageBreaks, instruments, transpositions } = part;
  const silences = part.sounding.flatMap((sounding, bar) =>
    silencesBetween(sounding, score.bars[bar]?.quarters ?? ZERO).map(({ from, to }): BarSilence => [
      bar,
      inTicks(from, ticks),
      inTicks(to, ticks),
    ]),
  );
  const ownPages = score.parts.length === 1;
  return { id, name, silences, pages: pagesFrom(pageBreaks), ownPages, instruments, transpositions };
}

/** What `sounding` leaves of a bar. Beside a grace note at the very edge lies a silence without length. */
function silencesBetween(sounding: readonly Span[], length: Fraction): Span[] {
  const silences: Span[] = [];
  let from = ZERO;
  for (const span of sounding) {
    const isMoment = compare(span.from, span.to) === 0;
    if (isMoment || compare(from, span.from) < 0) silences.push({ from, to: span.from });
    from = span.to;
  }
  const last = sounding.at(-1);
  const endsWithMoment = last !== undefined && compare(last.from, last.to) === 0;
  if (endsWithMoment || compare(from, length) < 0) silences.push({ from, to: length });
  return silences;
}
