/** The plot of a setup as sheets: plan, seat map, sections, table of marks, inventory, figures, findings and cautions. */

import { allOf, concertOf, find } from '../document/document.ts';
import { housePlaces } from '../document/seating.ts';
import { rectangle } from './outline.ts';
import { levelsApart } from './plan/levels-apart.ts';
import { pageOf, type Page } from './papers.ts';
import type { Box, Primitive, Sheet } from './primitives.ts';
import { scaleDesignation } from './scales.ts';
import { heading, paragraph, type Block } from './sheet/blocks.ts';
import { cautions } from './sheet/cautions.ts';
import { reachTable, sightTable } from './sheet/figures.ts';
import { findingBlocks } from './sheet/findings.ts';
import { firstNames } from './sheet/first-names.ts';
import { columnsOf, flow } from './sheet/flow.ts';
import { inventoryTable } from './sheet/inventory.ts';
import { marksTable } from './sheet/marks-table.ts';
import { planLayout, type PlanLayout } from './sheet/plan-layout.ts';
import { planSheet } from './sheet/plan-sheet.ts';
import type { PlotResult, PlotSheetRequest } from './sheet/request.ts';
import { seatMap } from './sheet/seat-map-sheet.ts';
import { sectionSheet } from './sheet/section-sheet.ts';
import { rakeTable } from './sheet/section-table.ts';
import { tableBlocks, type Table } from './sheet/table.ts';
import { titleStrip, TITLE_STRIP_HEIGHT, type TitleFields } from './sheet/title-block.ts';
import { TEXT, WEIGHT } from './style.ts';
import { oneLine } from './text.ts';

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
  const hasPlaces = housePlaces(request.document).length > 0;
  const map = hasPlaces
    ? largestDrawing({ type: 'Seat map', draw: (body) => seatMap(request, body) }, pages)
    : null;
  // A section is wide rather than high, and shows balconies where they are.
  const section = largestDrawing(
    { type: 'Sections', draw: (body) => sectionSheet(asked, body) },
    pages.toSorted((a, b) => b.width - a.width),
  );
  const drawings = [map, section].filter((each) => each !== null);
  const texts = textSheets(asked, request, page);
  const continuations = [...drawings, ...texts];
  const sheets = 1 + continuations.length;
  const fields = (documentType: string, sheet: number): TitleFields =>
    fieldsOf(request, layout, { documentType, sheet, sheets });
  const plan = planSheet(request, layout, {
    fields: fields('Stage plot', 1),
    mapSheet: map ? 2 : null,
    // The table of marks opens the text.
    marksSheet: texts.length > 0 ? 2 + drawings.length : null,
  });
  return {
    ok: true,
    choice: { paper: page.paper, orientation: page.orientation, scale: layout.scale },
    notes: notesOn(request, plan.dropped, { map: map !== null, section: section !== null }),
    sheets: [
      sheetOf(request, page, { type: 'Stage plot', children: plan.children }),
      ...continuations.map((each, index) =>
        sheetOf(request, each.page, {
          type: each.type,
          children: continued(request, each, fields(each.type, index + 2)),
        }),
      ),
    ],
  };
}

/** A sheet after the first. */
interface Continuation {
  readonly page: Page;
  readonly type: string;
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
  return flow(blocks, body).map((children) => ({ page, type: 'Marks and figures', children }));
}

/** What the sheets after the first may fill. */
function bodyOf({ frame }: Page): Box {
  const inset = 2;
  return {
    x: frame.x + inset,
    y: frame.y + inset,
    width: frame.width - 2 * inset,
    height: frame.height - TITLE_STRIP_HEIGHT - 2 * inset,
  };
}

function textBlocks(asked: PlotSheetRequest, request: PlotSheetRequest, width: number): Block[] {
  const { report } = request;
  const section = (title: string, intro: string, blocks: readonly Block[]): Block[] =>
    blocks.length === 0
      ? []
      : [
          heading(title, width, request),
          paragraph(intro, width, request, { ...INTRO, colour: request.palette.faint }),
          ...blocks,
        ];
  const table = (title: string, intro: string, rows: Table, across = width): Block[] =>
    section(title, intro, tableBlocks(rows, across, request, title));
  const unit = request.units === 'metric' ? 'Millimetres' : 'Feet and inches';
  return [
    ...table(
      'Marks',
      `${unit}. SL and SR: to stage left or right of the centre line. US: upstage of the front edge. Lip: height of a desk’s lower edge. Tilt: of a desk from the horizontal.`,
      marksTable(request),
    ),
    ...table(
      'Inventory',
      'What the setup needs. Players bring what is named as an instrument unless agreed otherwise.',
      inventoryTable(request),
      Math.min(width, INVENTORY_WIDTH),
    ),
    ...table('Sightlines', sightIntro(request), sightTable(request)),
    ...table(
      'Rows',
      `${unit}. Each row over the next, towards the platform’s front edge. D and R: from the front viewer’s eye to the edge, along and up. N and T: from row to row, up and along. C: how far the line of sight passes above the front viewer’s eye. Head in line: the nearest row whose heads are straight in front; what the row sees is judged over it. N for a C: the step up to this row that would give it there, the rows before staying as they are.`,
      rakeTable(asked),
    ),
    ...table(
      'Reach',
      `${unit} from the nearer free shoulder; arm: what the arm alone reaches. Time with its range; free: the rest the player has.`,
      reachTable(request),
    ),
    ...(report
      ? section(
          'Findings',
          'Measured by the tool against the limits set for this concert.',
          findingsOrNone(request, width),
        )
      : []),
    ...section(
      'Cautions',
      'Read before setting.',
      cautions(request).map((words) => paragraph(words, width, request)),
    ),
    ...setupNotes(request, width),
  ];
}

/** Wider than this, the counts stand too far from the boxes to tick. */
const INVENTORY_WIDTH = 130;

const INTRO = { type: { size: TEXT.small, weight: 'regular' }, keepsWithNext: true } as const;

function sightIntro({ document }: PlotSheetRequest): string {
  const well = Math.round(concertOf(document).limits.seesWell * 100);
  return `Seen well: share of the places that see at least ${well} % of the player. Median and worst: share of the player that is seen. On the right: places in each band, in % seen.`;
}

function findingsOrNone(request: PlotSheetRequest, width: number): Block[] {
  const blocks = findingBlocks(request, width);
  return blocks.length > 0 ? blocks : [paragraph('The checks found nothing to report.', width, request)];
}

function setupNotes(request: PlotSheetRequest, width: number): Block[] {
  const setup = find(request.document, request.setup);
  if (!setup || setup.notes.trim() === '') return [];
  return [heading('Notes', width, request), paragraph(setup.notes, width, request)];
}

function continued(
  request: PlotSheetRequest,
  { page: { frame }, children }: Continuation,
  fields: TitleFields,
): Primitive[] {
  const strip = { ...frame, y: frame.y + frame.height - TITLE_STRIP_HEIGHT, height: TITLE_STRIP_HEIGHT };
  const stroke = { colour: request.palette.ink, width: WEIGHT.bold };
  return [
    { kind: 'path', path: rectangle(frame), stroke },
    ...children,
    ...titleStrip(fields, strip, request),
  ];
}

interface SheetFacts {
  readonly documentType: string;
  readonly sheet: number;
  readonly sheets: number;
}

function fieldsOf(request: PlotSheetRequest, { page, scale }: PlanLayout, facts: SheetFacts): TitleFields {
  const concert = concertOf(request.document);
  return {
    owner: concert.venue,
    title: titleOf(request),
    piece: pieceOf(request),
    concertDate: concert.date,
    issued: request.issued,
    revision: concert.revision,
    creator: concert.author,
    scale: scaleDesignation(scale),
    units: request.units === 'metric' ? 'mm' : 'ft, in',
    paper: page.paper,
    ...facts,
  };
}

function titleOf({ document }: PlotSheetRequest): string {
  return concertOf(document).name || 'Concert';
}

function pieceOf({ document, setup }: PlotSheetRequest): string {
  const record = find(document, setup);
  if (!record) throw new Error(`no setup ${setup}`);
  return record.name || `Setup ${record.order}`;
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
      ? [`No room on the plan for the labels ${firstNames(dropped)}; they are in the table of marks.`]
      : []),
    ...(places > 0 && !has.map
      ? ['The house fits on this paper at no standard scale, so there is no seat map.']
      : []),
    ...(rows > 0 && !has.section
      ? ['The house fits on this paper at no standard scale from the side, so there is no section.']
      : []),
  ];
}

interface SheetContent {
  readonly type: string;
  readonly children: readonly Primitive[];
}

function sheetOf(
  request: PlotSheetRequest,
  { width, height }: Page,
  { type, children }: SheetContent,
): Sheet {
  return { title: oneLine(`${titleOf(request)}: ${type.toLowerCase()}`), width, height, children };
}
