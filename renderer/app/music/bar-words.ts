/** Bars, pages and times of a piece in words, in the form in which they can be typed back. */

import type { BarRange, Music, Part } from '#model/document/music.ts';
import type { Performance } from '#model/score/music/performance.ts';
import type { Interval } from '#model/score/time-line.ts';
import { barLabels, labelsWords } from '#model/score/words/bar-labels.ts';
import { passesOf, stretchOfBars, type PassedBar } from '#model/score/words/bar-words.ts';

/** By the printed number where that is plain and stands once, else "#14", the fourteenth bar of the file. */
export function barNames({ bars }: Music): (bar: number) => string {
  const counts = new Map<string, number>();
  for (const { number } of bars) counts.set(number, (counts.get(number) ?? 0) + 1);
  return (bar) => {
    const number = bars[bar]?.number ?? '';
    return counts.get(number) === 1 && PLAIN.test(number) ? number : `#${bar + 1}`;
  };
}

/** "bar 3", "bars 3 to 4 of movement 2": as bars are named everywhere. */
export function barsInWords(music: Music): (first: number, last?: number) => string {
  const label = barLabels(music);
  return (first, last = first) => labelsWords(label(first), label(last));
}

/** "bars 9 to 14, second time": where a rest lies, and which of the times that its bars are played. */
export function restBars(music: Music, { played, begins }: Performance, rest: Interval): string {
  const label = barLabels(music);
  const passes = passesOf(played);
  const passed = (index: number): PassedBar => ({
    label: label(played[index] ?? 0),
    pass: passes[index] ?? null,
  });
  // A rest that ends with a bar ends in it; times are sums, so that ends meet but for their last bits.
  const first = Math.max(
    0,
    begins.findLastIndex((begin) => begin <= rest.from + MOMENT),
  );
  const last = begins.findLastIndex((begin) => begin < rest.to - MOMENT);
  return stretchOfBars(passed(Math.min(first, played.length - 1)), passed(Math.max(first, last)));
}

const MOMENT = 1e-6;

const PLAIN = /^[\p{L}\p{N}.]+$/u;

/** "0-12, 4-20" */
export function orderWords(music: Music): string {
  const name = barNames(music);
  const range = ([first, last]: BarRange): string =>
    first === last ? name(first) : `${name(first)}-${name(last)}`;
  return music.order
    .flatMap((one) => (one.some((bar) => name(bar).startsWith('#')) ? [one] : countedOn(music, one)))
    .map(range)
    .join(', ');
}

/** In pieces within which the printed numbers rise: "1-40" would hide that 15 to 20 stand twice. */
function countedOn({ bars }: Music, [first, last]: BarRange): BarRange[] {
  const pieces: [number, number][] = [];
  const numberOf = (bar: number): number => Number.parseInt(bars[bar]?.number ?? '', 10);
  for (let bar = first; bar <= last; bar += 1) {
    const piece = pieces.at(-1);
    if (piece && !(numberOf(bar) <= numberOf(bar - 1))) piece[1] = bar;
    else pieces.push([bar, bar]);
  }
  return pieces;
}

/** "1, 38, 77"; empty for pages that no player reads from. */
export function pageWords(music: Music, { pages, ownPages }: Part): string {
  const name = barNames(music);
  return ownPages ? pages.map(({ bar }) => name(bar)).join(', ') : '';
}
