/** The plot of a setup as sheets: plan, seat map, sections, table of marks, inventory, figures, findings, cautions; or some of them. */

import { allOf, placedInSetup, type Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import { housePlaces } from '../document/seating.ts';
import { language } from '../words/catalogue.ts';
import { t } from '../words/say.ts';
import { levelsApart } from './plan/levels-apart.ts';
import { pageOf, type Page } from './papers.ts';
import type { Box, Primitive } from './primitives.ts';
import type { Block } from './sheet/blocks.ts';
import { firstNames } from './sheet/first-names.ts';
import { columnsOf, laidOut } from './sheet/flow.ts';
import { bodyOf, framed, sheetOn, titleFields, titleOf } from './sheet/page-frame.ts';
import { planLayout, type PlanLayout } from './sheet/plan-layout.ts';
import { planSheet, type DrawnPlan } from './sheet/plan-sheet.ts';
import {
  PLOT_PARTS,
  type PlotPart,
  type PlotRefusal,
  type PlotSheetRequest,
  type PlotSheetsByPart,
} from './sheet/request.ts';
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

export { PLOT_PARTS } from './sheet/request.ts';
export type {
  Explanation,
  FittingChoice,
  PlotOptions,
  PlotPart,
  PlotRefusal,
  PlotSheetRequest,
  PlotSheets,
  PlotSheetsByPart,
} from './sheet/request.ts';

/**
 * All sheets of the plot, or those of the parts that were asked for. An asked scale that is not a standard one or does not
 * fit is refused with what would do; throws when the document has no such setup.
 */
export function plotSheets(asked: PlotSheetRequest): PlotSheetsByPart | PlotRefusal {
  const request = { ...asked, document: levelsApart(asked.document) };
  const layout = planLayout(request);
  const hasPlan = isAsked(asked, 'plot');
  if ('ok' in layout && hasPlan) return layout;
  const page = 'ok' in layout ? usualPage(request) : layout.page;
  const plan = hasPlan && !('ok' in layout) ? layout : null;
  const continuations = [...houseSheets(asked, request, page), ...textSheets(asked, request, page)];
  const first = plan ? 2 : 1;
  const sheets = first - 1 + continuations.length;
  if (sheets === 0) return nothingToPrint();
  const places = placesOf(continuations, first, plan !== null);
  const drawn = plan && drawnPlan(request, plan, { places, sheets });
  return {
    ok: true,
    choice: { paper: page.paper, orientation: page.orientation, scale: plan?.scale ?? null },
    notes: notesOn(asked, drawn?.dropped ?? [], places),
    places,
    sheets: [
      ...(drawn ? [sheetOn(page, nameOf(request, t`Stage plot`), drawn.children)] : []),
      ...continuations.map(({ type, scale, children, ...on }, index) => {
        const facts = { documentType: type, scale, sheet: first + index, sheets };
        return sheetOn(on.page, nameOf(request, type), framed(request, on.page, children, facts));
      }),
    ],
  };
}

function isAsked({ options }: PlotSheetRequest, part: PlotPart): boolean {
  return options.parts?.includes(part) ?? true;
}

/** For what goes with a plan that fits on no page of the paper. */
function usualPage({ options: { paper, orientation } }: PlotSheetRequest): Page {
  return pageOf(paper, orientation === 'auto' ? 'portrait' : orientation);
}

/** Those of its parts that a setup has something for. */
export function plotPartsOf(document: Document, setup: Id<'setup'>): PlotPart[] {
  const hasThings = placedInSetup(document, setup).length > 0;
  const isEmpty: Partial<Record<PlotPart, boolean>> = {
    seats: housePlaces(document).length === 0,
    section: allOf(document, 'seatBlock').length === 0,
    marks: !hasThings,
    inventory: !hasThings,
  };
  return PLOT_PARTS.filter((part) => isEmpty[part] !== true);
}

function nothingToPrint(): PlotRefusal {
  return {
    ok: false,
    code: 'plot.nothingToPrint',
    message: t`Of what was chosen there is nothing to print: choose another sheet as well.`,
    fits: [],
  };
}

interface PlanPlace {
  readonly places: Places;
  readonly sheets: number;
}

function drawnPlan(request: PlotSheetRequest, layout: PlanLayout, { places, sheets }: PlanPlace): DrawnPlan {
  const facts = { documentType: t`Stage plot`, scale: layout.scale, sheet: 1, sheets };
  return planSheet(request, layout, {
    fields: titleFields(request, layout.page, facts),
    mapSheet: places.get('seats')?.[0] ?? null,
    marksSheet: places.get('marks')?.[0] ?? null,
  });
}

type Places = ReadonlyMap<PlotPart, readonly number[]>;

/** A continuation is on the sheet of its number, and so are all its parts. */
function placesOf(continuations: readonly Continuation[], first: number, hasPlan: boolean): Places {
  const places = new Map<PlotPart, number[]>(PLOT_PARTS.map((part) => [part, []]));
  if (hasPlan) places.get('plot')?.push(1);
  for (const [index, { parts }] of continuations.entries())
    for (const part of parts) places.get(part)?.push(first + index);
  return places;
}

/** Seat map and sections, each on the page on which it shows larger. */
function houseSheets(asked: PlotSheetRequest, request: PlotSheetRequest, page: Page): Continuation[] {
  const pages = pagesFor(request, page);
  // A section is wide rather than high, and shows balconies where they are.
  const wideFirst = pages.toSorted((a, b) => b.width - a.width);
  const map = (): Continuation | null =>
    largestDrawing({ part: 'seats', type: t`Seat map`, draw: (body) => seatMap(request, body) }, pages);
  const section = (): Continuation | null =>
    largestDrawing(
      { part: 'section', type: t`Sections`, draw: (body) => sectionSheet(asked, body) },
      wideFirst,
    );
  return [isAsked(asked, 'seats') ? map() : null, isAsked(asked, 'section') ? section() : null].filter(
    (each) => each !== null,
  );
}

function nameOf(request: PlotSheetRequest, type: string): string {
  return `${titleOf(request)}: ${language() === 'de' ? type : type.toLowerCase()}`;
}

/** A sheet after the first. */
interface Continuation {
  readonly page: Page;
  readonly type: string;
  readonly parts: readonly PlotPart[];
  /** Null: nothing on it is to scale. */
  readonly scale: number | null;
  readonly children: readonly Primitive[];
}

interface ScaledDrawing {
  readonly scale: number;
  readonly children: readonly Primitive[];
}

interface SheetDrawing {
  readonly part: PlotPart;
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
function largestDrawing({ part, type, draw }: SheetDrawing, pages: readonly Page[]): Continuation | null {
  let best: (Continuation & ScaledDrawing) | null = null;
  for (const page of pages) {
    const drawing = draw(bodyOf(page));
    if (drawing && (!best || drawing.scale < best.scale)) best = { page, type, parts: [part], ...drawing };
  }
  return best;
}

function textSheets(asked: PlotSheetRequest, request: PlotSheetRequest, page: Page): Continuation[] {
  const body = bodyOf(page);
  const parts = textParts(asked, request, columnsOf(body)[0]?.width ?? body.width);
  const partOf = new Map(parts.flatMap(({ part, blocks }) => blocks.map((block) => [block, part])));
  const type = t`Marks and figures`;
  const all = parts.flatMap(({ blocks }) => blocks);
  return laidOut(all, body).map(({ blocks, draw }) => {
    const on = new Set(blocks.flatMap((block) => partOf.get(block) ?? []));
    return { page, type, parts: [...on], scale: null, children: draw() };
  });
}

interface TextPart {
  readonly part: PlotPart;
  readonly blocks: readonly Block[];
}

function textParts(asked: PlotSheetRequest, request: PlotSheetRequest, width: number): TextPart[] {
  const ways: readonly (readonly [PlotPart, () => Block[]])[] = [
    ['marks', () => marksSection(request, width)],
    ['inventory', () => inventorySection(request, width)],
    ['figures', () => figureSections(asked, request, width)],
    ['findings', () => findingsSection(request, width)],
    ['cautions', () => [...cautionsSection(request, width), ...setupNotes(request, width)]],
  ];
  return ways.flatMap(([part, blocks]) => (isAsked(asked, part) ? [{ part, blocks: blocks() }] : []));
}

function notesOn(asked: PlotSheetRequest, dropped: readonly string[], places: Places): string[] {
  const isMissing = (part: PlotPart): boolean => isAsked(asked, part) && places.get(part)?.length === 0;
  const seats = housePlaces(asked.document).length;
  const rows = allOf(asked.document, 'seatBlock').length;
  return [
    ...(dropped.length > 0 ? [noRoom(dropped, places)] : []),
    ...(seats > 0 && isMissing('seats')
      ? [t`The house fits on this paper at no standard scale, so there is no seat map.`]
      : []),
    ...(rows > 0 && isMissing('section')
      ? [t`The house fits on this paper at no standard scale from the side, so there is no section.`]
      : []),
  ];
}

function noRoom(dropped: readonly string[], places: Places): string {
  const names = firstNames(dropped);
  return places.get('marks')?.length === 0
    ? t`No room on the plan for the labels ${names}: print the table of marks, too.`
    : t`No room on the plan for the labels ${names}; they are in the table of marks.`;
}
