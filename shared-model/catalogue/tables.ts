/** Tables and trays. A record carries its own measures; these are what a new one starts with. */

import type { Millimetres } from '../document/records.ts';
import { COMMON_PRACTICE, finder, type Model } from './sources.ts';

export interface TableModel extends Model {
  readonly width: Millimetres;
  readonly depth: Millimetres;
  readonly height: Millimetres;
}

const table = (
  id: string,
  name: string,
  [width, depth, height]: readonly [Millimetres, Millimetres, Millimetres],
): TableModel => ({ id, name, width, depth, height, source: COMMON_PRACTICE });

export const TABLE_MODELS: readonly TableModel[] = [
  table('percussion-table', 'Percussion table', [600, 400, 850]),
  table('trap-table', 'Trap table, padded', [900, 500, 900]),
  table('stand-tray', 'Tray on a stand', [450, 330, 850]),
  table('side-table', 'Side table', [450, 450, 650]),
  table('trestle-table', 'Trestle table', [1800, 760, 740]),
  table('lectern', 'Lectern', [600, 450, 1150]),
];

export const tableModel = finder(TABLE_MODELS);
