/**
 * The rehearsal floor: the same marks without the platform, so that they can be taped in any room, from two points on a
 * line and by what lies next to each.
 */

import { outlineOf } from '../../catalogue/outlines.ts';
import { placedInSetup } from '../../document/document.ts';
import { formatBare, formatFacing, formatLength, type Units } from '../../document/measures.ts';
import type { Millimetres, PlacedRecord, Point } from '../../document/records.ts';
import { t } from '../../words/say.ts';
import { boxOfPoints, grownBox, textBox } from '../bounds.ts';
import { createOccupancy } from '../occupancy.ts';
import { circle, line } from '../outline.ts';
import { drawCrosses, drawLabels, findLabelPlaces } from '../plan/labels.ts';
import { onPage, pen, planContext, type PlanContext } from '../plan/context.ts';
import { drawItems } from '../plan/items.ts';
import { boxesAlong } from '../plan/line-boxes.ts';
import { BETWEEN } from '../plan/label-requests.ts';
import { SCALE_BAR_HEIGHT, scaleBar } from '../plan/scale-bar.ts';
import { shortMarks } from '../plan/short-marks.ts';
import type { Box, GroupPrimitive, Primitive } from '../primitives.ts';
import { largestScale } from '../scales.ts';
import { notes, notesHeight } from '../sheet/legend.ts';
import { turnsMatter, whatItIs } from '../sheet/marks-table.ts';
import { bodyOf } from '../sheet/page-frame.ts';
import type { PlotSheetRequest } from '../sheet/request.ts';
import { section, unitWords } from '../sheet/sections.ts';
import { columnIn, heightWithHeaders } from '../sheet/flow.ts';
import { pageOf, type Page, type PaperName } from '../papers.ts';
import { tableBlocks, type Table } from '../sheet/table.ts';
import { CAP_HEIGHT, DASH, TEXT, WEIGHT } from '../style.ts';
import { textLine } from '../text.ts';
import type { Block } from '../sheet/blocks.ts';
import { floorBase, type FloorBase } from './floor-base.ts';
import { NO_PAGES, packSheet, pieceName, plotRequestOf, roomiest, textPages } from './pages.ts';
import type { EntryPages, PackEntry, PackRequest } from './request.ts';
import { distance, roundingWords, taped, tapeLength, tapeWords, type TapedMark } from './tapes.ts';

/** The drawing and its table on one sheet where the drawing stays large enough; else the drawing first, then the table. */
export function floorPages(request: PackRequest, entry: PackEntry): EntryPages {
  const plot = plotRequestOf(request, entry, false);
  const records = placedInSetup(plot.document, plot.setup).filter(isTaped);
  if (records.length === 0) return NO_PAGES;
  const floor: Floor = { plot, base: floorBase(records, plot.units), records };
  const page = roomiest(request.paper, (body) => scaleIn(floor, body));
  const table = textPages(request, entry, (width) => floorTable(floor, width));
  if (!page) return { ...table, notes: [tooLarge(pieceName(request, entry))] };
  const shared = sharedPage(floor, request.paper, scaleIn(floor, bodyOf(page)));
  return {
    count: shared ? 1 : 1 + table.count,
    notes: [],
    draw: (index, numbering) => {
      if (index > 0) {
        const { sheet, notes: said } = table.draw(index - 1, { ...numbering, first: numbering.first + 1 });
        return { sheet: { ...sheet, bookmark: [] }, notes: said };
      }
      const { scale, children } = shared ? sharedDrawing(floor, shared) : floorDrawing(floor, bodyOf(page));
      const on = shared ? shared.page : page;
      return { sheet: packSheet({ request, entry, page: on, index, scale }, children, numbering), notes: [] };
    },
  };
}

interface SharedPage {
  readonly page: Page;
  readonly drawing: Box;
  readonly table: Box;
}

/** As large as this, a drawing need not have a sheet of its own: 1:25. */
const LARGE_ENOUGH = 25;

/** The page on which drawing and table have room together, the drawing at this scale or large enough; null: on none. */
function sharedPage(floor: Floor, paper: PaperName, scale: number | null): SharedPage | null {
  let best: (SharedPage & { readonly scale: number }) | null = null;
  for (const orientation of ['landscape', 'portrait'] as const) {
    const page = pageOf(paper, orientation);
    const body = bodyOf(page);
    const width = Math.min(body.width, WIDEST_TABLE);
    const height = heightWithHeaders(floorTable(floor, width));
    const drawing = { ...body, height: body.height - height };
    const table = { ...body, y: body.y + drawing.height, width, height };
    const shared = drawing.height > 0 ? scaleIn(floor, drawing) : null;
    if (shared !== null && shared < (best?.scale ?? Infinity)) best = { page, drawing, table, scale: shared };
  }
  return best && best.scale <= Math.max(scale ?? 0, LARGE_ENOUGH) ? best : null;
}

/** Wider than this, figures stand too far from the marks they belong to. */
const WIDEST_TABLE = 200;

function sharedDrawing(floor: Floor, { drawing, table }: SharedPage): FloorDrawing {
  const { scale, children } = floorDrawing(floor, drawing);
  const rows = columnIn(floorTable(floor, table.width), { ...table, height: table.height + SLACK });
  return { scale, children: [...children, ...rows] };
}

/** Sums of heights differ by a hair. */
const SLACK = 0.01;

function tooLarge(piece: string): string {
  return t`${piece}: the rehearsal floor fits on this paper at no standard scale; the table of its marks is printed.`;
}

/** Lamps and what belongs to the building stay behind. */
function isTaped(record: PlacedRecord): boolean {
  return record.kind !== 'lamp' && !(record.kind === 'shape' && record.fixed);
}

interface Floor {
  readonly plot: PlotSheetRequest;
  readonly base: FloorBase;
  readonly records: readonly PlacedRecord[];
}

/** Round what is drawn: room for labels and words, mm on paper. */
const MARGIN = 11;
const KEY_AIR = 3;

interface FloorRoom {
  readonly area: Box;
  readonly key: Box;
  readonly notes: Box;
}

function roomIn(floor: Floor, body: Box): FloorRoom {
  const height = notesHeight(floorNotes(floor), body.width, floor.plot);
  const keyTop = body.y + body.height - SCALE_BAR_HEIGHT;
  const notesTop = keyTop - height - KEY_AIR;
  return {
    area: { ...body, height: notesTop - body.y - KEY_AIR },
    key: { ...body, y: keyTop, height: SCALE_BAR_HEIGHT },
    notes: { ...body, y: notesTop, height },
  };
}

function scaleIn(floor: Floor, body: Box): number | null {
  const { area } = roomIn(floor, body);
  const extent = extentOf(floor);
  return largestScale(
    floor.plot.units,
    (scale) =>
      extent.width / scale + 2 * MARGIN <= area.width && extent.height / scale + 2 * MARGIN <= area.height,
  );
}

/** What stands there and the line to tape from, in stage mm. */
function extentOf({ records, base }: Floor): Box {
  const points = [...records.flatMap((record) => [...outlineOf(record), record]), ...base.base];
  return boxOfPoints(points) ?? { x: 0, y: 0, width: 0, height: 0 };
}

interface FloorDrawing {
  readonly scale: number;
  readonly children: readonly Primitive[];
}

function floorDrawing(floor: Floor, body: Box): FloorDrawing {
  const scale = scaleIn(floor, body);
  if (scale === null) throw new Error('the floor was said to fit, and does not');
  const room = roomIn(floor, body);
  const { units, palette } = floor.plot;
  const { key } = room;
  return {
    scale,
    children: [
      drawFloor(floor, contextOf(floor, scale, room.area)),
      notes(floorNotes(floor), room.notes, floor.plot),
      scaleBar({ scale, units, palette, x: key.x, y: key.y, width: key.width }),
    ],
  };
}

function contextOf(floor: Floor, scale: number, area: Box): PlanContext {
  const { plot, base, records } = floor;
  const extent = extentOf(floor);
  const context = planContext({
    ...plot,
    scale,
    area,
    origin: {
      x: area.x + area.width / 2 - (extent.x + extent.width / 2) / scale,
      y: area.y + area.height / 2 + (extent.y + extent.height / 2) / scale,
    },
    figuresOf: (record) => {
      const tapes = taped(record, [base.base], plot.units);
      return tapes ? tapeWords(tapes, plot.units).join(BETWEEN) : '';
    },
    layers: {
      seats: false,
      sightBands: null,
      marks: true,
      names: true,
      words: false,
      dimensions: 'coordinates',
      grid: false,
      reach: false,
      routes: false,
    },
  });
  const shown = new Set<PlacedRecord>(records);
  return {
    ...context,
    items: context.items.filter((record) => shown.has(record)),
    risers: context.risers.filter((record) => shown.has(record)),
  };
}

function drawFloor(floor: Floor, context: PlanContext): GroupPrimitive {
  const ground = [...drawLines(context, floor.base), ...drawItems(context)];
  const [e, f] = floor.base.base;
  const edge = onPage(context, { x: 0, y: 0 }).y;
  const { x, width } = context.area ?? extentOf(floor);
  // Figures on a line could not be read; the platform's walls are not in the room, its front edge is drawn.
  const labels = findLabelPlaces(context, ground, [
    ...boxesAlong(onPage(context, e), onPage(context, f)),
    ...boxesAlong({ x, y: edge }, { x: x + width, y: edge }),
  ]);
  const told = floor.records.map((record) => {
    const words = context.figuresOf?.(record) ?? '';
    return `${context.marks.get(record.id) ?? ''} ${whatItIs(record)}: ${words}`;
  });
  return {
    kind: 'group',
    clip: context.area ?? extentOf(floor),
    description: t`Rehearsal floor at 1:${context.scale}, the house at the bottom, stage left on the right. ${told.join('. ')}`,
    children: [...ground, ...drawCrosses(context), ...drawLabels(context, labels)],
  };
}

/** The line that everything is taped from, and where centre line and front edge of the platform would be. */
function drawLines(context: PlanContext, { base }: FloorBase): Primitive[] {
  const { palette, area } = context;
  const [e, f] = [onPage(context, base[0]), onPage(context, base[1])];
  const origin = onPage(context, { x: 0, y: 0 });
  const [left, right] = area ? [area.x, area.x + area.width] : [e.x, f.x];
  const top = area ? area.y : origin.y;
  const edge = line({ x: left + 2, y: origin.y }, { x: right - 2, y: origin.y });
  const centre = line({ x: origin.x, y: top + 4 }, { x: origin.x, y: e.y });
  const hasEdge = !area || origin.y < area.y + area.height - EDGE_ROOM;
  return [
    ...(hasEdge
      ? [{ kind: 'path' as const, path: edge, ...pen(palette.faint, WEIGHT.thin, DASH.dashed) }]
      : []),
    { kind: 'path', path: centre, ...pen(palette.faint, WEIGHT.thin, DASH.chain) },
    { kind: 'path', path: line(e, f), ...pen(palette.ink, WEIGHT.heavy) },
    ...[e, f].map((at): Primitive => ({ kind: 'path', path: circle(at, 1.1), fill: palette.ink })),
    ...lineWords(context, { e, f, origin, hasEdge }),
  ];
}

/** Below the front edge there has to be room for the word that says where the house is. */
const EDGE_ROOM = 8;

interface LineEnds {
  readonly e: Point;
  readonly f: Point;
  readonly origin: Point;
  readonly hasEdge: boolean;
}

/** From an end of the line to the foot of its letter, mm. */
const LETTER_OUT = 2 + TEXT.strong * CAP_HEIGHT;

function lineWords(context: PlanContext, { e, f, origin, hasEdge }: LineEnds): Primitive[] {
  const { palette, area, measure } = context;
  const bold = { size: TEXT.strong, weight: 'bold', colour: palette.ink } as const;
  const small = { size: TEXT.small, weight: 'regular', colour: palette.ink } as const;
  const houseY = (hasEdge ? Math.max(e.y, origin.y) : e.y) + 6.5;
  const words = [
    ...[
      { letter: 'E', at: e },
      { letter: 'F', at: f },
    ].map(({ letter, at }) =>
      textLine(letter, { x: at.x, y: at.y + LETTER_OUT }, { ...bold, anchor: 'middle' }),
    ),
    textLine(t`HOUSE`, { x: origin.x, y: houseY }, { ...bold, anchor: 'middle' }),
    textLine(t`CL`, { x: origin.x + 1, y: (area?.y ?? 0) + 4 + TEXT.small }, small),
    ...(hasEdge ? [textLine(t`front edge`, { x: (area?.x ?? 0) + 2, y: origin.y - 1 }, small)] : []),
  ];
  const taken = createOccupancy();
  return words.filter((text) => {
    const box = grownBox(textBox(text, measure), 0.4);
    if (taken.isTaken(box)) return false;
    taken.take(box);
    return true;
  });
}

function floorNotes({ plot, base }: Floor): string[] {
  const { units } = plot;
  const length = formatLength(base.base[1].x - base.base[0].x, units);
  const taping =
    units === 'metric'
      ? t`Tape a straight line ${length} long on the floor. Facing the house, its right-hand end is E and its left-hand end is F. Under each mark: millimetres from E and from F.`
      : t`Tape a straight line ${length} long on the floor. Facing the house, its right-hand end is E and its left-hand end is F. Under each mark: feet and inches from E and from F.`;
  return [
    `${taping} ${lineRuns(base.y, units)}`,
    t`Floors and rooms differ: keep ways out clear, and tape down nothing that anybody could trip over.`,
  ];
}

function lineRuns(y: Millimetres, units: Units): string {
  const off = formatLength(Math.abs(y), units);
  if (y < 0)
    return t`The line runs ${off} towards the house from where the platform’s front edge would be, its middle on the centre line.`;
  return y > 0
    ? t`The line runs ${off} upstage of where the platform’s front edge would be, its middle on the centre line.`
    : t`The line runs along where the platform’s front edge would be, its middle on the centre line.`;
}

function floorTable(floor: Floor, width: number): Block[] {
  const { plot, base, records } = floor;
  const tapes = records.flatMap((record) => taped(record, [base.base], plot.units) ?? []);
  const intro = t`${unitWords(plot)}. ${roundingWords(tapes, plot.units)} E and F are the ends of the taped line; everything lies on the upstage side of it. Next: how far it is to the marks beside it, to try what was taped.`;
  const blocks = tableBlocks(floorRows(floor), width, plot, t`Rehearsal floor`);
  return section({ title: t`Rehearsal floor`, intro }, blocks, width, plot);
}

function floorRows({ plot, base, records }: Floor): Table {
  const { units } = plot;
  const marks = shortMarks(placedInSetup(plot.document, plot.setup));
  const markOf = (record: PlacedRecord): string => marks.get(record.id) ?? '';
  return {
    columns: [
      { title: t`Mark`, parts: 11, bold: true },
      { title: t`What`, parts: 50 },
      { title: t`From E`, parts: 22, bold: true },
      { title: t`From F`, parts: 22, bold: true },
      { title: t`Faces`, parts: 30 },
      { title: t`Next`, parts: 42 },
    ],
    rows: records.map((record) => {
      const tapes = taped(record, [base.base], units);
      return [
        markOf(record),
        whatItIs(record),
        ...distancesOf(tapes, plot),
        turnsMatter(record) ? formatFacing(record.facing) : '',
        nearestTo(record, records)
          .map((other) => `${markOf(other)} ${formatBare(distance(record, other), units)}`)
          .join(', '),
      ];
    }),
  };
}

function distancesOf(tapes: TapedMark | null, { units }: PlotSheetRequest): string[] {
  return tapes ? tapes.distances.map((each) => tapeLength(each, units)) : ['', ''];
}

/** The nearest two that are not on the very same spot. */
function nearestTo(record: PlacedRecord, records: readonly PlacedRecord[]): PlacedRecord[] {
  return records
    .filter((other) => distance(record, other) >= 1)
    .toSorted((a, b) => distance(record, a) - distance(record, b))
    .slice(0, 2);
}
