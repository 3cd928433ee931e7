/** How the two sorts of entries become pages: text that flows, and drawings that are as large as the paper lets them be. */

import { find, type Document } from '../../document/document.ts';
import { t } from '../../words/say.ts';
import { levelsApart } from '../plan/levels-apart.ts';
import { pageOf, type Page, type PaperName } from '../papers.ts';
import type { Box, Primitive, Sheet } from '../primitives.ts';
import type { Block } from '../sheet/blocks.ts';
import { columnsOf, pagesOf } from '../sheet/flow.ts';
import { bodyOf, framed, pieceOf, sheetOn, titleOf } from '../sheet/page-frame.ts';
import type { PlotSheetRequest } from '../sheet/request.ts';
import type { EntryPages, Numbering, PackEntry, PackRequest } from './request.ts';

export const NO_PAGES: EntryPages = {
  count: 0,
  notes: [],
  draw: () => {
    throw new Error('there is no page to draw');
  },
};

/** Text reads best on upright sheets, two columns of it on large ones that lie. */
export function textPage(paper: PaperName): Page {
  const [upright, lying] = [pageOf(paper, 'portrait'), pageOf(paper, 'landscape')];
  return columnsOf(bodyOf(lying)).length > 1 ? lying : upright;
}

/** Width of the columns that `textPages` fills. */
function textWidth(page: Page): number {
  return columnsOf(bodyOf(page))[0]?.width ?? bodyOf(page).width;
}

/** `blocks` are asked for twice, to count with and to draw with; without numbering nothing is known of other sheets yet. */
export function textPages(
  request: PackRequest,
  entry: PackEntry,
  blocks: (width: number, numbering: Numbering | null) => readonly Block[],
): EntryPages {
  const page = textPage(request.paper);
  const body = bodyOf(page);
  const flowed = (numbering: Numbering | null) => pagesOf(blocks(textWidth(page), numbering), body);
  const count = flowed(null).length;
  let drawn: (() => Primitive[])[] | null = null;
  return {
    count,
    notes: [],
    draw: (index, numbering) => {
      drawn ??= flowed(numbering);
      const children = drawn[index]?.() ?? [];
      return {
        sheet: packSheet({ request, entry, page, index, scale: null }, children, numbering),
        notes: [],
      };
    },
  };
}

export interface SheetPlace {
  readonly request: PackRequest;
  readonly entry: PackEntry;
  readonly page: Page;
  /** Which of the entry's pages, from 0. */
  readonly index: number;
  readonly scale: number | null;
}

/** A page with its border and title strip, and its place among the bookmarks. */
export function packSheet(place: SheetPlace, children: readonly Primitive[], numbering: Numbering): Sheet {
  const { request, entry, page, index, scale } = place;
  const facts = {
    documentType: entry.title,
    scale,
    sheet: numbering.first + index,
    sheets: numbering.sheets,
  };
  const source = { ...request, setup: entry.setup };
  return listed(place, sheetOn(page, titleWords(request, entry), framed(source, page, children, facts)));
}

export function titleWords({ document }: PackRequest, { setup, title }: PackEntry): string {
  const piece = setup === null ? '' : `${pieceOf({ document, setup })}: `;
  return `${titleOf({ document })}: ${piece}${title}`;
}

/** Bookmarks hang under their piece; an entry is listed once. */
export function listed({ request, entry, index }: Omit<SheetPlace, 'page' | 'scale'>, sheet: Sheet): Sheet {
  if (index > 0) return { ...sheet, bookmark: [] };
  const { setup, title } = entry;
  if (setup === null) return { ...sheet, bookmark: [title] };
  return { ...sheet, bookmark: [pieceOf({ document: request.document, setup }), title] };
}

export interface ScaledDrawing {
  readonly scale: number | null;
  readonly children: readonly Primitive[];
}

export interface DrawingOrder {
  /** The ratio's denominator in a body; null: it fits at none. Cheap. */
  readonly scaleIn: (body: Box) => number | null;
  readonly draw: (body: Box) => ScaledDrawing | null;
  /** Said where it fits at none. */
  readonly tooLarge: string;
}

/** One drawing on the page on which it shows larger; lying where both are alike. */
export function drawingPage(request: PackRequest, entry: PackEntry, order: DrawingOrder): EntryPages {
  const page = roomiest(request.paper, order.scaleIn);
  if (!page) return { ...NO_PAGES, notes: [order.tooLarge] };
  return {
    count: 1,
    notes: [],
    draw: (index, numbering) => {
      const drawing = order.draw(bodyOf(page));
      if (!drawing) throw new Error(`${entry.name} was said to fit, and does not`);
      const place = { request, entry, page, index, scale: drawing.scale };
      return { sheet: packSheet(place, drawing.children, numbering), notes: [] };
    },
  };
}

export function roomiest(paper: PaperName, scaleIn: (body: Box) => number | null): Page | null {
  let best: { readonly page: Page; readonly scale: number } | null = null;
  for (const orientation of ['landscape', 'portrait'] as const) {
    const page = pageOf(paper, orientation);
    const scale = scaleIn(bodyOf(page));
    if (scale !== null && (!best || scale < best.scale)) best = { page, scale };
  }
  return best?.page ?? null;
}

/** What the sheets of a setup are drawn from, balconies where they are. */
export function plotRequestOf(request: PackRequest, entry: PackEntry, withReport: boolean): PlotSheetRequest {
  const { setup } = entry;
  if (setup === null) throw new Error(`${entry.name} is of no setup`);
  const { document, measure, units, issued, palette, paper } = request;
  const checked = withReport ? request.checked(setup) : null;
  return {
    ...{ document, setup, measure, units, issued, palette },
    report: checked?.report ?? null,
    explain: checked?.explain ?? silent,
    options: { paper, orientation: 'auto', scale: null },
  };
}

function silent(): never {
  throw new Error('nothing was checked, so there is nothing to explain');
}

const APART = new WeakMap<Document['records'], Document>();

/** The same with balconies laid apart, so that no seat lies over another; made once for each document. */
export function laidApart(request: PlotSheetRequest): PlotSheetRequest {
  const { records } = request.document;
  const document = APART.get(records) ?? levelsApart(request.document);
  APART.set(records, document);
  return { ...request, document };
}

/** "Trio", for notes. */
export function pieceName({ document }: PackRequest, { setup }: PackEntry): string {
  return find(document, setup)?.name || t`the setup`;
}
