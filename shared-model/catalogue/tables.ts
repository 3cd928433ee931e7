/** Tables and trays. A record carries its own measures; these are what a new one starts with. */

import type { Millimetres } from '../document/records.ts';
import { t } from '../words/say.ts';
import { COMMON_PRACTICE, finder, type Model } from './sources.ts';

export interface TableModel extends Model {
  readonly width: Millimetres;
  readonly depth: Millimetres;
  readonly height: Millimetres;
}

const table = (
  id: string,
  name: () => string,
  [width, depth, height]: readonly [Millimetres, Millimetres, Millimetres],
): TableModel => ({
  id,
  get name() {
    return name();
  },
  width,
  depth,
  height,
  source: COMMON_PRACTICE,
});

export const TABLE_MODELS: readonly TableModel[] = [
  table('percussion-table', () => t`Percussion table`, [600, 400, 850]),
  table('trap-table', () => t`Trap table, padded`, [900, 500, 900]),
  table('stand-tray', () => t`Tray on a stand`, [450, 330, 850]),
  table('side-table', () => t`Side table`, [450, 450, 650]),
  table('trestle-table', () => t`Trestle table`, [1800, 760, 740]),
  table('lectern', () => t`Lectern`, [600, 450, 1150]),
];

export const tableModel = finder(TABLE_MODELS);
