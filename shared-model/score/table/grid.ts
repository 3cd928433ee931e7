/** A table as a grid of cells that somebody types in, always with the same columns. */

import { MOST_ROWS } from '../limits.ts';
import { outcomeOf, Refusal, type Outcome } from '../problem.ts';
import { rowsOf, type Row } from './cells.ts';
import { columnWords, refuseSpare, withColumns, type Column } from './columns.ts';
import { t } from '../../words/say.ts';

/** The tempo's column takes seconds, too. */
export const GRID_COLUMNS = [
  'page',
  'first bar',
  'last bar',
  'tempo',
  'beats',
  'free hands',
] as const satisfies readonly Column[];

/** Those of a table for one part of music that is there already: the music says the others. */
export const PART_COLUMNS = [
  'page',
  'first bar',
  'last bar',
  'free hands',
] as const satisfies readonly GridColumn[];

export type GridColumn = (typeof GRID_COLUMNS)[number];

/** Cells of a row, one for each of the grid's columns. */
export type GridRow = readonly string[];

/**
 * Of text from a spreadsheet, whatever its columns and their order. Says which column it does not know, and which is
 * none of the grid's and yet says something.
 */
export function gridFrom(text: string, wanted: readonly GridColumn[] = GRID_COLUMNS): Outcome<GridRow[]> {
  return outcomeOf(() => {
    const all = rowsOf(text);
    const { columns: usual, rows } = withColumns(all);
    if (rows.length > MOST_ROWS) throw new Refusal({ code: 'table.rows', most: MOST_ROWS });
    const columns = rows.length < all.length ? usual : unnamedColumns(rows, usual, wanted);
    for (const row of rows) refuseSpare(row, columns.length);
    return rows.map((row) => gridRow(row, columns, wanted));
  });
}

/** As many as the rows have: those of the grid, or those of a table that names none. */
function unnamedColumns(
  rows: readonly Row[],
  usual: readonly Column[],
  wanted: readonly GridColumn[],
): readonly Column[] {
  const width = rows.reduce((most, { cells }) => Math.max(most, cells.length), 0);
  if (width > usual.length) return GRID_COLUMNS;
  return wanted.length < usual.length && width <= wanted.length ? wanted : usual;
}

function gridRow({ line, cells }: Row, columns: readonly Column[], wanted: readonly GridColumn[]): GridRow {
  const cell = (column: Column): string => cells[columns.indexOf(column)] ?? '';
  const seconds = cell('seconds');
  const asTempo = /[s:]/i.test(seconds) ? seconds : `${seconds} s`;
  const all = GRID_COLUMNS.map((column) =>
    column === 'tempo' && seconds !== '' && cell('tempo') === '' ? asTempo : cell(column),
  );
  GRID_COLUMNS.forEach((column, index) => {
    if (!wanted.includes(column) && all[index]) throw saidAlready(line, column, all[index]);
  });
  return all.filter((_, index) => wanted.some((column) => column === GRID_COLUMNS[index]));
}

/** Of a column that counts only where there is no music yet. */
export function saidAlready(row: number, column: Column, given: string): Refusal {
  const advice = t`the music says it already; leave this cell empty`;
  return new Refusal({
    code: 'table.cell',
    row,
    column: columnWords(column),
    given: given.slice(0, 40),
    advice,
  });
}

/** With the names of the columns as its first row, so that the grid's first row is row 2. Empty rows stay. */
export function textOfGrid(rows: readonly GridRow[], columns: readonly GridColumn[] = GRID_COLUMNS): string {
  return [columns, ...rows].map((row) => row.map(quoted).join('\t')).join('\n');
}

function quoted(cell: string): string {
  return /["\t\n\r]/.test(cell) ? `"${cell.replaceAll('"', '""').replace(/[\n\r]+/g, ' ')}"` : cell;
}
