/** The table of marks of a setup: from centre line and front edge, and by two tapes from corners of the platform. */

import { placedInSetup, platformOf } from '../../document/document.ts';
import { formatFine, type Units } from '../../document/measures.ts';
import type { Millimetres, PlacedRecord, Point } from '../../document/records.ts';
import { t } from '../../words/say.ts';
import { shortMarks } from '../plan/short-marks.ts';
import type { Block } from '../sheet/blocks.ts';
import { cornersOf } from '../sheet/cable-rows.ts';
import { whatItIs } from '../sheet/marks-table.ts';
import type { PlotSheetRequest } from '../sheet/request.ts';
import { marksSection, section, setupNotes, unitWords } from '../sheet/sections.ts';
import { tableBlocks, type Table } from '../sheet/table.ts';
import { plotRequestOf, textPages } from './pages.ts';
import type { EntryPages, PackEntry, PackRequest } from './request.ts';
import { tapeKey } from './tape-key.ts';
import {
  basesOf,
  checkWords,
  cornerPoints,
  roundingWords,
  taped,
  tapeWords,
  type Base,
  type FixedPoint,
  type TapedMark,
} from './tapes.ts';

export function marksPages(request: PackRequest, entry: PackEntry): EntryPages {
  const plot = plotRequestOf(request, entry, false);
  return textPages(request, entry, (width) => [
    ...marksSection(plot, width),
    ...setupNotes(plot, width),
    ...cornerSection(plot, width),
  ]);
}

function cornerSection(plot: PlotSheetRequest, width: number): Block[] {
  const { outline } = platformOf(plot.document);
  const points = cornerPoints(outline);
  const words = { title: t`Marks by two tapes`, intro: introOf(plot, points) };
  const table = tapedTable(plot, basesOf(points));
  if (table.rows.length === 0) return [];
  const blocks = [tapeKey(plot, points, outline, width), ...tableBlocks(table, width, plot, words.title)];
  return section(words, blocks, width, plot);
}

function introOf(plot: PlotSheetRequest, points: readonly FixedPoint[]): string {
  return t`${unitWords(plot)} along the floor, for setting without a square: hook a tape at each of the two points that a row names and bring them together on the platform’s side of the line between these points. Check: from a third point. ${roundingWords(tapesIn(plot, basesOf(points)), plot.units)} The points themselves are exact. ${pointWords(points, plot.units)}`;
}

function tapesIn({ document, setup, units }: PlotSheetRequest, bases: readonly Base[]): TapedMark[] {
  const records = placedInSetup(document, setup);
  const spots: readonly Point[] = records.flatMap((record) =>
    record.kind === 'lamp' ? [record, ...cornersOf(record)] : [record],
  );
  return spots.flatMap((spot) => taped(spot, bases, units) ?? []);
}

/** "A: 4000 SR, at edge." */
function pointWords(points: readonly FixedPoint[], units: Units): string {
  return points
    .map(({ letter, x, y }) => `${letter}: ${fineAcross(x, units)}, ${fineDepth(y, units)}.`)
    .join(' ');
}

function fineAcross(x: Millimetres, units: Units): string {
  if (x === 0) return t`on centre`;
  const length = fineLength(Math.abs(x), units);
  return x > 0 ? t`${length} SL` : t`${length} SR`;
}

function fineDepth(y: Millimetres, units: Units): string {
  if (y === 0) return t`at edge`;
  const length = fineLength(Math.abs(y), units);
  return y > 0 ? t`${length} US` : t`${length} DS`;
}

/** So fine that marks which are reckoned from these points come out where they are. */
function fineLength(length: Millimetres, units: Units): string {
  if (units === 'imperial') return formatFine(length, units, 64);
  return formatFine(length, units, Number.isInteger(length) ? 1 : 10);
}

/** Everything that has a mark, and under a lamp the corners of its cable and its socket. */
export function tapedTable(plot: PlotSheetRequest, bases: readonly Base[]): Table {
  const records = placedInSetup(plot.document, plot.setup);
  const marks = shortMarks(records);
  const tells = records.some((record) => taped(record, bases, plot.units)?.beyond);
  return {
    columns: [
      { title: t`Mark`, parts: 11, bold: true },
      { title: t`What`, parts: 52 },
      { title: t`First tape`, parts: 28, bold: true },
      { title: t`Second tape`, parts: 28, bold: true },
      { title: t`Check`, parts: 28 },
      ...(tells ? [{ title: t`Side`, parts: 24 }] : []),
    ],
    rows: records.flatMap((record) => {
      const mark = marks.get(record.id) ?? '';
      return [
        [mark, whatItIs(record), ...tapeCells(record, bases, plot.units)],
        ...cableCells(record, mark, { bases, units: plot.units }),
      ];
    }),
  };
}

interface Taping {
  readonly bases: readonly Base[];
  readonly units: Units;
}

function cableCells(record: PlacedRecord, mark: string, { bases, units }: Taping): string[][] {
  if (record.kind !== 'lamp') return [];
  const corners = cornersOf(record);
  return corners.map((corner, index) => [
    '',
    index === corners.length - 1 ? t`Socket of ${mark}` : t`Cable of ${mark} by`,
    ...tapeCells(corner, bases, units),
  ]);
}

function tapeCells(point: Point, bases: readonly Base[], units: Units): string[] {
  const tapes = taped(point, bases, units);
  if (!tapes) return ['', '', '', ''];
  const [a, b] = tapes.base;
  const side = tapes.beyond ? t`beyond ${a.letter}-${b.letter}` : '';
  return [...tapeWords(tapes, units), checkWords(tapes, units), side];
}
