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
import { formatAcross, formatBare, formatDepth, formatFacing, type Units } from '../../document/measures.ts';
import type {
  Chair,
  Instrument,
  Millimetres,
  Piano,
  PlacedRecord,
  Player,
  Stand,
  StandSide,
} from '../../document/records.ts';
import { language } from '../../words/catalogue.ts';
import { msgid, ngettext, t } from '../../words/say.ts';
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
  const [distance, rest] = units === 'metric' ? [19, 78] : [25, 66];
  // German says shortly where a thing faces, and needs the room for longer notes.
  const faces = language() === 'de' ? 26 : 33;
  return {
    columns: [
      { title: t`Mark`, parts: 11, bold: true },
      { title: t`What`, parts: 37 },
      { title: t`Off centre`, parts: distance },
      { title: t`From edge`, parts: distance },
      { title: t`Faces`, parts: faces },
      { title: t`Lip`, parts: 12 },
      { title: t`Tilt`, parts: 10 },
      { title: t`Notes`, parts: rest - faces },
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
  const raised = level > 0 ? [t`on riser, +${formatBare(level, units)}`] : [];
  const stays = record.setup === null ? [t`stays for the whole concert`] : [];
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
      return [sizeWords(record, units), ...waiting(request, record.id)];
    case 'instrumentStand':
      return waiting(request, record.id);
    case 'seat':
      return [highWords(record, units)];
    case 'piano':
      return [...pianoNotes(record, units), LID_WORDS[record.lid]()];
    case 'riser':
      return [sizeWords(record, units)];
    case 'lamp':
      return [highWords(record, units), ...cableNotes(record, units)];
    case 'shape':
      return [highWords(record, units), record.fixed ? t`part of the building` : t`brought in`];
    case 'largeInstrument':
      return largeInstrumentNotes(record, units);
  }
}

const LID_WORDS: Readonly<Record<Piano['lid'], () => string>> = {
  full: () => t`lid fully open`,
  half: () => t`lid half open`,
  closed: () => t`lid closed`,
};

function highWords({ height }: Pick<Sized, 'height'>, units: Units): string {
  return t`${formatBare(height, units)} high`;
}

interface Sized {
  readonly width: Millimetres;
  readonly depth: Millimetres;
  readonly height: Millimetres;
}

/** "1200 × 600, 750 high" */
function sizeWords({ width, depth, height }: Sized, units: Units): string {
  return t`${sizeOf([width, depth], units)}, ${formatBare(height, units)} high`;
}

function playerNotes({ document, setup, units }: MarkedSetup, player: Player): string[] {
  const instruments = inSetup(document, setup, 'instrument').filter((each) => each.player === player.id);
  const plays = instruments.filter((each) => each.support === null).map(instrumentName);
  const changes = instruments.filter((each) => each.support !== null).map(instrumentName);
  const seat = player.chair
    ? t`${chairName(player.chair)}, ${formatBare(player.chair.height, units)} high`
    : t`stands`;
  return [
    ...(plays.length > 0 ? [plays.join(', ')] : []),
    seat,
    ...(changes.length > 0 ? [t`changes to ${changes.join(', ')}`] : []),
  ];
}

function standNotes(request: MarkedSetup, stand: Stand): string[] {
  const pair = stand.form === 'backToBack' ? [t`back to back: measured to the ridge`] : [];
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
  const told = [
    ...(reader ? [oneLine(reader.name) || t`reader`] : []),
    ngettext(msgid`${side.pagesAcross} page`, `${side.pagesAcross} pages`, side.pagesAcross),
    ...(side.turned ? [t`turned`] : []),
  ].join(', ');
  if (!pair) return [told];
  return [first ? t`front side: ${told}` : t`other side: ${told}`];
}

/** Which instruments wait on a stand or table. */
function waiting({ document, setup }: MarkedSetup, support: string): string[] {
  const names = inSetup(document, setup, 'instrument')
    .filter((each) => each.support === support)
    .map(instrumentName);
  return names.length > 0 ? [t`for ${names.join(', ')}`] : [];
}

/** What a chair is called within a sentence. */
export function chairName({ model }: Chair): string {
  const name = seatModel(model)?.name;
  return name === undefined ? t`seat` : lowerFirst(name);
}

/** Within a sentence; German nouns keep their capital. */
export function lowerFirst(words: string): string {
  if (language() === 'de') return words;
  return words.charAt(0).toLowerCase() + words.slice(1);
}

export function capitalised(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
