/** A booklet as a PDF to print: the players' own pages at their true size, with every mark, and how to put it together. */

import { bookletSheets, type BookletOrder, type Size } from '#model/drawing/booklet/booklet-sheets.ts';
import { pageRoom } from '#model/drawing/booklet/page-room.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import type { Sheet } from '#model/drawing/primitives.ts';
import type { PageRef } from '#model/pages/bindings/binding.ts';
import { language } from '#model/words/catalogue.ts';
import { atMost } from '#model/words/numbers.ts';
import { t } from '#model/words/say.ts';
import { pagesUnder, type Placement } from './booklet-impose.ts';
import { FaultError } from './faults.ts';
import { createMeasure } from './fonts.ts';
import type { OpenedPart } from './part-pdf.ts';
import { paintPdf, type PaintedPdf } from './pdf-painter.ts';

export interface BookletJob extends Omit<BookletOrder, 'sizeOf' | 'tools' | 'page'> {
  /** Where a page comes from: a PDF and the index of its page; null: a numbered blank. */
  readonly sourceOf: (ref: PageRef) => PageSource | null;
  /** Room for a page; null: as large as the largest, A4 when all are blank. */
  readonly page: Size | null;
  /** Written into the file. */
  readonly now: Date;
}

export interface PageSource {
  readonly part: OpenedPart;
  readonly page: number;
}

export interface BookletPdf {
  readonly bytes: Uint8Array;
  /** Sheets with panels, and all with the instructions. */
  readonly printed: number;
  readonly sheets: number;
  /** What the one who prints should know. */
  readonly notes: readonly string[];
}

/** Sheets with what lies under their marks, before they are painted. */
export interface DrawnSheets {
  readonly title: string;
  readonly sheets: readonly Sheet[];
  /** Their `sheet` counts from the first of these. */
  readonly placements: readonly Placement[];
  readonly notes: readonly string[];
}

/** Throws `FaultError`: a page does not go on the paper, is larger than its room, or cannot be taken over. */
export async function renderBooklet(job: BookletJob): Promise<BookletPdf> {
  const { printed: count, ...drawn } = drawnBooklet(job);
  const { bytes, missingGlyphs } = await printed([drawn], { title: job.title, author: '', now: job.now });
  const missing = missingGlyphs.length > 0 ? [missingWords(missingGlyphs)] : [];
  return { bytes, printed: count, sheets: drawn.sheets.length, notes: [...drawn.notes, ...missing] };
}

/** What becomes of letters that no font has. */
export function missingWords(glyphs: readonly string[]): string {
  return t`No font has ${glyphs.join(' ')}: printed as a box.`;
}

/** Throws `FaultError`. */
export function drawnBooklet(job: BookletJob): DrawnSheets & { readonly printed: number } {
  const page = roomFor(job);
  const order: BookletOrder = {
    ...job,
    page,
    sizeOf: (ref) => sizeOf(job.sourceOf(ref)),
    tools: { palette: PALETTES.print, measure: createMeasure() },
  };
  const result = bookletSheets(order);
  if (!result.ok) throw new FaultError(result.code, result.message);
  return {
    title: job.title,
    sheets: result.sheets.map(({ sheet }) => sheet),
    placements: placementsOf(result.sheets, job),
    printed: result.printed,
    notes: notesOf(job, result.perSheet),
  };
}

interface PrintMeta {
  readonly title: string;
  readonly author: string;
  readonly now: Date;
}

/** All of them one after the other as one PDF. Throws `FaultError` when a page of a part cannot be taken over. */
export async function printed(
  drawn: readonly DrawnSheets[],
  { title, author, now }: PrintMeta,
): Promise<PaintedPdf> {
  let before = 0;
  const placements = drawn.flatMap((each) => {
    const shifted = each.placements.map((placement) => ({ ...placement, sheet: placement.sheet + before }));
    before += each.sheets.length;
    return shifted;
  });
  const sheets = drawn.flatMap((each) => each.sheets);
  return paintPdf(sheets, { title, author, created: now, language: language() }, pagesUnder(placements));
}

function sizeOf(source: PageSource | null): Size | null {
  const page = source?.part.pages[source.page];
  return page ? { width: page.width, height: page.height } : null;
}

/** Beyond these it is no page for a stand. Millimetres. */
const [SMALLEST, LARGEST] = [40, 1200];
/** PDFs round their pages to whole points. */
const SLACK = 0.5;

function roomFor(job: BookletJob): Size {
  const sizes = refsOf(job).flatMap((ref): (Size & PageSource)[] => {
    const source = job.sourceOf(ref);
    const size = sizeOf(source);
    return source && size ? [{ ...source, ...size }] : [];
  });
  const odd = sizes.find(
    ({ width, height }) => Math.min(width, height) < SMALLEST || Math.max(width, height) > LARGEST,
  );
  if (odd) throw oddSize(odd, t`no page for a stand is that size (${SMALLEST} to ${LARGEST} mm a side)`);
  const { page } = job;
  if (page === null) return pageRoom(sizes);
  const over = sizes.find(({ width, height }) => width > page.width + SLACK || height > page.height + SLACK);
  if (over) throw oddSize(over, t`it is larger than the page size of the booklet, ${millimetres(page)}`);
  return page;
}

function oddSize({ part, page, ...size }: PageSource & Size, why: string): FaultError {
  return new FaultError(
    'booklet.pageSize',
    t`Page ${page + 1} of "${part.name}" is ${millimetres(size)}: ${why}.`,
  );
}

function millimetres({ width, height }: Size): string {
  return `${atMost(Math.round(width * 10) / 10, 1)} x ${atMost(Math.round(height * 10) / 10, 1)} mm`;
}

function refsOf({ binding }: BookletJob): PageRef[] {
  return binding.views.flat(2).filter((ref) => ref !== null);
}

function placementsOf(
  sheets: readonly { readonly pages: readonly PlacedRef[] }[],
  job: BookletJob,
): Placement[] {
  return sheets.flatMap(({ pages }, sheet) =>
    pages.flatMap(({ ref, x, y, turned }) => {
      const source = job.sourceOf(ref);
      return source ? [{ ...source, sheet, x, y, turned }] : [];
    }),
  );
}

interface PlacedRef {
  readonly ref: PageRef;
  readonly x: number;
  readonly y: number;
  readonly turned: boolean;
}

function notesOf(job: BookletJob, perSheet: 'panel' | 'page'): string[] {
  const parts = new Set(refsOf(job).flatMap((ref) => job.sourceOf(ref)?.part ?? []));
  const across = job.binding.kind === 'ridge' ? job.binding.pagesPerPanel : 1;
  return [
    ...[...parts].flatMap(({ notes }) => notes),
    ...(perSheet === 'page' && across > 1
      ? [t`A whole panel does not go on ${job.paper.name}, so every page has a sheet of its own.`]
      : []),
  ];
}
