/** What the whole concert needs, setup by setup, and where its lamps get their power. */

import { inSetup, placedInSetup, programmeOf } from '../../document/document.ts';
import { formatAcross, formatDepth, formatLength } from '../../document/measures.ts';
import type { Lamp, Setup } from '../../document/records.ts';
import { t } from '../../words/say.ts';
import { shortMarks } from '../plan/short-marks.ts';
import { paragraph, type Block } from '../sheet/blocks.ts';
import { cableLength, cornersOf } from '../sheet/cable-rows.ts';
import { concertNeeds } from '../sheet/needs.ts';
import { pieceOf } from '../sheet/page-frame.ts';
import { tableSection, unitWords } from '../sheet/sections.ts';
import type { Column, Table } from '../sheet/table.ts';
import { textPages } from './pages.ts';
import type { EntryPages, PackEntry, PackRequest } from './request.ts';

export function inventoryPages(request: PackRequest, entry: PackEntry): EntryPages {
  return textPages(request, entry, (width) => [
    ...tableSection(needWords(request), needTable(request), width, request),
    ...tableSection(instrumentWords(), instrumentTable(request), width, request),
    ...powerSection(request, width),
  ]);
}

/** To be ticked with a pen. */
const BOX = '☐';
/** More setups than these have no columns of their own. */
const MOST_COLUMNS = 8;

function needWords({ document }: PackRequest) {
  const pieces = shownSetups(document).map((setup, index) => `${index + 1}: ${pieceName(document, setup)}`);
  const which = pieces.length > 1 ? ` ${pieces.join('; ')}.` : '';
  const intro = t`How many of each thing every piece needs, and how many have to be there at once; what the venue has, what is borrowed, and what is missing, where stock was entered.`;
  return { title: t`Inventory`, intro: `${intro}${which}` };
}

function shownSetups(document: PackRequest['document']): Setup[] {
  const setups = programmeOf(document);
  return setups.length <= MOST_COLUMNS ? setups : [];
}

function pieceName(document: PackRequest['document'], { id }: Setup): string {
  return pieceOf({ document, setup: id });
}

const figure = (title: string, parts: number): Column => ({ title, parts, align: 'end' });

function needTable({ document }: PackRequest): Table {
  const shown = shownSetups(document);
  return {
    columns: [
      { title: t`What`, parts: 58, bold: true },
      ...shown.map((_, index) => figure(String(index + 1), 9)),
      { ...figure(t`At once`, 16), bold: true },
      figure(t`Venue`, 14),
      figure(t`Borrowed`, 18),
      figure(t`Missing`, 16),
      { title: t`There`, parts: 12 },
    ],
    rows: concertNeeds(document).things.map(({ what, needs, most, owned, borrowed, missing }) => [
      what,
      ...shown.map((_, index) => counted(needs[index])),
      String(most),
      owned === null ? '' : String(owned),
      borrowed === null ? '' : counted(borrowed),
      counted(missing ?? 0),
      BOX,
    ]),
  };
}

function counted(count: number | undefined): string {
  return count ? String(count) : '–';
}

const instrumentWords = () => ({
  title: t`Instruments`,
  intro: t`Players bring them unless agreed otherwise.`,
});

function instrumentTable({ document }: PackRequest): Table {
  const shown = shownSetups(document);
  return {
    columns: [
      { title: t`What`, parts: 58, bold: true },
      ...shown.map((_, index) => figure(String(index + 1), 9)),
      { ...figure(t`At once`, 16), bold: true },
      { title: t`There`, parts: 72 },
    ],
    rows: concertNeeds(document).instruments.map(({ what, needs, most }) => [
      what,
      ...shown.map((_, index) => counted(needs[index])),
      String(most),
      BOX,
    ]),
  };
}

function powerSection(request: PackRequest, width: number): Block[] {
  const rows = programmeOf(request.document).flatMap((setup) => powerRows(request, setup));
  const table: Table = {
    columns: [
      { title: t`Piece`, parts: 38 },
      { title: t`Lamp`, parts: 10, bold: true },
      { title: t`Stands at`, parts: 36 },
      { title: t`Cable`, parts: 22, align: 'end' },
      { title: t`Covered`, parts: 16 },
      { title: t`Socket at`, parts: 36 },
    ],
    rows,
  };
  const intro = t`${unitWords(request)}. ${socketWords(request)} Ratings, circuits and cables are the venue’s: have them looked at by whoever answers for them.`;
  return rows.length === 0
    ? [paragraph(t`No lamp is set in any piece, so no power is asked for on the platform.`, width, request)]
    : tableSection({ title: t`Power`, intro }, table, width, request);
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
      socket ? formatLength(cableLength(lamp), units) : t`none`,
      socket ? (lamp.cableCovered ? t`yes` : t`no`) : '',
      socket ? spot(socket) : t`by battery, or not said`,
    ];
  });
}

/** Cables that end at one spot use the sockets of one outlet. */
function socketWords({ document }: PackRequest): string {
  const most = programmeOf(document)
    .map(({ id }) => inSetup(document, id, 'lamp').filter(hasCable).length)
    .reduce((so, count) => Math.max(so, count), 0);
  return t`Sockets used at once: ${most}.`;
}

function hasCable(lamp: Lamp): boolean {
  return cornersOf(lamp).length > 0;
}
