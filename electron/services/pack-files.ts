/** A pack in other forms than one PDF: each sheet a picture, each setup a table and a plan, one file after the other. */

import type { Document } from '#model/document/document.ts';
import {
  chosenEntries,
  packEntries,
  usualEntries,
  type CountedPack,
  type PackSheet,
} from '#model/drawing/pack/pack.ts';
import { paperNamed } from '#model/drawing/papers.ts';
import { sheetToSvg } from '#model/drawing/to-svg.ts';
import { textOf } from './export.ts';
import type { PackFormat } from './pack-formats.ts';
import {
  notesOf,
  openPack,
  printOpened,
  type OpenedPack,
  type PackOrder,
  type PackWatch,
  type PrintedPack,
} from './pack.ts';
import { scratchFile } from './scratch-file.ts';
import { letteringOf } from './svg-lettering.ts';
import { openPngPainter, refuseTooManyDots, type ToPng } from './svg-to-png.ts';

export interface FilesOrder extends PackOrder {
  readonly formats: readonly PackFormat[];
  /** Of the pictures, dots per inch. */
  readonly dpi: number;
}

export const PDF_NAME = 'pack.pdf';

/** Where the files go. */
export interface FileTaker {
  /** Asked once, before anything is drawn: rejects when one of the files cannot be taken. */
  readonly willTake: (names: readonly string[]) => Promise<void>;
  readonly take: (name: string, bytes: Uint8Array) => Promise<void>;
}

/** Of the pictures and the PDF; without sheets when neither was asked for. */
export interface WrittenPack extends PrintedPack {
  readonly names: readonly string[];
}

/**
 * Hands every file to `taker`, one sheet after the other. What it has taken before a fault stays.
 * Throws `FaultError` as `printPack` does, or for a resolution that cannot be.
 */
export async function writePack(
  order: FilesOrder,
  taker: FileTaker,
  watch: PackWatch = {},
): Promise<WrittenPack> {
  if (order.formats.includes('png')) refuseTooManyDots(paperNamed(order.paper), order.dpi);
  const pack = hasSheets(order) ? await openPack(order, watch) : null;
  const data = dataFiles(order);
  const names = [...data.map(({ name }) => name), ...(pack ? sheetNames(order, pack.counted) : [])];
  await taker.willTake(names);
  for (const { name, text } of data) await taker.take(name, Buffer.from(text()));
  if (pack) await takeSheets(order, pack, taker);
  const { sheets, entries } = pack?.counted ?? { sheets: 0, entries: [] };
  return { sheets, entries, names, notes: pack ? notesOf(pack) : [] };
}

function hasSheets({ formats }: FilesOrder): boolean {
  return formats.some((format) => isPicture(format) || format === 'pdf');
}

function isPicture(format: PackFormat): format is 'svg' | 'png' {
  return format === 'svg' || format === 'png';
}

interface DataFile {
  readonly name: string;
  readonly text: () => string;
}

/** Of each setup that has a sheet in the pack. */
function dataFiles({ document, formats, sheets }: FilesOrder): DataFile[] {
  const setups = setupsByNumber(document, sheets);
  const plans = setups.map(({ number, setup }) => ({
    name: `plan-${number}.dxf`,
    text: () => textOf(document, setup, 'dxf'),
  }));
  const tables = setups.map(({ number, setup }) => ({
    name: `marks-${number}.csv`,
    text: () => textOf(document, setup, 'marks'),
  }));
  const inventory = setups
    .slice(0, 1)
    .map(({ setup }) => ({ name: 'inventory.csv', text: () => textOf(document, setup, 'inventory') }));
  return [
    ...(formats.includes('dxf') ? plans : []),
    ...(formats.includes('csv') ? [...tables, ...inventory] : []),
  ];
}

/** As the sheets number them: "2", its second version "2b". Those of the programme where no sheet of any setup is asked for. */
function setupsByNumber(document: Document, sheets: FilesOrder['sheets']) {
  const all = packEntries(document);
  const chosen = sheets === null ? null : chosenEntries(document, sheets);
  const entries = chosen && 'entries' in chosen ? chosen.entries : usualEntries(all);
  const shown = new Set(entries.map(({ setup }) => setup));
  const isOfSetups = entries.some(({ setup }) => setup !== null);
  return all.flatMap(({ kind, setup, name, usual }) =>
    kind === 'plot' && setup !== null && (isOfSetups ? shown.has(setup) : usual)
      ? [{ setup, number: name.slice('plot-'.length) }]
      : [],
  );
}

function sheetNames({ formats }: FilesOrder, { entries, sheets }: CountedPack): string[] {
  const names = entries.flatMap(({ entry, first, count }) =>
    Array.from({ length: count }, (_, index) => sheetName(entry.name, first + index, sheets)),
  );
  const pictures = formats.filter(isPicture);
  return [
    ...(formats.includes('pdf') ? [PDF_NAME] : []),
    ...names.flatMap((name) => pictures.map((format) => `${name}.${format}`)),
  ];
}

/** "03-plot-1": numbers are as long as the last one, so that folders list the sheets in their order. */
function sheetName(name: string, number: number, sheets: number): string {
  const digits = Math.max(2, String(sheets).length);
  return `${String(number).padStart(digits, '0')}-${name}`;
}

async function takeSheets(order: FilesOrder, pack: OpenedPack, taker: FileTaker): Promise<void> {
  const toPng = order.formats.includes('png') ? await openPngPainter() : null;
  const each = (sheet: PackSheet): Promise<void> => takePictures(order, pack, { sheet, taker, toPng });
  if (!order.formats.includes('pdf')) {
    for (const sheet of pack.sheets) await each(sheet);
    return;
  }
  const scratch = await scratchFile((sink) => printOpened(order, pack, sink, each));
  try {
    await taker.take(PDF_NAME, await scratch.read());
  } finally {
    await scratch.drop();
  }
}

interface Taking {
  readonly sheet: PackSheet;
  readonly taker: FileTaker;
  readonly toPng: ToPng | null;
}

async function takePictures(
  { formats, dpi }: FilesOrder,
  pack: OpenedPack,
  { sheet: { sheet, entry, number }, taker, toPng }: Taking,
): Promise<void> {
  if (!formats.some(isPicture)) return;
  const name = sheetName(entry.name, number, pack.counted.sheets);
  const { lettering, missing } = letteringOf(sheet);
  const svg = sheetToSvg(sheet, lettering);
  for (const character of missing) pack.missing.add(character);
  if (formats.includes('svg')) await taker.take(`${name}.svg`, Buffer.from(svg));
  if (toPng) await taker.take(`${name}.png`, toPng(svg, sheet, dpi));
}
