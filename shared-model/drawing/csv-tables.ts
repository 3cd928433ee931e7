/** The marks of a setup, and what a whole concert needs, as rows for a spreadsheet. */

import { concertOf, placedInSetup, setupsOf, type Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import { formatAcross, formatDepth } from '../document/measures.ts';
import type { PlacedRecord } from '../document/records.ts';
import type { CsvCell } from './csv.ts';
import { shortMarks } from './plan/short-marks.ts';
import { cornersOf } from './sheet/cable-rows.ts';
import { countedThings } from './sheet/inventory.ts';
import { notesOf, turnsMatter, whatItIs, type MarkedSetup } from './sheet/marks-table.ts';

const MARK_COLUMNS = [
  'Mark',
  'What',
  'Off centre',
  'From edge',
  'x mm (stage left +)',
  'y mm (upstage +)',
  'Faces degrees (0 = house, towards stage left +)',
  'Lip mm',
  'Tilt degrees',
  'Notes',
];

/** As the table of marks on the plot, with the exact figures beside the crew's words. The first row names the columns. */
export function markRows(document: Document, setup: Id<'setup'>): CsvCell[][] {
  const marked: MarkedSetup = { document, setup, units: concertOf(document).units };
  const records = placedInSetup(document, setup);
  const marks = shortMarks(records);
  return [MARK_COLUMNS, ...records.flatMap((record) => rowsOf(marked, record, marks.get(record.id) ?? ''))];
}

function rowsOf(marked: MarkedSetup, record: PlacedRecord, mark: string): CsvCell[][] {
  const own: CsvCell[] = [
    mark,
    whatItIs(record),
    ...spotCells(marked, record),
    turnsMatter(record) ? record.facing : null,
    record.kind === 'stand' ? record.lip : null,
    record.kind === 'stand' ? record.tilt : null,
    notesOf(marked, record).join('; '),
  ];
  if (record.kind !== 'lamp') return [own];
  const corners = cornersOf(record);
  return [
    own,
    ...corners.map((corner, index): CsvCell[] => {
      const what = index === corners.length - 1 ? `Socket of ${mark}` : `Cable of ${mark} by`;
      return ['', what, ...spotCells(marked, corner), null, null, null, ''];
    }),
  ];
}

function spotCells({ units }: MarkedSetup, { x, y }: { readonly x: number; readonly y: number }): CsvCell[] {
  return [formatAcross(x, units), formatDepth(y, units), x, y];
}

/** How many of each thing every setup needs, and the most that are needed at once. The first row names the columns. */
export function inventoryRows(document: Document): CsvCell[][] {
  const setups = setupsOf(document);
  const counts = setups.map(({ id }) => countedThings(document, id));
  const things = new Set(counts.flatMap((counted) => [...counted.keys()]));
  const titles = setups.map(({ name, order }) => name || `Setup ${order}`);
  return [
    ['What', 'Most at once', ...titles],
    ...[...things].map((thing): CsvCell[] => {
      const each = counts.map((counted) => counted.get(thing) ?? 0);
      return [thing, each.reduce((most, count) => Math.max(most, count), 0), ...each];
    }),
  ];
}
