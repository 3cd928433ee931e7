/** The marks of a setup, and what a whole concert needs, as rows for a spreadsheet. */

import { concertOf, placedInSetup, type Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import { formatAcross, formatDepth } from '../document/measures.ts';
import type { PlacedRecord } from '../document/records.ts';
import { normaliseFacing } from '../geometry/frame.ts';
import { t } from '../words/say.ts';
import type { CsvCell } from './csv.ts';
import { shortMarks } from './plan/short-marks.ts';
import { cornersOf } from './sheet/cable-rows.ts';
import { notesOf, turnsMatter, whatItIs, type MarkedSetup } from './sheet/marks-table.ts';
import { concertNeeds } from './sheet/needs.ts';
import { pieceOf } from './sheet/page-frame.ts';

const markColumns = (): string[] => [
  t`Mark`,
  t`What`,
  t`Off centre`,
  t`From edge`,
  t`x mm (stage left +)`,
  t`y mm (upstage +)`,
  t`Faces degrees (0 = house, towards stage left +, -180 to 180)`,
  t`Lip mm`,
  t`Tilt degrees`,
  t`Notes`,
  t`Piece`,
];
/** Of the whole concert: behind each row, so that a table that is cut or sorted still says which it is. */
const issueColumns = (): string[] => [t`Concert`, t`Date`, t`Revision`];

/** As the table of marks on the plot, with the exact figures beside the crew's words. The first row names the columns. */
export function markRows(document: Document, setup: Id<'setup'>): CsvCell[][] {
  const marked: MarkedSetup = { document, setup, units: concertOf(document).units };
  const records = placedInSetup(document, setup);
  const marks = shortMarks(records);
  const rows = records.flatMap((record) => rowsOf(marked, record, marks.get(record.id) ?? ''));
  const tail = [pieceOf({ document, setup }), ...issueCells(document)];
  return [[...markColumns(), ...issueColumns()], ...rows.map((row) => [...row, ...tail])];
}

function issueCells(document: Document): CsvCell[] {
  const { name, date, revision } = concertOf(document);
  return [name, date, revision];
}

function rowsOf(marked: MarkedSetup, record: PlacedRecord, mark: string): CsvCell[][] {
  const own: CsvCell[] = [
    mark,
    whatItIs(record),
    ...spotCells(marked, record),
    turnsMatter(record) ? normaliseFacing(record.facing) : null,
    record.kind === 'stand' ? record.lip : null,
    record.kind === 'stand' ? record.tilt : null,
    notesOf(marked, record).join('; '),
  ];
  if (record.kind !== 'lamp') return [own];
  const corners = cornersOf(record);
  return [
    own,
    ...corners.map((corner, index): CsvCell[] => {
      const what = index === corners.length - 1 ? t`Socket of ${mark}` : t`Cable of ${mark} by`;
      return ['', what, ...spotCells(marked, corner), null, null, null, ''];
    }),
  ];
}

function spotCells({ units }: MarkedSetup, { x, y }: { readonly x: number; readonly y: number }): CsvCell[] {
  return [formatAcross(x, units), formatDepth(y, units), x, y];
}

/**
 * The most of each thing that the programme needs at once, what the venue has and what is borrowed (empty where nobody counted),
 * what is missing, and what every piece needs; then the instruments, which players bring. The figures of the inventory sheet, so
 * that versions that are not played are left out. The first row names the columns.
 */
export function inventoryRows(document: Document): CsvCell[][] {
  const { setups, things, instruments } = concertNeeds(document);
  const titles = setups.map(({ id }) => pieceOf({ document, setup: id }));
  const tail = issueCells(document);
  return [
    [t`What`, t`Most at once`, t`Venue has`, t`Borrowed`, t`Missing`, ...titles, ...issueColumns()],
    ...things.map(({ what, needs, most, owned, borrowed, missing }): CsvCell[] => [
      ...[what, most, owned, borrowed, missing],
      ...[...needs, ...tail],
    ]),
    ...instruments.map(({ what, needs, most }): CsvCell[] => [
      ...[what, most, null, null, null],
      ...[...needs, ...tail],
    ]),
  ];
}
