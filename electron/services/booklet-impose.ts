/** Places pages of parts under what is drawn on sheets, at their true size. */

import { PartForms } from './part-forms.ts';
import type { OpenedPart, SourcePage } from './part-pdf.ts';
import type { Underlay } from './pdf-painter.ts';

export interface Placement {
  /** Index of the sheet. */
  readonly sheet: number;
  readonly part: OpenedPart;
  /** Index of the page in the part's PDF. */
  readonly page: number;
  /** Where the top left corner of the page's area on the sheet comes to lie, mm from the sheet's top left corner. */
  readonly x: number;
  readonly y: number;
  /** Standing on its head. */
  readonly turned: boolean;
}

/** `a b c d e f`: x' = ax + cy + e, y' = bx + dy + f. */
type Matrix = readonly [number, number, number, number, number, number];

const POINTS_PER_MM = 72 / 25.4;

/**
 * Draws the pages before everything else on their sheets, and leaves no trace in the graphics state. What it draws with throws
 * `FaultError` when a page cannot be taken over.
 */
export function pagesUnder(placements: readonly Placement[]): Underlay {
  let forms: PartForms | null = null;
  return (document, sheet) => {
    const onThis = placements.filter((placement) => placement.sheet === sheet);
    if (onThis.length === 0) return;
    forms ??= new PartForms(document);
    place(document, onThis, forms);
  };
}

/** The map from a page's own units to points from the top left corner of the sheet, downwards, at scale 1. */
function placingMatrix(page: SourcePage, at: Omit<Placement, 'part' | 'page' | 'sheet'>): Matrix {
  const [width, height] = [page.width * POINTS_PER_MM, page.height * POINTS_PER_MM];
  const [left, top] = [at.x * POINTS_PER_MM, at.y * POINTS_PER_MM];
  const [a, b, c, d, e, f] = uprightMatrix(page);
  return at.turned ? [-a, b, -c, d, left + width - e, top + f] : [a, -b, c, -d, left + e, top + height - f];
}

/** To points from the bottom left of the page as it is looked at, upwards. */
function uprightMatrix({ box: [x0, y0, x1, y1], rotate, unit: u }: SourcePage): Matrix {
  switch (rotate) {
    case 0:
      return [u, 0, 0, u, -u * x0, -u * y0];
    case 90:
      return [0, -u, u, 0, -u * y0, u * x1];
    case 180:
      return [-u, 0, 0, -u, u * x1, u * y1];
    case 270:
      return [0, u, -u, 0, u * y1, -u * x0];
  }
}

function place(document: PDFKit.PDFDocument, placements: readonly Placement[], forms: PartForms): void {
  const { page } = document;
  const xobjects = page.xobjects as Record<string, unknown>;
  // Marked as an artifact: what it shows is told by the words on the sheet.
  document.addContent('/Artifact BMC');
  for (const [order, { part, page: index, ...at }] of placements.entries()) {
    const source = sourceOf(part, index);
    xobjects[`Part${order}`] = forms.formOf(part, source);
    const matrix = placingMatrix(source, at).map(decimal).join(' ');
    document.addContent(`q ${matrix} cm /Part${order} Do Q`);
  }
  document.addContent('EMC');
}

function sourceOf(part: OpenedPart, page: number): SourcePage {
  const source = part.pages[page];
  if (!source) throw new Error(`"${part.name}" has no page ${page}`);
  return source;
}

/** Enough digits for a hundredth of a point on any sheet, and never in powers of ten, which PDF does not know. */
function decimal(value: number): string {
  return value.toFixed(6).replace(/\.?0+$/, '');
}
