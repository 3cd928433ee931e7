/** What stands in the columns of the rows' figures, and how they are set so that they keep apart. */

import type { RakeRow } from '../../checks/sightlines/rake.ts';
import { allOf } from '../../document/document.ts';
import type { Millimetres } from '../../document/records.ts';
import { t } from '../../words/say.ts';
import { LEADING, TEXT } from '../style.ts';
import { clearanceWords } from './clearance-words.ts';
import type { SectionContext } from './context.ts';

/** One line of figures, the same in all tables of a drawing. */
export interface FigureLine {
  readonly title: string;
  readonly textOf: (row: RakeRow) => string;
}

export interface Columns {
  readonly lines: readonly FigureLine[];
  /** Figures are turned where they have no room between their rows. */
  readonly turned: boolean;
  /** Every how many rows there is a column. */
  readonly every: number;
  /** Of a column, and of a line of figures in it, mm on paper. */
  readonly width: number;
  readonly figureHeight: number;
  /** Whether blocks have their names over their columns: not where the house is one block. */
  readonly named: boolean;
}

export const TYPE = { size: TEXT.small, weight: 'regular' } as const;
export const NAME_TYPE = { size: TEXT.small, weight: 'bold' } as const;
/** A line of text, the air between texts, and the radius of the disc under a column, mm on paper. */
export const LINE = TEXT.small * LEADING;
export const AIR = 1.1;
export const DISC = 1.15;

/** Stands for a figure that there is none of. */
export const NONE = '–';

export function columnsOf(context: SectionContext): Columns {
  const { measure, rakes, document } = context;
  const lines = figureLines(context);
  const rows = rakes.flatMap((rake) => rake.rows);
  const widestOf = (widths: readonly number[]): number => widths.reduce((a, b) => Math.max(a, b), 0) + AIR;
  const figure = widestOf(
    rows.flatMap((row) => lines.map(({ textOf }) => measure(textOf(row), TYPE.size, TYPE.weight))),
  );
  const name = widestOf(rows.map((row) => measure(row.name, NAME_TYPE.size, NAME_TYPE.weight)));
  const named = allOf(document, 'seatBlock').length > 1;
  const apart = rowsApart(context);
  const level = Math.max(figure, name);
  if (apart >= level) return { lines, turned: false, every: 1, width: level, figureHeight: LINE, named };
  const width = Math.max(LINE, name);
  const every = Math.max(1, Math.ceil(width / Math.max(apart, 1e-6)));
  return { lines, turned: true, every, width, figureHeight: figure, named };
}

/** Of the whole table of a block, mm on paper. */
export function tableHeight({ lines, figureHeight, named }: Columns): number {
  return (named ? LINE + AIR : 0) + LINE + lines.length * figureHeight + 2 * DISC + AIR;
}

function figureLines({ rakes, units, figuresBeside }: SectionContext): FigureLine[] {
  if (figuresBeside) return [];
  const unit = units === 'metric' ? 'mm' : 'in';
  const figure = (clearance: Millimetres | undefined): string =>
    clearance === undefined ? NONE : clearanceWords(clearance, units);
  const staggered = rakes.some(({ rows }) =>
    rows.some(({ oneRow, inLine }) => oneRow?.over !== inLine?.over),
  );
  const next: FigureLine = {
    title: staggered ? t`C over the next row, ${unit}` : `C, ${unit}`,
    textOf: ({ oneRow }) => figure(oneRow?.clearance),
  };
  const inLine: FigureLine = {
    title: t`C over the head in line, ${unit}`,
    textOf: (row) => figure(row.inLine?.clearance),
  };
  return staggered ? [next, inLine] : [next];
}

/** Between the nearest two rows of a block, mm on paper. */
function rowsApart({ rakes, scale }: SectionContext): number {
  let least = Infinity;
  for (const { rows } of rakes) {
    rows.forEach(({ out }, index) => {
      const before = rows[index - 1];
      if (before) least = Math.min(least, Math.abs(out - before.out) / scale);
    });
  }
  return least;
}
