/** A table as a grid of cells that somebody types in, always with the same columns. */

import { MOST_ROWS } from '../limits.ts';
import { outcomeOf, Refusal, type Outcome } from '../problem.ts';
import { rowsOf } from './cells.ts';
import { refuseSpare, withColumns, type Column } from './columns.ts';

/** The tempo's column takes seconds, too. */
export const GRID_COLUMNS = [
  'page',
  'first bar',
  'last bar',
  'tempo',
  'beats',
  'free hands',
] as const satisfies readonly Column[];

/** Cells of a row, one for each of `GRID_COLUMNS`. */
export type GridRow = readonly string[];

/** Of text from a spreadsheet, whatever its columns and their order. Says which column it does not know. */
export function gridFrom(text: string): Outcome<GridRow[]> {
  return outcomeOf(() => {
    const all = rowsOf(text);
    const { columns: usual, rows } = withColumns(all);
    if (rows.length > MOST_ROWS) throw new Refusal({ code: 'table.rows', most: MOST_ROWS });
    const isNamed = rows.length < all.length;
    const isWide = rows.some(({ cells }) => cells.length > usual.length);
    const columns = !isNamed && isWide ? GRID_COLUMNS : usual;
    for (const row of rows) refuseSpare(row, columns.length);
    return rows.map(({ cells }) => gridRow(columns, cells));
  });
}

function gridRow(columns: readonly Column[], cells: readonly string[]): GridRow {
  const cell = (column: Column): string => cells[columns.indexOf(column)] ?? '';
  const seconds = cell('seconds');
  const asTempo = /[s:]/i.test(seconds) ? seconds : `${seconds} s`;
  return GRID_COLUMNS.map((column) =>
    column === 'tempo' && seconds !== '' && cell('tempo') === '' ? asTempo : cell(column),
  );
}

/** With the names of the columns as its first row, so that the grid's first row is row 2. Empty rows stay. */
export function textOfGrid(rows: readonly GridRow[]): string {
  return [GRID_COLUMNS, ...rows].map((row) => row.map(quoted).join('\t')).join('\n');
}

function quoted(cell: string): string {
  return /["\t\n\r]/.test(cell) ? `"${cell.replaceAll('"', '""').replace(/[\n\r]+/g, ' ')}"` : cell;
}
