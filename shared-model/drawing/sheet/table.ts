/** Tables as blocks: a header that is repeated, rows whose cells wrap, columns that share the width. */

import { t } from '../../words/say.ts';
import { line, rectangle } from '../outline.ts';
import type { Palette } from '../palette.ts';
import type { Box, Primitive } from '../primitives.ts';
import { ASCENT, LEADING, WEIGHT } from '../style.ts';
import { fitted, oneLine, textLine, unbreakable, wrapped, type Type } from '../text.ts';
import { BODY, BODY_BOLD, gap, grouped, heading } from './blocks.ts';
import type { Block, Spot, TextTools } from './blocks.ts';

export interface Column {
  readonly title: string;
  /** Parts of the width that the column gets. */
  readonly parts: number;
  readonly align?: 'start' | 'end';
  readonly bold?: boolean;
}

export interface Table {
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly string[])[];
  /** Rather begun at once, as far as there is room, than kept whole. */
  readonly mayPart?: boolean;
}

const PAD_X = 1.5;
const PAD_Y = 0.9;
const MOST_LINES = 6;

/**
 * A table as wide as `width`, row by row; no blocks when it has no rows. Where it goes on in another column, the title
 * is said again over its header.
 */
export function tableBlocks(table: Table, width: number, tools: TextTools, title = ''): Block[] {
  if (table.rows.length === 0) return [];
  const columns = layOut(table, width, tools);
  const header = headerBlock(columns, width, tools);
  const again = title === '' ? {} : { again: heading(t`${title}, continued`, width, tools) };
  const rows = table.rows.map((cells, index) => ({
    ...rowBlock(columns, cells, { width, tools, index }),
    header,
    ...again,
    mayPart: table.mayPart ?? false,
  }));
  return [...rows, gap(2)];
}

interface PlacedColumn extends Column {
  readonly x: number;
  readonly width: number;
}

/** Columns share the width by their parts, but none gets less than its longest word or figure needs. */
function layOut({ columns, rows }: Table, width: number, tools: TextTools): PlacedColumn[] {
  const needs = columns.map((column, index) => neededWidth(column, rows, { index, tools }));
  const widths = shared(columns, needs, width);
  let x = 0;
  return columns.map((column, index) => {
    const placed = { ...column, x, width: widths[index] ?? 0 };
    x += placed.width;
    return placed;
  });
}

interface CellsOf {
  readonly index: number;
  readonly tools: TextTools;
}

function neededWidth(column: Column, rows: Table['rows'], { index, tools }: CellsOf): number {
  const widest = (text: string, { size, weight }: Type): number =>
    unbreakable(oneLine(text)).reduce((most, word) => Math.max(most, tools.measure(word, size, weight)), 0);
  const cells = rows.reduce((most, row) => Math.max(most, widest(row[index] ?? '', typeOf(column))), 0);
  return Math.max(cells, widest(column.title, BODY_BOLD)) + 2 * PAD_X + 0.01;
}

/** A word longer than this share of the table is broken rather than given room. */
const WIDEST_SHARE = 0.3;

/** Each column's need is met first from those that have more than theirs. */
function shared(columns: readonly Column[], needs: readonly number[], width: number): number[] {
  const parts = columns.reduce((sum, column) => sum + column.parts, 0);
  const even = columns.map((column) => (column.parts / parts) * width);
  const least = needs.map((need) => Math.min(need, WIDEST_SHARE * width));
  const short = even.reduce((sum, own, index) => sum + Math.max(0, (least[index] ?? 0) - own), 0);
  const spare = even.reduce((sum, own, index) => sum + Math.max(0, own - (least[index] ?? 0)), 0);
  const given = spare > 0 ? Math.min(1, short / spare) : 0;
  const met = short > 0 ? Math.min(1, spare / short) : 1;
  return even.map((own, index) => {
    const lack = (least[index] ?? 0) - own;
    return lack > 0 ? own + lack * met : own + lack * given;
  });
}

function headerBlock(columns: readonly PlacedColumn[], width: number, tools: TextTools): Block {
  const cells = columns.map((column) => cellLines(column.title, column, BODY_BOLD, tools));
  const height = heightOf(cells);
  return {
    height: height + 0.6,
    keepsWithNext: true,
    draw: (at) => [
      grouped(
        'row',
        columns.map((column, index) =>
          drawCell(column, cells[index] ?? [], at, {
            type: BODY_BOLD,
            colour: tools.palette.ink,
            role: 'headerCell',
          }),
        ),
      ),
      rule(at, width, { y: at.y + height, colour: tools.palette.ink, weight: WEIGHT.fine }),
    ],
  };
}

interface RowContext {
  readonly width: number;
  readonly tools: TextTools;
  readonly index: number;
}

function rowBlock(columns: readonly PlacedColumn[], texts: readonly string[], row: RowContext): Block {
  const { width, tools, index } = row;
  const cells = columns.map((column, at) => cellLines(texts[at] ?? '', column, typeOf(column), tools));
  const height = heightOf(cells);
  const head = headOf(columns, cells);
  return {
    height,
    draw: (at) => [
      ...bandUnder(index, { ...at, width, height }, tools.palette),
      grouped(
        'row',
        columns.map((column, cell) =>
          drawCell(column, cells[cell] ?? [], at, {
            type: typeOf(column),
            colour: tools.palette.ink,
            role: cell === head ? 'rowHeader' : 'cell',
          }),
        ),
      ),
      rule(at, width, { y: at.y + height, colour: tools.palette.hairline, weight: WEIGHT.hair }),
    ],
  };
}

/** Which cell tells what a row is of: the first that stands out, else the first that has words. */
function headOf(columns: readonly Column[], cells: readonly (readonly string[])[]): number {
  const hasWords = (index: number): boolean => (cells[index] ?? []).some((line) => line !== '');
  const bold = columns.findIndex((column, index) => column.bold && hasWords(index));
  return bold >= 0 ? bold : columns.findIndex((_, index) => hasWords(index));
}

function typeOf(column: Column): Type {
  return column.bold ? BODY_BOLD : BODY;
}

/** At most a few lines; the last one says with an ellipsis that there was more. */
function cellLines(text: string, column: PlacedColumn, type: Type, { measure }: TextTools): string[] {
  const width = column.width - 2 * PAD_X;
  const lines = wrapped(text, width, type, measure);
  if (lines.length <= MOST_LINES) return lines;
  const rest = lines.slice(MOST_LINES - 1).join(' ');
  return [...lines.slice(0, MOST_LINES - 1), fitted(`${rest}…`, width, type, measure)];
}

function heightOf(cells: readonly (readonly string[])[]): number {
  const lines = cells.reduce((most, cell) => Math.max(most, cell.length), 1);
  return lines * BODY.size * LEADING + 2 * PAD_Y;
}

interface CellLook {
  readonly type: Type;
  readonly colour: string;
  readonly role: 'cell' | 'headerCell' | 'rowHeader';
}

function drawCell(column: PlacedColumn, lines: readonly string[], at: Spot, look: CellLook): Primitive {
  const anchor = column.align ?? 'start';
  const x = at.x + column.x + (anchor === 'start' ? PAD_X : column.width - PAD_X);
  const { type, colour, role } = look;
  const texts = lines.map((words, index) =>
    textLine(
      words,
      { x, y: at.y + PAD_Y + type.size * (ASCENT + 0.1 + LEADING * index) },
      { ...type, colour, anchor },
    ),
  );
  return grouped(role, texts);
}

/** Every second row; where the tint is as white as the paper, nothing that would lie over the rule above. */
function bandUnder(index: number, box: Box, { tableTint, paper }: Palette): Primitive[] {
  if (index % 2 === 0 || tableTint === paper) return [];
  return [{ kind: 'path', path: rectangle(box), fill: tableTint }];
}

function rule(
  { x }: Spot,
  width: number,
  { y, colour, weight }: { readonly y: number; readonly colour: string; readonly weight: number },
): Primitive {
  return { kind: 'path', path: line({ x, y }, { x: x + width, y }), stroke: { colour, width: weight } };
}
