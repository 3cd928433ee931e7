/**
 * The print pack of the demo concert beside pdfkit alone writing the same operators to a file; and what packs of 10 and of 100
 * sheets take of memory, each in a process of its own.
 */

import { spawnSync } from 'node:child_process';
import { createWriteStream, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { once } from 'node:events';
import { writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import PDFDocument from 'pdfkit';
import { documentOf, type Document } from '#model/document/document.ts';
import { housePlaces } from '#model/document/seating.ts';
import { countPack, packEntries, packSheets, type CountedPack } from '#model/drawing/pack/pack.ts';
import type { Sheet } from '#model/drawing/primitives.ts';
import { sheetToSvg } from '#model/drawing/to-svg.ts';
import { readDocument } from '#model/file-format/read.ts';
import { loadFaces } from '../../electron/services/fonts.ts';
import { packRequest, printPack, type PackOrder } from '../../electron/services/pack.ts';
import { paintPdfTo } from '../../electron/services/pdf-painter.ts';
import { letteringOf } from '../../electron/services/svg-lettering.ts';

const SHEETS = 30;
const ROUNDS = 9;
const NOW = new Date(0);
const META = { title: 'pack', author: '', created: NOW, language: 'en' };
const folder = mkdtempSync(join(tmpdir(), 'standlines-bench-'));
const [, , demoFile = '', wanted] = process.argv;

function demo(): Document {
  const read = readDocument(readFileSync(demoFile, 'utf8'));
  if (!read.ok) throw new Error(read.problem.message);
  return read.document;
}

/** The demo with so many views of the house that its pack has at least as many sheets as are asked for. */
function withViews(document: Document, count: number): Document {
  const places = housePlaces(document);
  const views = Array.from({ length: count }, (_, index) => places[(index * 7) % places.length]?.id ?? '');
  return documentOf(
    [...document.records.values()].map((record) =>
      record.kind === 'concert' ? { ...record, views: [...new Set(views)] } : record,
    ),
  );
}

function counted(request: ReturnType<typeof packRequest>): CountedPack {
  const steps = countPack(request);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** Entries, the usual ones in their order, that make just so many sheets. */
function orderOf(document: Document, sheets: number): PackOrder {
  const order: PackOrder = { document, paper: 'A4', scale: null, sheets: null, now: NOW };
  const names: string[] = [];
  let rest = sheets;
  for (const { entry, count } of counted(packRequest(order)).entries.filter(
    (each) => each.entry.kind !== 'cover',
  )) {
    if (count > rest) continue;
    rest -= count;
    names.push(entry.name);
  }
  if (rest > 0) throw new Error(`there are not ${sheets} sheets`);
  return { ...order, sheets: names };
}

type Call = readonly [name: string, args: readonly unknown[]];
type Drawing = Record<string, (...args: unknown[]) => unknown>;

/** What draws and writes; of calls that pdfkit makes for itself only the outer ones are kept. */
const DRAWING = [
  ...['addPage', 'moveTo', 'lineTo', 'bezierCurveTo', 'closePath', 'rect', 'clip', 'save', 'restore'],
  ...['rotate', 'fill', 'stroke', 'fillAndStroke', 'lineWidth', 'lineCap', 'lineJoin', 'dash', 'undash'],
  ...['fillColor', 'fontSize', 'font', 'text'],
];

async function recorded(draw: () => Promise<unknown>): Promise<Call[]> {
  const prototype = PDFDocument.prototype as unknown as Drawing;
  const own = Object.fromEntries(DRAWING.map((name) => [name, prototype[name]!]));
  const calls: Call[] = [];
  let depth = 0;
  for (const name of DRAWING) {
    prototype[name] = function (this: unknown, ...args: unknown[]) {
      if (depth === 0 && (name !== 'font' || typeof args[0] === 'string')) calls.push([name, args]);
      depth += 1;
      try {
        return own[name]!.apply(this, args);
      } finally {
        depth -= 1;
      }
    };
  }
  try {
    await draw();
  } finally {
    Object.assign(prototype, own);
  }
  return calls;
}

/** The same operators to a file by pdfkit alone: no tags, no bookmarks, no waiting. */
async function replayed(calls: readonly Call[]): Promise<void> {
  const faces = loadFaces();
  const document = new PDFDocument({
    autoFirstPage: false,
    font: faces.regular[0].font as unknown as string,
  });
  for (const face of [...faces.regular, ...faces.bold])
    document.registerFont(face.name, face.font as unknown as string);
  const file = createWriteStream(join(folder, 'replayed.pdf'));
  document.pipe(file);
  const drawing = document as unknown as Drawing;
  for (const [name, args] of calls) drawing[name]!(...args);
  document.end();
  await once(file, 'finish');
}

const toFile = () => createWriteStream(join(folder, 'pack.pdf'));

/** Processor time, ms. */
async function timed(task: () => Promise<unknown>): Promise<number> {
  globalThis.gc?.();
  const start = process.cpuUsage();
  await task();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
}

const median = (times: readonly number[]): number =>
  times.toSorted((a, b) => a - b)[times.length >> 1] ?? NaN;

async function toSvgs(sheets: readonly Sheet[]): Promise<void> {
  for (const [index, sheet] of sheets.entries())
    await writeFile(join(folder, `${index}.svg`), sheetToSvg(sheet, letteringOf(sheet).lettering));
}

async function speed(): Promise<void> {
  const order = orderOf(demo(), SHEETS);
  const checked = packRequest(order);
  /** Counted and drawn anew, what the checks say being known. */
  const drawn = async (): Promise<unknown> =>
    paintPdfTo(
      toFile(),
      Array.from(packSheets(checked, counted(checked)), ({ sheet }) => sheet),
      META,
    );
  const calls = await recorded(drawn);
  const sheets = Array.from(packSheets(checked, counted(checked)), ({ sheet }) => sheet);
  const painted = { pdf: [] as number[], svg: [] as number[] };
  const times: Record<'pdfkit' | 'drawn' | 'whole', number[]> = { pdfkit: [], drawn: [], whole: [] };
  for (let round = 0; round < ROUNDS; round++) {
    times.pdfkit.push(await timed(() => replayed(calls)));
    times.drawn.push(await timed(drawn));
    times.whole.push(await timed(() => printPack(order, toFile())));
    painted.pdf.push(await timed(() => paintPdfTo(toFile(), sheets, META)));
    painted.svg.push(await timed(() => toSvgs(sheets)));
  }
  const alone = median(times.pdfkit);
  const against = (time: number): string => `${time.toFixed(0)} ms, ${(time / alone).toFixed(2)} times`;
  console.log(
    `${SHEETS} sheets, ${calls.length} calls: pdfkit alone ${alone.toFixed(0)} ms; counted, drawn and tagged ` +
      `${against(median(times.drawn))}; with the checks of its setups ${against(median(times.whole))}`,
  );
  const [pdf, svg] = [median(painted.pdf), median(painted.svg)];
  console.log(
    `the same sheets once drawn: PDF ${pdf.toFixed(0)} ms; SVGs ${svg.toFixed(0)} ms, ${(svg / pdf).toFixed(2)} times`,
  );
}

/** Peak of the whole process, and of the heap after each sheet once garbage is gone. */
async function memory(sheets: number): Promise<void> {
  const order = orderOf(withViews(demo(), 30), sheets);
  let heap = 0;
  await printPack(order, toFile(), {
    progress: () => {
      globalThis.gc?.();
      heap = Math.max(heap, process.memoryUsage().heapUsed);
    },
  });
  const peak = process.resourceUsage().maxRSS / 1000;
  console.log(
    `${sheets} sheets: at most ${(heap / 1e6).toFixed(1)} MB in use, ${peak.toFixed(0)} MB for the process`,
  );
}

try {
  if (wanted !== undefined) await memory(Number(wanted));
  else {
    console.log(`packs: ${packEntries(demo()).length} entries in the demo concert`);
    await speed();
    for (const sheets of [10, 100]) {
      const self = process.argv[1] ?? '';
      spawnSync(process.execPath, ['--expose-gc', self, demoFile, String(sheets)], { stdio: 'inherit' });
    }
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
