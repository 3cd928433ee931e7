/** The table of marks: what stands where, in words a crew can set from. */

import { instrumentModel } from '../../catalogue/instruments.ts';
import { instrumentStandModel } from '../../catalogue/instrument-stands.ts';
import { largeInstrumentModel } from '../../catalogue/large-instruments.ts';
import { pianoModel } from '../../catalogue/pianos.ts';
import { seatModel } from '../../catalogue/seats.ts';
import { standModel } from '../../catalogue/stands.ts';
import { tableModel } from '../../catalogue/tables.ts';
import { find, inSetup, placedInSetup } from '../../document/document.ts';
import { floorHeightAt } from '../../document/levels.ts';
import { kindWord } from '../../document/labels.ts';
import { formatAcross, formatBare, formatDepth, formatFacing } from '../../document/measures.ts';
import type { Instrument, PlacedRecord, Player, Stand, StandSide } from '../../document/records.ts';
import { shortMarks } from '../plan/short-marks.ts';
import { oneLine } from '../text.ts';
import { cableNotes, cableRows } from './cable-rows.ts';
import type { PlotSheetRequest } from './request.ts';
import type { Table } from './table.ts';
import { largeInstrumentNotes, pianoNotes, sizeOf } from './which-end.ts';

/** What the words about a mark are made from. */
export type MarkedSetup = Pick<PlotSheetRequest, 'document' | 'setup' | 'units'>;

export function marksTable(request: MarkedSetup): Table {
  const { document, setup, units } = request;
  const records = placedInSetup(document, setup);
  const marks = shortMarks(records);
  // Feet, inches and quarters take more room than millimetres.
  const [distance, notes] = units === 'metric' ? [19, 45] : [25, 33];
  return {
    columns: [
      { title: 'Mark', parts: 11, bold: true },
      { title: 'What', parts: 37 },
      { title: 'Off centre', parts: distance },
      { title: 'From edge', parts: distance },
      { title: 'Faces', parts: 33 },
      { title: 'Lip', parts: 12 },
      { title: 'Tilt', parts: 10 },
      { title: 'Notes', parts: notes },
    ],
    rows: records.flatMap((record) => markRows(request, record, marks.get(record.id) ?? '')),
  };
}

/** The thing's own row, and under a lamp where its cable goes: the plan shows it, but nobody can lay it by eye. */
function markRows(request: MarkedSetup, record: PlacedRecord, mark: string): string[][] {
  const own = markRow(request, record, mark);
  if (record.kind !== 'lamp') return [own];
  const cable = cableRows(record, mark, request.units);
  return [own, ...cable.map((cells) => ['', ...cells, ...own.slice(1 + cells.length).map(() => '')])];
}

function markRow(request: MarkedSetup, record: PlacedRecord, mark: string): string[] {
  const { units } = request;
  const isStand = record.kind === 'stand';
  return [
    mark,
    whatItIs(record),
    formatAcross(record.x, units),
    formatDepth(record.y, units),
    turnsMatter(record) ? formatFacing(record.facing) : '',
    isStand ? formatBare(record.lip, units) : '',
    isStand ? `${Math.round(record.tilt)}°` : '',
    notesOf(request, record).join('; '),
  ];
}

/** A lamp or a peg looks the same from every side. */
export function turnsMatter(record: PlacedRecord): boolean {
  return record.kind !== 'lamp' && record.kind !== 'instrumentStand';
}

/** The name with the kind or model behind it: "Viola, player", "Orchestral stand". */
export function whatItIs(record: PlacedRecord): string {
  const model = modelName(record);
  const name = oneLine(record.name);
  const thing = model ?? kindWord(record.kind);
  if (name === '') return capitalised(thing);
  return name.toLowerCase() === thing.toLowerCase() ? name : `${name} (${lowerFirst(thing)})`;
}

/** What the catalogue calls the model; undefined where a record has none or an unknown one. */
export function modelName(record: PlacedRecord): string | undefined {
  switch (record.kind) {
    case 'stand':
      return standModel(record.model)?.name;
    case 'instrumentStand':
      return instrumentStandModel(record.model)?.name;
    case 'table':
      return tableModel(record.model)?.name;
    case 'seat':
      return seatModel(record.model)?.name;
    case 'piano':
      return pianoModel(record.model)?.name;
    case 'largeInstrument':
      return largeInstrumentModel(record.model)?.name;
    default:
      return undefined;
  }
}

export function instrumentName(instrument: Instrument): string {
  return oneLine(instrument.name) || (instrumentModel(instrument.model)?.name ?? instrument.model);
}

/** "back to back: measured to the ridge", "on riser, +200", and so on. */
export function notesOf(request: MarkedSetup, record: PlacedRecord): string[] {
  const { document, setup, units } = request;
  const level = record.kind === 'riser' ? 0 : floorHeightAt(document, setup, record);
  const raised = level > 0 ? [`on riser, +${formatBare(level, units)}`] : [];
  const stays = record.setup === null ? ['stays for the whole concert'] : [];
  return [...ownNotes(request, record), ...raised, ...stays];
}

function ownNotes(request: MarkedSetup, record: PlacedRecord): string[] {
  const { units } = request;
  switch (record.kind) {
    case 'player':
      return playerNotes(request, record);
    case 'stand':
      return standNotes(request, record);
    case 'table':
      return [
        `${sizeOf([record.width, record.depth], units)}, ${formatBare(record.height, units)} high`,
        ...waiting(request, record.id),
      ];
    case 'instrumentStand':
      return waiting(request, record.id);
    case 'seat':
      return [`${formatBare(record.height, units)} high`];
    case 'piano':
      return [
        ...pianoNotes(record, units),
        `lid ${record.lid === 'full' ? 'fully open' : record.lid === 'half' ? 'half open' : 'closed'}`,
      ];
    case 'riser':
      return [`${sizeOf([record.width, record.depth], units)}, ${formatBare(record.height, units)} high`];
    case 'lamp':
      return [`${formatBare(record.height, units)} high`, ...cableNotes(record, units)];
    case 'shape':
      return [
        `${formatBare(record.height, units)} high`,
        record.fixed ? 'part of the building' : 'brought in',
      ];
    case 'largeInstrument':
      return largeInstrumentNotes(record, units);
  }
}

function playerNotes({ document, setup, units }: MarkedSetup, player: Player): string[] {
  const instruments = inSetup(document, setup, 'instrument').filter((each) => each.player === player.id);
  const plays = instruments.filter((each) => each.support === null).map(instrumentName);
  const changes = instruments.filter((each) => each.support !== null).map(instrumentName);
  const seat = player.chair
    ? `${lowerFirst(seatModel(player.chair.model)?.name ?? 'seat')}, ${formatBare(player.chair.height, units)} high`
    : 'stands';
  return [
    ...(plays.length > 0 ? [plays.join(', ')] : []),
    seat,
    ...(changes.length > 0 ? [`changes to ${changes.join(', ')}`] : []),
  ];
}

function standNotes(request: MarkedSetup, stand: Stand): string[] {
  const pair = stand.form === 'backToBack' ? ['back to back: measured to the ridge'] : [];
  const readers = stand.sides.flatMap((side, index) =>
    readerNote(request, side, { pair: pair.length > 0, first: index === 0 }),
  );
  return [...pair, ...readers];
}

interface SideWords {
  readonly pair: boolean;
  readonly first: boolean;
}

function readerNote({ document }: MarkedSetup, side: StandSide, { pair, first }: SideWords): string[] {
  const reader = find(document, side.reader);
  if (!reader && side.pagesAcross === 0) return [];
  const pages = `${side.pagesAcross} ${side.pagesAcross === 1 ? 'page' : 'pages'}${side.turned ? ', turned' : ''}`;
  const where = pair ? (first ? 'front side: ' : 'other side: ') : '';
  return [`${where}${reader ? `${oneLine(reader.name) || 'reader'}, ` : ''}${pages}`];
}

/** Which instruments wait on a stand or table. */
function waiting({ document, setup }: MarkedSetup, support: string): string[] {
  const names = inSetup(document, setup, 'instrument')
    .filter((each) => each.support === support)
    .map(instrumentName);
  return names.length > 0 ? [`for ${names.join(', ')}`] : [];
}

export function lowerFirst(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}

export function capitalised(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
