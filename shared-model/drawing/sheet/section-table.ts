/** The C-values row by row with what they are computed from, as a table. */

import { clearanceWords } from '../section/clearance-words.ts';
import {
  CLEARANCE_BANDS,
  NAMED_CLEARANCES,
  type RowClearance,
} from '../../checks/sightlines/rake-clearance.ts';
import { rakeFigures, type BlockRake, type RakeRow } from '../../checks/sightlines/rake.ts';
import { find } from '../../document/document.ts';
import { formatBare, formatLength, type Units } from '../../document/measures.ts';
import { oneLine } from '../text.ts';
import type { PlotSheetRequest } from './request.ts';
import type { Column, Table } from './table.ts';

/** Rows that look over another; the focus is the platform's edge. No rows: nothing to look over. */
export function rakeTable({ document, setup, units }: PlotSheetRequest): Table {
  const rakes = rakeFigures(document, setup, null);
  const nameOf = ({ block }: BlockRake): string =>
    rakes.length > 1 ? `${oneLine(find(document, block)?.name ?? '')} ` : '';
  const rows = rakes.flatMap((rake) =>
    rake.rows.flatMap((row) => (row.oneRow ? [cellsOf(nameOf(rake), row, row.oneRow, units)] : [])),
  );
  return { columns: columnsOf(units), rows };
}

function columnsOf(units: Units): Column[] {
  const figure = (title: string, parts: number): Column => ({ title, parts, align: 'end' });
  return [
    { title: 'Row', parts: 32, bold: true },
    figure('D', 15),
    figure('R', 14),
    figure('N', 13),
    figure('T', 13),
    figure('C next row', 14),
    { title: 'Head in line', parts: 14 },
    figure('C over it', 14),
    ...NAMED_CLEARANCES.map((clearance) => figure(`N for ${formatLength(clearance, units)}`, 15)),
    { title: 'The row sees', parts: 38 },
  ];
}

function cellsOf(block: string, row: RakeRow, next: RowClearance, units: Units): string[] {
  return [
    `${block}${row.name}`,
    ...[next.distance, next.height, next.riser, next.rowDepth].map((length) => formatBare(length, units)),
    clearanceWords(next.clearance, units),
    row.inLine?.over ?? '',
    row.inLine ? clearanceWords(row.inLine.clearance, units) : '',
    ...neededSteps(row, next, units),
    row.level === null ? 'between the heads of the next row' : CLEARANCE_BANDS[row.level].words,
  ];
}

/** How high the step up to this row would have to be, the rows before it as they are: beside N, so that they compare. */
function neededSteps({ inLine }: RakeRow, next: RowClearance, units: Units): string[] {
  if (!inLine) return NAMED_CLEARANCES.map(() => '');
  return inLine.needed.map(({ riser }) => formatBare(next.riser + (riser - inLine.riser), units));
}
