/** Forty pages of a part as a booklet, beside the same pages copied unchanged with the same library. */

import { PDFDocument } from '@cantoo/pdf-lib';
import { pagesOf, ridgeBooklet } from '#model/pages/bindings/make.ts';
import { renderBooklet, type BookletJob } from '../../electron/services/booklet.ts';
import { openPartPdf, type OpenedPart } from '../../electron/services/part-pdf.ts';
import { pagesUnder, type Placement } from '../../electron/services/booklet-impose.ts';
import { paintPdf } from '../../electron/services/pdf-painter.ts';
import type { Primitive, Sheet } from '#model/drawing/primitives.ts';
import { circle, line } from '#model/drawing/outline.ts';

const PAGES = 40;
const ROUNDS = 15;

/** Twelve staves of notes a page with some words: about what music programs write. */
function musicPage(number: number, notesAStaff: number): Sheet {
  const children: Primitive[] = [];
  for (let staff = 0; staff < 12; staff++) {
    const top = 25 + staff * 21;
    const stroke = { colour: '#000000', width: 0.18 };
    for (let row = 0; row < 5; row++) {
      const y = top + row * 1.75;
      children.push({ kind: 'path', path: line({ x: 15, y }, { x: 195, y }), stroke });
    }
    for (let note = 0; note < notesAStaff; note++) {
      const at = { x: 18 + (note * 175) / notesAStaff, y: top + (((note * 7 + number * 3) % 11) - 2) * 0.9 };
      children.push({ kind: 'path', path: circle(at, 0.9), fill: '#000000' });
      children.push({ kind: 'path', path: line(at, { x: at.x, y: at.y - 6 }), stroke });
    }
  }
  children.push(words(`page ${number}`, 12), words('Allegro non troppo, sempre leggiero', 18));
  return { title: `page ${number}`, width: 210, height: 297, children };
}

function words(text: string, y: number): Primitive {
  return { kind: 'text', text, x: 20, y, size: 4, weight: 'regular', anchor: 'start', colour: '#000000' };
}

async function partOf(notesAStaff: number): Promise<Uint8Array> {
  const sheets = Array.from({ length: PAGES }, (_, index) => musicPage(index + 1, notesAStaff));
  const meta = { title: 'part', author: '', created: new Date(0), language: 'en' };
  return (await paintPdf(sheets, meta)).bytes;
}

async function copied(bytes: Uint8Array): Promise<Uint8Array> {
  const from = await PDFDocument.load(bytes, { updateMetadata: false });
  const to = await PDFDocument.create({ updateMetadata: false });
  for (const page of await to.copyPages(from, from.getPageIndices())) to.addPage(page);
  return to.save();
}

const HALF = PAGES / 2;

function jobFor(part: OpenedPart): BookletJob {
  return {
    title: 'Benchmark',
    binding: ridgeBooklet({
      leaves: HALF / 2 - 1,
      pagesPerPanel: 2,
      stackSide: 1,
      sides: [pagesOf('part', 1, HALF), pagesOf('part', HALF + 1, PAGES)],
    }),
    players: ['Clarinet', 'Cello'],
    page: null,
    paper: { name: 'A3', width: 297, height: 420 },
    cues: ['after bar 20', 'after bar 44'],
    now: new Date(0),
    sourceOf: ({ page }) => ({ part, page: page - 1 }),
  };
}

/** The part opened, and its pages placed two on a sheet, every other sheet on its head, with nothing drawn over them. */
async function imposed(bytes: Uint8Array): Promise<Uint8Array> {
  const part = await openPartPdf(bytes, 'part.pdf');
  const placements = part.pages.map((_, page): Placement => {
    const sheet = page >> 1;
    return { part, page, sheet, x: (page % 2) * 210, y: 0, turned: sheet % 2 === 0 };
  });
  return (await paintPdf(BARE, META, pagesUnder(placements))).bytes;
}

const META = { title: 'part', author: '', created: new Date(0), language: 'en' };
const BARE = Array.from({ length: HALF }, (): Sheet => ({
  title: '',
  width: 420,
  height: 297,
  children: [],
}));

/** Everything that `standlines booklet` does but reading and writing files: marks and instructions are drawn, too. */
async function whole(bytes: Uint8Array): Promise<Uint8Array> {
  return (await renderBooklet(jobFor(await openPartPdf(bytes, 'part.pdf')))).bytes;
}

type Task = (bytes: Uint8Array) => Promise<Uint8Array>;

/** Processor time, ms. */
async function once(task: Task, bytes: Uint8Array): Promise<number> {
  globalThis.gc?.();
  const start = process.cpuUsage();
  await task(bytes);
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
}

const median = (times: readonly number[]): number =>
  times.toSorted((a, b) => a - b)[times.length >> 1] ?? NaN;

const TASKS = { copied, imposed, whole };

for (const notesAStaff of [12, 40, 120]) {
  const bytes = await partOf(notesAStaff);
  const times: Record<keyof typeof TASKS, number[]> = { copied: [], imposed: [], whole: [] };
  for (let round = 0; round < ROUNDS; round++)
    for (const [name, task] of Object.entries(TASKS))
      times[name as keyof typeof TASKS].push(await once(task, bytes));
  const [copy, impose, all] = [median(times.copied), median(times.imposed), median(times.whole)];
  const against = (time: number): string => `${time.toFixed(0)} ms, ${(time / copy).toFixed(2)} times`;
  console.log(
    `${PAGES} pages, ${Math.round(bytes.length / 1024)} KB: copied ${copy.toFixed(0)} ms; imposed ${against(impose)}; ` +
      `with marks and instructions drawn ${against(all)}`,
  );
}
