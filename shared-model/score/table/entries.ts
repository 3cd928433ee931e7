/** Rows of a table as typed: what each says of a page and its bars. */

import { compare, decimal, fraction, type Fraction } from '../fraction.ts';
import { FASTEST_TEMPO, LONGEST_PERFORMANCE, MOST_ROWS, MOST_TABLE, SLOWEST_TEMPO } from '../limits.ts';
import { Refusal } from '../problem.ts';
import { rowsOf } from './cells.ts';
import { isAll } from './bar-cells.ts';
import { columnWords, refuseSpare, withColumns, type Column } from './columns.ts';
import { t } from '../../words/say.ts';

/** How fast, or how long the row takes in all. */
export type Pace = { readonly quartersPerMinute: number } | { readonly seconds: number };

export interface Entry {
  /** Line of the text, from 1: the row as the spreadsheet counts it. */
  readonly row: number;
  readonly page: number;
  readonly first: number;
  readonly last: number;
  /** Quarters in each bar; null: not said. */
  readonly beats: Fraction | null;
  /** Null: as before. */
  readonly pace: Pace | null;
  /** Printed numbers. */
  readonly free: readonly (readonly [number, number])[];
}

/** Throws `Refusal`, which names the row and the column. */
export function entriesOf(text: string): Entry[] {
  if (text.length > MOST_TABLE) throw new Refusal({ code: 'table.rows', most: MOST_ROWS });
  const { columns, rows } = withColumns(rowsOf(text));
  if (rows.length > MOST_ROWS) throw new Refusal({ code: 'table.rows', most: MOST_ROWS });
  return rows.map((row) => {
    refuseSpare(row, columns.length);
    return entryOf(new Cells(row.line, columns, row.cells));
  });
}

const MOST_BAR = 99_999;
const MOST_PAGE = 999;

/** The cells of one row, by column. */
class Cells {
  constructor(
    readonly row: number,
    private readonly columns: readonly Column[],
    private readonly cells: readonly string[],
  ) {}

  text(column: Column): string {
    return this.cells[this.columns.indexOf(column)] ?? '';
  }

  bad(column: Column, advice: string): Refusal {
    const given = this.text(column).slice(0, 40);
    return new Refusal({ code: 'table.cell', row: this.row, column: columnWords(column), given, advice });
  }

  /** A whole number. */
  whole(column: Column, least: number, most: number): number {
    const text = this.text(column);
    const number = /^\d{1,6}$/.test(text) ? Number(text) : NaN;
    if (number >= least && number <= most) return number;
    throw this.bad(column, t`write a whole number from ${least} to ${most}`);
  }
}

function entryOf(cells: Cells): Entry {
  const first = cells.whole('first bar', 0, MOST_BAR);
  const last = cells.whole('last bar', 0, MOST_BAR);
  if (last < first)
    throw cells.bad('last bar', t`the first bar is ${first}, so it has to be ${first} or more`);
  return {
    row: cells.row,
    page: cells.whole('page', 1, MOST_PAGE),
    first,
    last,
    beats: beatsOf(cells),
    pace: paceOf(cells),
    free: freeBars(cells, first, last),
  };
}

function beatsOf(cells: Cells): Fraction | null {
  const text = cells.text('beats');
  if (text === '') return null;
  const beats = decimal(text.replace(',', '.'));
  if (beats && beats.n > 0 && compare(beats, fraction(64)) <= 0) return beats;
  throw cells.bad('beats', t`write the quarters in a bar, such as 3 or 4.5`);
}

/** The tempo's column takes seconds as well: "40 s", "1:20". */
function paceOf(cells: Cells): Pace | null {
  const [tempo, time] = [cells.text('tempo'), cells.text('seconds')];
  if (tempo !== '' && time !== '')
    throw cells.bad('seconds', t`the row gives a tempo, too; leave one of them out`);
  if (time !== '') return timed(cells, 'seconds', secondsOf(time));
  if (tempo === '') return null;
  if (/s|:/i.test(tempo)) return timed(cells, 'tempo', secondsOf(tempo));
  const quartersPerMinute = numberOf(tempo);
  if (quartersPerMinute !== null && quartersPerMinute >= SLOWEST_TEMPO && quartersPerMinute <= FASTEST_TEMPO)
    return { quartersPerMinute };
  throw cells.bad(
    'tempo',
    t`write ${SLOWEST_TEMPO} to ${FASTEST_TEMPO} quarters a minute, or seconds as 40 s`,
  );
}

function timed(cells: Cells, column: Column, seconds: number | null): Pace {
  if (seconds !== null && seconds > 0 && seconds <= LONGEST_PERFORMANCE) return { seconds };
  throw cells.bad(column, t`write the time as 75, 75.5 or 1:15`);
}

/** "75", "75.5 s", "75,5", "1:15", "1:02:03". */
function secondsOf(text: string): number | null {
  const plain = text.replace(/\s*s(?:ec(?:onds)?|ek(?:unden)?)?\.?$/i, '');
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
  if (isAll(text)) return [[first, last]];
  return text.split(/[,;]/).map((piece): [number, number] => {
    const [, begin, end = begin] = /^\s*(\d{1,6})\s*(?:[-\u2013]\s*(\d{1,6})\s*)?$/.exec(piece) ?? [];
    const [from, to] = [Number(begin), Number(end)];
    if (from >= first && from <= to && to <= last) return [from, to];
    throw cells.bad('free hands', t`write bars between ${first} and ${last}, such as ${first}-${last}`);
  });
}
