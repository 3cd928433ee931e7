/** The plot of a setup as sheets: plan, seat map, sections, table of marks, inventory, figures, findings and cautions. */

import { allOf } from '../document/document.ts';
import { housePlaces } from '../document/seating.ts';
import { language } from '../words/catalogue.ts';
import { t } from '../words/say.ts';
import { levelsApart } from './plan/levels-apart.ts';
import { pageOf, type Page } from './papers.ts';
import type { Box, Primitive } from './primitives.ts';
import type { Block } from './sheet/blocks.ts';
import { firstNames } from './sheet/first-names.ts';
import { columnsOf, flow } from './sheet/flow.ts';
import { bodyOf, framed, sheetOn, titleFields, titleOf } from './sheet/page-frame.ts';
import { planLayout } from './sheet/plan-layout.ts';
import { planSheet } from './sheet/plan-sheet.ts';
import type { PlotResult, PlotSheetRequest } from './sheet/request.ts';
import { seatMap } from './sheet/seat-map-sheet.ts';
import { sectionSheet } from './sheet/section-sheet.ts';
import {
  cautionsSection,
  figureSections,
  findingsSection,
  inventorySection,
  marksSection,
  setupNotes,
} from './sheet/sections.ts';

export type {
  Explanation,
  FittingChoice,
  PlotOptions,
  PlotRefusal,
  PlotResult,
  PlotSheetRequest,
  PlotSheets,
} from './sheet/request.ts';

/**
 * All sheets of the plot. An asked scale that is not a standard one or does not fit is refused with what would do;
 * throws when the document has no such setup.
 */
export function plotSheets(asked: PlotSheetRequest): PlotResult {
  const request = { ...asked, document: levelsApart(asked.document) };
  const layout = planLayout(request);
  if ('ok' in layout) return layout;
  const { page } = layout;
  const pages = pagesFor(request, page);
  const map = largestDrawing({ type: t`Seat map`, draw: (body) => seatMap(request, body) }, pages);
  // A section is wide rather than high, and shows balconies where they are.
  const section = largestDrawing(
    { type: t`Sections`, draw: (body) => sectionSheet(asked, body) },
    pages.toSorted((a, b) => b.width - a.width),
  );
  const drawings = [map, section].filter((each) => each !== null);
  const texts = textSheets(asked, request, page);
  const continuations = [...drawings, ...texts];
  const sheets = 1 + continuations.length;
  const plan = planSheet(request, layout, {
    fields: titleFields(request, page, {
      documentType: t`Stage plot`,
      scale: layout.scale,
      sheet: 1,
      sheets,
    }),
    mapSheet: map ? 2 : null,
    // The table of marks opens the text.
    marksSheet: texts.length > 0 ? 2 + drawings.length : null,
  });
  return {
    ok: true,
    choice: { paper: page.paper, orientation: page.orientation, scale: layout.scale },
    notes: notesOn(request, plan.dropped, { map: map !== null, section: section !== null }),
    sheets: [
      sheetOn(page, nameOf(request, t`Stage plot`), plan.children),
      ...continuations.map(({ type, scale, children, ...on }, index) => {
        const facts = { documentType: type, scale, sheet: index + 2, sheets };
        return sheetOn(on.page, nameOf(request, type), framed(request, on.page, children, facts));
      }),
    ],
  };
}

function nameOf(request: PlotSheetRequest, type: string): string {
  return `${titleOf(request)}: ${language() === 'de' ? type : type.toLowerCase()}`;
}

/** A sheet after the first. */
interface Continuation {
  readonly page: Page;
  readonly type: string;
  /** Null: nothing on it is to scale. */
  readonly scale: number | null;
  readonly children: readonly Primitive[];
}

interface ScaledDrawing {
  readonly scale: number;
  readonly children: readonly Primitive[];
}

interface SheetDrawing {
  readonly type: string;
  /** Null when it fits at no standard scale. */
  readonly draw: (body: Box) => ScaledDrawing | null;
}

/** The plan's page, and where that is left to the tool also the same turned. */
function pagesFor({ options }: PlotSheetRequest, page: Page): Page[] {
  const turned = pageOf(page.paper, page.orientation === 'landscape' ? 'portrait' : 'landscape');
  return options.orientation === 'auto' ? [page, turned] : [page];
}

/** On that of the pages on which it shows larger. */
function largestDrawing({ type, draw }: SheetDrawing, pages: readonly Page[]): Continuation | null {
  let best: (Continuation & ScaledDrawing) | null = null;
  for (const page of pages) {
    const drawing = draw(bodyOf(page));
    if (drawing && (!best || drawing.scale < best.scale)) best = { page, type, ...drawing };
  }
  return best;
}

function textSheets(asked: PlotSheetRequest, request: PlotSheetRequest, page: Page): Continuation[] {
  const body = bodyOf(page);
  const blocks = textBlocks(asked, request, columnsOf(body)[0]?.width ?? body.width);
  const type = t`Marks and figures`;
  return flow(blocks, body).map((children) => ({ page, type, scale: null, children }));
}

function textBlocks(asked: PlotSheetRequest, request: PlotSheetRequest, width: number): Block[] {
  return [
    ...marksSection(request, width),
    ...inventorySection(request, width),
    ...figureSections(asked, request, width),
    ...findingsSection(request, width),
    ...cautionsSection(request, width),
    ...setupNotes(request, width),
  ];
}

interface HouseSheets {
  readonly map: boolean;
  readonly section: boolean;
}

function notesOn(request: PlotSheetRequest, dropped: readonly string[], has: HouseSheets): string[] {
  const places = housePlaces(request.document).length;
  const rows = allOf(request.document, 'seatBlock').length;
  return [
    ...(dropped.length > 0
      ? [t`No room on the plan for the labels ${firstNames(dropped)}; they are in the table of marks.`]
      : []),
    ...(places > 0 && !has.map
      ? [t`The house fits on this paper at no standard scale, so there is no seat map.`]
      : []),
    ...(rows > 0 && !has.section
      ? [t`The house fits on this paper at no standard scale from the side, so there is no section.`]
      : []),
  ];
}
