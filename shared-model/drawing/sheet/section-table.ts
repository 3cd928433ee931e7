/** The C-values row by row with what they are computed from, as a table. */

import { NAMED_CLEARANCES } from '../../checks/sightlines/rake-clearance.ts';
import { rakeFigures, type BlockRake } from '../../checks/sightlines/rake.ts';
import { find } from '../../document/document.ts';
import { formatLength, type Units } from '../../document/measures.ts';
import { t } from '../../words/say.ts';
import { rowFigures, type RowFigures } from '../section/row-figures.ts';
import { oneLine } from '../text.ts';
import type { PlotSheetRequest } from './request.ts';
import type { Column, Table } from './table.ts';

/** Rows that look over another; the focus is the platform's edge. No rows: nothing to look over. */
export function rakeTable({ document, setup, units }: PlotSheetRequest): Table {
  const rakes = rakeFigures(document, setup, null);
  const nameOf = ({ block }: BlockRake): string =>
    rakes.length > 1 ? `${oneLine(find(document, block)?.name ?? '')} ` : '';
  const rows = rakes.flatMap((rake) =>
    rake.rows
      .filter(({ oneRow }) => oneRow !== null)
      .map((row) => cellsOf(nameOf(rake), rowFigures(row, rake.focus, units))),
  );
  return { columns: columnsOf(units), rows };
}

function columnsOf(units: Units): Column[] {
  const figure = (title: string, parts: number): Column => ({ title, parts, align: 'end' });
  return [
    { title: t`Row`, parts: 32, bold: true },
    figure('D', 15),
    figure('R', 14),
    figure('N', 13),
    figure('T', 13),
    figure(t`C next row`, 14),
    { title: t`Head in line`, parts: 14 },
    figure(t`C over it`, 14),
    ...NAMED_CLEARANCES.map((clearance) => figure(t`N for ${formatLength(clearance, units)}`, 15)),
    { title: t`The row sees`, parts: 38 },
  ];
}

function cellsOf(block: string, { row, ...told }: RowFigures): string[] {
  return [
    `${block}${row}`,
    told.rowAhead,
    told.height,
    told.step,
    told.rowDepth,
    told.overNext,
    told.inLine,
    told.overInLine,
    ...told.needed,
    told.sees,
  ];
}
