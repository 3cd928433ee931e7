/**
 * A part without a score, as a table: a row for each page as it is read, in the order of the performance. Columns: page,
 * first bar, last bar, tempo (quarters a minute) or seconds, beats (quarters in a bar, 4 if left out), free hands (bars in
 * which the player does not play, such as "12-14, 20"). It becomes music like that of a score, with one part: a bar that
 * is played again is listed again, and the page with it.
 */

import { compare, decimal, fraction, type Fraction } from '../fraction.ts';
import { FASTEST_TEMPO, LONGEST_PERFORMANCE, MOST_PLAYED_BARS, MOST_ROWS, SLOWEST_TEMPO } from '../limits.ts';
import {
  ASSUMED_TEMPO,
  type Bar,
  type BarSilence,
  type Music,
  type PageStart,
  type Tempo,
} from '../music.ts';
import { inTicks, ticksFor, type Ticks } from '../music/ticks.ts';
import { outcomeOf, Refusal, type Outcome } from '../problem.ts';
import { rowsOf } from './cells.ts';
import { withColumns, type Column } from './columns.ts';

/** Never throws, whatever the text. Refusals name the row, as the spreadsheet counts it, and the column. */
export function musicFromTable(text: string, name: string): Outcome<Music> {
  return outcomeOf(() => {
    const { columns, rows } = withColumns(rowsOf(text));
    if (rows.length > MOST_ROWS) throw new Refusal({ code: 'table.rows', most: MOST_ROWS });
    const entries: Entry[] = [];
    for (const { line, cells } of rows)
      entries.push(entryOf(new Cells(line, columns, cells), entries.at(-1)));
    return musicOf(entries, name);
  });
}

interface Entry {
  readonly page: number;
  readonly first: number;
  readonly last: number;
  /** Quarters in each bar. */
  readonly beats: Fraction;
  /** Null: none is said, here or before. */
  readonly quartersPerMinute: number | null;
  /** Printed numbers. */
  readonly free: readonly (readonly [number, number])[];
}

/** The cells of one row, by column. */
class Cells {
  constructor(
    readonly row: number,
    private readonly columns: readonly Column[],
    private readonly cells: readonly string[],
  ) {
    const extra = cells.slice(columns.length).find((cell) => cell !== '');
    if (extra !== undefined)
      throw new Refusal({
        code: 'table.cell',
        row,
        column: `no. ${columns.length + 1}`,
        given: extra.slice(0, 40),
        advice: 'there is no such column; put a number with a comma into quotes',
      });
  }

  text(column: Column): string {
    return this.cells[this.columns.indexOf(column)] ?? '';
  }

  bad(column: Column, advice: string): Refusal {
    const given = this.text(column).slice(0, 40);
    return new Refusal({ code: 'table.cell', row: this.row, column, given, advice });
  }

  /** A whole number from `least` on. */
  whole(column: Column, least: number): number {
    const text = this.text(column);
    if (!/^\d{1,6}$/.test(text) || Number(text) < least)
      throw this.bad(column, `write a whole number from ${least} on`);
    return Number(text);
  }
}

function entryOf(cells: Cells, before: Entry | undefined): Entry {
  const first = cells.whole('first bar', 0);
  const last = cells.whole('last bar', 0);
  if (last < first)
    throw cells.bad('last bar', `the first bar is ${first}, so it has to be ${first} or more`);
  const beats = beatsOf(cells);
  const quarters = ((last - first + 1) * beats.n) / beats.d;
  return {
    page: cells.whole('page', 1),
    first,
    last,
    beats,
    quartersPerMinute: tempoOf(cells, quarters) ?? before?.quartersPerMinute ?? null,
    free: freeBars(cells, first, last),
  };
}

function beatsOf(cells: Cells): Fraction {
  const text = cells.text('beats');
  if (text === '') return fraction(4);
  const beats = decimal(text.replace(',', '.'));
  if (beats && beats.n > 0 && compare(beats, fraction(64)) <= 0) return beats;
  throw cells.bad('beats', 'write the quarters in a bar, such as 3 or 4.5');
}

/** From the tempo, or from the seconds that `quarters` take; the tempo's column takes seconds as well: "40 s", "1:20". */
function tempoOf(cells: Cells, quarters: number): number | null {
  const [tempo, time] = [cells.text('tempo'), cells.text('seconds')];
  if (tempo !== '' && time !== '')
    throw cells.bad('seconds', 'the row gives a tempo, too; leave one of them out');
  if (time !== '') return fromSeconds(cells, 'seconds', secondsOf(time), quarters);
  if (tempo === '') return null;
  if (/s|:/i.test(tempo)) return fromSeconds(cells, 'tempo', secondsOf(tempo), quarters);
  const number = numberOf(tempo);
  if (number !== null && number >= SLOWEST_TEMPO && number <= FASTEST_TEMPO) return number;
  throw cells.bad(
    'tempo',
    `write ${SLOWEST_TEMPO} to ${FASTEST_TEMPO} quarters a minute, or seconds as 40 s`,
  );
}

function fromSeconds(cells: Cells, column: Column, seconds: number | null, quarters: number): number {
  if (seconds === null || !(seconds > 0) || seconds > LONGEST_PERFORMANCE)
    throw cells.bad(column, 'write the time as 75, 75.5 or 1:15');
  return (quarters * 60) / seconds;
}

/** "75", "75.5 s", "75,5", "1:15", "1:02:03". */
function secondsOf(text: string): number | null {
  const plain = text.replace(/\s*s(?:ec(?:onds)?)?\.?$/i, '');
  const pieces = plain.split(':').map(numberOf);
  if (pieces.length > 3 || pieces.slice(1).some((piece) => piece !== null && piece >= 60)) return null;
  return pieces.reduce<number | null>(
    (sum, piece) => (sum === null || piece === null ? null : sum * 60 + piece),
    0,
  );
}

function numberOf(text: string): number | null {
  return /^\d{1,6}(?:[.,]\d{1,6})?$/.test(text) ? Number(text.replace(',', '.')) : null;
}

/** "12-14, 20"; "all" for a page on which the player only waits. */
function freeBars(cells: Cells, first: number, last: number): [number, number][] {
  const text = cells.text('free hands');
  if (text === '') return [];
  if (/^all$/i.test(text)) return [[first, last]];
  return text.split(/[,;]/).map((piece): [number, number] => {
    const [, begin, end = begin] = /^\s*(\d{1,6})\s*(?:[-\u2013]\s*(\d{1,6})\s*)?$/.exec(piece) ?? [];
    const [from, to] = [Number(begin), Number(end)];
    if (from >= first && from <= to && to <= last) return [from, to];
    throw cells.bad('free hands', `write bars between ${first} and ${last}, such as ${first}-${last}`);
  });
}

function musicOf(entries: readonly Entry[], name: string): Music {
  const count = entries.reduce((sum, { first, last }) => sum + last - first + 1, 0);
  if (count > MOST_PLAYED_BARS) throw new Refusal({ code: 'jumps.endless', most: MOST_PLAYED_BARS });
  const ticks = ticksFor(entries.map(({ beats }) => beats));
  const starts = startsOf(entries);
  const silences = entries.flatMap((entry, index) => silencesOf(entry, starts[index] ?? 0, ticks));
  const unsaid = entries.some(({ quartersPerMinute }) => quartersPerMinute === null);
  return {
    title: name,
    ticksPerQuarter: ticks.perQuarter,
    bars: entries.flatMap((entry) => barsOf(entry, ticks)),
    tempos: entries.map((entry, index): Tempo => tempoFrom(entry, starts[index] ?? 0)),
    movements: [0],
    order: [[0, count - 1]],
    afterJump: null,
    ambiguous: false,
    parts: [
      {
        id: 'typed',
        name,
        silences,
        pages: pagesOf(entries, starts),
        ownPages: true,
        instruments: [],
        transpositions: [],
      },
    ],
    remarks: unsaid ? [{ code: 'tempo.assumed', bar: null }] : [],
  };
}

/** Index of the first bar of each row. */
function startsOf(entries: readonly Entry[]): number[] {
  const starts: number[] = [];
  let next = 0;
  for (const { first, last } of entries) {
    starts.push(next);
    next += last - first + 1;
  }
  return starts;
}

function barsOf({ first, last, beats }: Entry, ticks: Ticks): Bar[] {
  const length = inTicks(beats, ticks);
  return Array.from({ length: last - first + 1 }, (_, index) => ({
    number: String(first + index),
    ticks: length,
  }));
}

function tempoFrom({ quartersPerMinute }: Entry, bar: number): Tempo {
  return { bar, at: 0, quartersPerMinute: quartersPerMinute ?? ASSUMED_TEMPO, source: 'typed' };
}

function pagesOf(entries: readonly Entry[], starts: readonly number[]): PageStart[] {
  return entries.map(({ page }, index) => ({ page, bar: starts[index] ?? 0 }));
}

function silencesOf({ first, last, beats, free }: Entry, start: number, ticks: Ticks): BarSilence[] {
  const length = inTicks(beats, ticks);
  const bars = Array.from({ length: last - first + 1 }, (_, index) => first + index);
  return bars.flatMap((bar, index): BarSilence[] =>
    free.some(([from, to]) => bar >= from && bar <= to) ? [[start + index, 0, length]] : [],
  );
}
