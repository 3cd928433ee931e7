/** `score` in words, for a terminal. */

import type { Music, Part } from '#model/score/music.ts';
import { inScoreOrder, performanceOf, type Performance } from '#model/score/music/performance.ts';
import { barsIn } from '#model/score/music/ranges.ts';
import { readingsOf } from '#model/score/music/readings.ts';
import { restsOf, type Rest } from '#model/score/music/rests.ts';
import { barLabels, labelRange } from '#model/score/words/bar-labels.ts';
import { barWords, passesOf, stretchOfBars, type PassedBar } from '#model/score/words/bar-words.ts';
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

/** By printed numbers, with their movements; by places in the file where one movement has a number twice. */
function orderLines(music: Music): string[] {
  const name = barNames(music);
  const words = music.order.map(([first, last]) => labelRange(name(first), name(last))).join(', ');
  return words.includes('#')
    ? [words, '(#4 is the 4th bar of the file: some bars have no number, or one that stands more than once.)']
    : [words];
}

/** As bars are named everywhere. */
function barNames(music: Music): (bar: number) => string {
  const name = barLabels(music);
  return (bar) => onOneLine(name(bar));
}

function partLines(music: Music, part: Part, index: number, performance: Performance): string[] {
  const rests = restsOf(music, part, performance);
  return [
    onOneLine(part.name || `Part ${index + 1}`),
    ...[
      ...pageLines(music, part, performance),
      ...restLines(music, rests, performance),
      ...changeLines(music, part),
    ].map(indented),
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

function restLines(music: Music, rests: readonly Rest[], performance: Performance): string[] {
  if (rests.length === 0) return ['no rests'];
  const { atLeast2s, atLeast3s, atLeast5s } = restCounts(rests);
  const where = restPlaces(music, performance);
  return [
    `rests: ${atLeast2s} of 2 s or more, ${atLeast3s} of 3 s, ${atLeast5s} of 5 s; the longest:`,
    ...longestRests(rests).map(
      (rest) =>
        `  ${(rest.to - rest.from).toFixed(1).padStart(6)} s at ${tenthsWords(rest.from).padStart(7)}, ${where(rest)}`,
    ),
  ];
}

/** "bars 3 to 4, second time" */
function restPlaces(music: Music, { played, begins }: Performance): (rest: Rest) => string {
  const name = barNames(music);
  const passes = passesOf(played);
  const passed = (bar: number, time: number): PassedBar => {
    const index = played.findLastIndex((one, place) => one === bar && (begins[place] ?? 0) <= time + 1e-6);
    return { label: name(bar), pass: passes[index] ?? null };
  };
  return ({ from, to, fromBar, toBar }) => stretchOfBars(passed(fromBar, from), passed(toBar, to - 1e-6));
}

function changeLines(music: Music, part: Part): string[] {
  const name = barNames(music);
  return part.instruments.map(
    (change) => `takes up ${onOneLine(change.name)} in ${barWords(name(change.bar), null)}`,
  );
}

function remarkLines(music: Music): string[] {
  const { remarks } = music;
  if (remarks.length === 0) return [];
  return ['To know', ...remarks.map((remark) => indented(onOneLine(remarkSentence(remark, music))))];
}

function indented(line: string): string {
  return `  ${line}`;
}
