/** What is told of each row: how far it sits, how it sees over the rows before it, and what it would need. */

import {
  CLEARANCE_BANDS,
  NAMED_CLEARANCES,
  type ClearanceLevel,
} from '../../checks/sightlines/rake-clearance.ts';
import type { FocusPoint } from '../../checks/sightlines/rake-focus.ts';
import { rakeFigures, type RakeRow } from '../../checks/sightlines/rake.ts';
import { find } from '../../document/document.ts';
import { formatBare, type Units } from '../../document/measures.ts';
import { t } from '../../words/say.ts';
import { oneLine } from '../text.ts';
import { clearanceWords } from './clearance-words.ts';
import { houseOnCut, type HouseCut } from './context.ts';

/** Of one row, in words without units; empty where there is no row to look over. */
export interface RowFigures {
  readonly row: string;
  /** From its eyes, and from those of the row before it (D), to what is looked at, level. */
  readonly away: string;
  readonly rowAhead: string;
  /** R, N and T of the pair of rows. */
  readonly height: string;
  readonly step: string;
  readonly rowDepth: string;
  /** C over the next row, and over the nearest head in line with its name. */
  readonly overNext: string;
  readonly inLine: string;
  readonly overInLine: string;
  /** The steps up to this row with which it would clear each of NAMED_CLEARANCES, the rows before it as they are. */
  readonly needed: readonly string[];
  /** An index of CLEARANCE_BANDS; null: nobody in line before it. */
  readonly level: ClearanceLevel | null;
  readonly sees: string;
}

export function rowFigures(row: RakeRow, { out }: Pick<FocusPoint, 'out'>, units: Units): RowFigures {
  const { oneRow, inLine, level } = row;
  const length = (value: number | undefined): string => (value === undefined ? '' : formatBare(value, units));
  return {
    row: row.name,
    away: formatBare(Math.abs(row.out - out), units),
    rowAhead: length(oneRow?.distance),
    height: length(oneRow?.height),
    step: length(oneRow?.riser),
    rowDepth: length(oneRow?.rowDepth),
    overNext: oneRow ? clearanceWords(oneRow.clearance, units) : '',
    inLine: inLine?.over ?? '',
    overInLine: inLine ? clearanceWords(inLine.clearance, units) : '',
    // Beside N, so that they compare.
    needed: NAMED_CLEARANCES.map((_, index) => {
      const needed = inLine?.needed[index];
      return oneRow && inLine && needed
        ? formatBare(oneRow.riser + (needed.riser - inLine.riser), units)
        : '';
    }),
    level,
    sees: seesWords(row),
  };
}

function seesWords({ ahead, oneRow, level }: RakeRow): string {
  if (ahead.length === 0) return t`nobody in front`;
  // What is looked at does not lie before the row in front.
  if (!oneRow) return '';
  return level === null ? t`between the heads of the next row` : CLEARANCE_BANDS[level].words;
}

export interface BlockFigures {
  readonly name: string;
  /** Whether the section shows it. What it does not show is looked at along its own middle line. */
  readonly drawn: boolean;
  readonly rows: readonly RowFigures[];
}

/** All blocks of the house, those that the section shows first. Empty when what it asks for is not there. */
export function sectionRows(request: HouseCut, units: Units): BlockFigures[] {
  const { document, setup, focus } = request;
  const shown = houseOnCut(request)?.rakes;
  if (!shown) return [];
  const told = new Set(shown.flatMap(({ blocks }) => blocks));
  const others = rakeFigures(document, setup, null, focus).filter(({ block }) => !told.has(block));
  return [
    ...shown.map((rake) => ({ ...rake, drawn: true })),
    ...others.map((rake) => ({
      ...rake,
      name: oneLine(find(document, rake.block)?.name ?? ''),
      drawn: false,
    })),
  ].map(({ name, drawn, rows, focus: point }) => ({
    name,
    drawn,
    rows: rows.map((row) => rowFigures(row, point, units)),
  }));
}
