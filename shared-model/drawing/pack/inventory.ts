/** What the whole concert needs, setup by setup, and where its lamps get their power. */

import { inSetup, placedInSetup, programmeOf } from '../../document/document.ts';
import { formatAcross, formatDepth, formatLength } from '../../document/measures.ts';
import type { Lamp, Setup } from '../../document/records.ts';
import { shortMarks } from '../plan/short-marks.ts';
import { paragraph, type Block } from '../sheet/blocks.ts';
import { cableLength, cornersOf } from '../sheet/cable-rows.ts';
import { countedThings } from '../sheet/inventory.ts';
import { pieceOf } from '../sheet/page-frame.ts';
import { tableSection, unitWords } from '../sheet/sections.ts';
import type { Column, Table } from '../sheet/table.ts';
import { textPages } from './pages.ts';
import type { EntryPages, PackEntry, PackRequest } from './request.ts';

export function inventoryPages(request: PackRequest, entry: PackEntry): EntryPages {
  return textPages(request, entry, (width) => [
    ...tableSection(needWords(request), needTable(request), width, request),
    ...powerSection(request, width),
  ]);
}

/** To be ticked with a pen. */
const BOX = '☐';
/** More setups than these have no columns of their own. */
const MOST_COLUMNS = 8;

function needWords({ document }: PackRequest) {
  const pieces = shownSetups(document).map((setup, index) => `${index + 1}: ${pieceName(document, setup)}`);
  const which = pieces.length > 1 ? ` Pieces: ${pieces.join('; ')}.` : '';
  return {
    title: 'Inventory',
    intro: `How many of each thing every piece needs, and how many have to be there at once. Players bring what is named as an instrument unless agreed otherwise.${which}`,
  };
}

function shownSetups(document: PackRequest['document']): Setup[] {
  const setups = programmeOf(document);
  return setups.length <= MOST_COLUMNS ? setups : [];
}

function pieceName(document: PackRequest['document'], { id }: Setup): string {
  return pieceOf({ document, setup: id });
}

function needTable({ document }: PackRequest): Table {
  const shown = shownSetups(document);
  const counts = programmeOf(document).map(({ id }) => countedThings(document, id));
  const things = [...new Set(counts.flatMap((counted) => [...counted.keys()]))];
  const figure = (title: string, parts: number): Column => ({ title, parts, align: 'end' });
  return {
    columns: [
      { title: 'What', parts: 70, bold: true },
      ...shown.map((_, index) => figure(String(index + 1), 10)),
      { ...figure('At once', 16), bold: true },
      { title: 'There', parts: 12 },
    ],
    rows: things.map((thing) => {
      const each = counts.map((counted) => counted.get(thing) ?? 0);
      const most = each.reduce((so, count) => Math.max(so, count), 0);
      return [thing, ...shown.map((_, index) => String(each[index] || '–')), String(most), BOX];
    }),
  };
}

function powerSection(request: PackRequest, width: number): Block[] {
  const rows = programmeOf(request.document).flatMap((setup) => powerRows(request, setup));
  const table: Table = {
    columns: [
      { title: 'Piece', parts: 38 },
      { title: 'Lamp', parts: 10, bold: true },
      { title: 'Stands at', parts: 36 },
      { title: 'Cable', parts: 22, align: 'end' },
      { title: 'Covered', parts: 16 },
      { title: 'Socket at', parts: 36 },
    ],
    rows,
  };
  const intro = `${unitWords(request)}. ${socketWords(request)} Ratings, circuits and cables are the venue’s: have them looked at by whoever answers for them.`;
  return rows.length === 0
    ? [paragraph('No lamp is set in any piece, so no power is asked for on the platform.', width, request)]
    : tableSection({ title: 'Power', intro }, table, width, request);
}

function powerRows({ document, units }: PackRequest, setup: Setup): string[][] {
  const marks = shortMarks(placedInSetup(document, setup.id));
  return inSetup(document, setup.id, 'lamp').map((lamp) => {
    const socket = cornersOf(lamp).at(-1);
    const spot = ({ x, y }: { x: number; y: number }): string =>
      `${formatAcross(x, units)}, ${formatDepth(y, units)}`;
    return [
      pieceName(document, setup),
      marks.get(lamp.id) ?? '',
      spot(lamp),
      socket ? formatLength(cableLength(lamp), units) : 'none',
      socket ? (lamp.cableCovered ? 'yes' : 'no') : '',
      socket ? spot(socket) : 'by battery, or not said',
    ];
  });
}

/** Cables that end at one spot use the sockets of one outlet. */
function socketWords({ document }: PackRequest): string {
  const most = programmeOf(document)
    .map(({ id }) => inSetup(document, id, 'lamp').filter(hasCable).length)
    .reduce((so, count) => Math.max(so, count), 0);
  return `Sockets used at once: ${most}.`;
}

function hasCable(lamp: Lamp): boolean {
  return cornersOf(lamp).length > 0;
}
