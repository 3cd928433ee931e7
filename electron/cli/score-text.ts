/** `score` in words, for a terminal. */

import type { BarRange, Music, Part } from '#model/score/music.ts';
import { inScoreOrder, performanceOf, type Performance } from '#model/score/music/performance.ts';
import { barsIn } from '#model/score/music/ranges.ts';
import { readingsOf } from '#model/score/music/readings.ts';
import { restsOf, type Rest } from '#model/score/music/rests.ts';
import { tenthsWords } from '#model/score/words/clock-words.ts';
import { remarkSentence } from '#model/score/words/remark-sentence.ts';
import { longestRests, restCounts, type ToldScore } from './score-json.ts';
import { onOneLine, withoutDirections } from './terminal.ts';

export function scoreAsText({ file, root, music }: ToldScore): string {
  const performance = performanceOf(music);
  const blocks = [
    [
      onOneLine(`${music.title || file}${root === null ? '' : ` (${root} in ${file})`}`),
      ...lengthLines(music, performance),
    ],
    ['Order of the performance', ...orderLines(music).map(indented)],
    ...music.parts.map((part, index) => partLines(music, part, index, performance)),
    remarkLines(music),
  ];
  return withoutDirections(
    `${blocks
      .filter((lines) => lines.length > 0)
      .map((lines) => lines.join('\n'))
      .join('\n\n')}\n`,
  );
}

function lengthLines(music: Music, { seconds }: Performance): string[] {
  const played = barsIn(music.order);
  return [
    `${barsWords(music.bars.length)}, ${tenthsWords(inScoreOrder(music).seconds)} as written; ${barsWords(played)}, ${tenthsWords(seconds)} as performed`,
  ];
}

function barsWords(count: number): string {
  return count === 1 ? '1 bar' : `${count} bars`;
}

/** By printed numbers, and by places in the file where several bars print one number. */
function orderLines(music: Music): string[] {
  const name = barNames(music);
  const words = music.order.map((range) => rangeWords(name, range)).join(', ');
  return words.includes('#')
    ? [words, '(#4 is the 4th bar of the file: some numbers stand more than once.)']
    : [words];
}

function rangeWords(name: (bar: number) => string, [first, last]: BarRange): string {
  return first === last ? name(first) : `${name(first)} to ${name(last)}`;
}

function barNames({ bars }: Music): (bar: number) => string {
  const seen = new Map<string, number>();
  for (const { number } of bars) seen.set(number, (seen.get(number) ?? 0) + 1);
  return (bar) => {
    const number = bars[bar]?.number ?? '';
    return number !== '' && seen.get(number) === 1 ? onOneLine(number) : `#${bar + 1}`;
  };
}

function partLines(music: Music, part: Part, index: number, performance: Performance): string[] {
  const rests = restsOf(music, part, performance);
  return [
    onOneLine(part.name || `Part ${index + 1}`),
    ...[...pageLines(music, part, performance), ...restLines(music, rests), ...changeLines(music, part)].map(
      indented,
    ),
  ];
}

function pageLines(music: Music, part: Part, performance: Performance): string[] {
  if (part.pages.length < 2) return ['one page, or no page breaks in the file'];
  const name = barNames(music);
  const begins = part.pages.map(({ page, bar }) => `${page} from ${name(bar)}`).join(', ');
  const readings = readingsOf(music, part, performance);
  const turns = readings.filter(({ page }, index) => index > 0 && page !== readings[index - 1]?.page).length;
  return [`pages: ${begins}`, `the page changes ${turns} ${turns === 1 ? 'time' : 'times'}`];
}

function restLines(music: Music, rests: readonly Rest[]): string[] {
  if (rests.length === 0) return ['no rests'];
  const { atLeast2s, atLeast3s, atLeast5s } = restCounts(rests);
  const name = barNames(music);
  return [
    `rests: ${atLeast2s} of 2 s or more, ${atLeast3s} of 3 s, ${atLeast5s} of 5 s; the longest:`,
    ...longestRests(rests).map(
      ({ from, to, fromBar, toBar }) =>
        `  ${(to - from).toFixed(1).padStart(6)} s at ${tenthsWords(from).padStart(7)}, bar ${name(fromBar)}${fromBar === toBar ? '' : ` to ${name(toBar)}`}`,
    ),
  ];
}

function changeLines(music: Music, part: Part): string[] {
  const name = barNames(music);
  return part.instruments.map((change) => `takes up ${onOneLine(change.name)} in bar ${name(change.bar)}`);
}

function remarkLines({ remarks, bars }: Music): string[] {
  if (remarks.length === 0) return [];
  return ['To know', ...remarks.map((remark) => indented(onOneLine(remarkSentence(remark, bars))))];
}

function indented(line: string): string {
  return `  ${line}`;
}
