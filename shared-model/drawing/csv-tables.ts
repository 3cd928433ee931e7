/** The marks of a setup, and what a whole concert needs, as rows for a spreadsheet. */

import { concertOf, inSetup, placedInSetup, type Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import { formatAcross, formatDepth } from '../document/measures.ts';
import type { PlacedRecord, Setup } from '../document/records.ts';
import { stockCheck } from '../programme/stock-check.ts';
import { thingName } from '../programme/thing.ts';
import type { CsvCell } from './csv.ts';
import { shortMarks } from './plan/short-marks.ts';
import { cornersOf } from './sheet/cable-rows.ts';
import {
  capitalised,
  instrumentName,
  notesOf,
  turnsMatter,
  whatItIs,
  type MarkedSetup,
} from './sheet/marks-table.ts';

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

/**
 * How many of each thing every setup needs, the most that the programme needs at once, what the venue has and what is borrowed
 * (empty where nobody counted), and the most that is missing. The first row names the columns.
 */
export function inventoryRows(document: Document): CsvCell[][] {
  const { setups, lines } = stockCheck(document);
  const titles = setups.map(({ name, order }) => name || `Setup ${order}`);
  return [
    ['What', 'Most at once', 'Venue has', 'Borrowed', 'Missing', ...titles],
    ...lines.map(({ thing, most, owned, borrowed, short, needs }): CsvCell[] => [
      capitalised(thingName(thing)),
      ...[most, owned, borrowed],
      owned === null ? null : missingOf(setups, short),
      ...needs,
    ]),
    ...instrumentRows(document, setups),
  ];
}

/** Versions are tried beside the programme: what they lack is not missed. */
function missingOf(setups: readonly Setup[], short: readonly number[]): number {
  return mostOf(short.filter((_, index) => setups[index]?.variantOf === null));
}

/** Players bring them, so nobody has them in stock. */
function instrumentRows(document: Document, setups: readonly Setup[]): CsvCell[][] {
  const names = setups.map(({ id }) => inSetup(document, id, 'instrument').map(instrumentName));
  return [...new Set(names.flat())].map((name): CsvCell[] => {
    const needs = names.map((each) => each.filter((other) => other === name).length);
    const played = needs.filter((_, index) => setups[index]?.variantOf === null);
    return [capitalised(name), mostOf(played), null, null, null, ...needs];
  });
}

function mostOf(counts: readonly number[]): number {
  return counts.reduce((most, count) => Math.max(most, count), 0);
}
