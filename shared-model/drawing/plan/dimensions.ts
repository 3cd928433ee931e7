/** Distances of an item from the centre line and from the front edge, as dimension lines. */

import { formatAcross, formatDepth } from '../../document/measures.ts';
import type { PlacedRecord, Point } from '../../document/records.ts';
import { boxContains, grownBox, textBox } from '../bounds.ts';
import { createOccupancy, type Occupancy } from '../occupancy.ts';
import { line } from '../outline.ts';
import type { Box, GroupPrimitive, PathItem, Primitive, TextPrimitive } from '../primitives.ts';
import { CAP_HEIGHT, TEXT, WEIGHT } from '../style.ts';
import { textLine } from '../text.ts';
import { onPage, pen, type PlanContext } from './context.ts';
import { itemBox } from './label-requests.ts';

export interface DimensionRoom {
  /** Figures never fall on other texts or on marks. Grows by the figures. */
  readonly texts: Occupancy;
  /** The items; figures keep off them if they can. */
  readonly things: Occupancy;
}

/** The dimensions of the records that the layers name, each with its figure where it can be read. */
export function drawDimensions(context: PlanContext, { texts, things }: DimensionRoom): GroupPrimitive[] {
  const { dimensions } = context.layers;
  if (typeof dimensions === 'string') return [];
  const records = context.items.filter((record) => dimensions.includes(record.id));
  const lines = createOccupancy([centreLine(context)]);
  for (const record of records) texts.take(grownBox(itemBox(context, record), RING));
  return records.flatMap((record) => drawRecord(context, record, { texts, things, lines }));
}

/** What is measured is ringed on the screen; figures keep off the ring, mm. */
const RING = 2.2;

interface Room extends DimensionRoom {
  /** Where dimension lines run already; the centre line is one. */
  readonly lines: Occupancy;
}

function drawRecord(context: PlanContext, record: PlacedRecord, room: Room): GroupPrimitive[] {
  const { x, y } = record;
  const across = { from: { x: 0, y }, to: { x, y }, words: formatAcross(x, context.units) };
  const depth = { from: { x, y: 0 }, to: { x, y }, words: formatDepth(y, context.units) };
  const children = [across, depth].flatMap((dimension) => drawDimension(context, dimension, room));
  return children.length > 0 ? [{ kind: 'group', subject: record.id, children }] : [];
}

interface Dimension {
  readonly from: Point;
  readonly to: Point;
  readonly words: string;
}

/** Shorter than this on paper a dimension line is not worth drawing. */
const SHORTEST = 3;

/** How far beside the item a dimension is tried when another line already runs there, mm on paper. */
const ASIDE = [0, 4.5, -4.5, 9, -9];

function drawDimension(context: PlanContext, { from, to, words }: Dimension, room: Room): Primitive[] {
  const [a, b] = [onPage(context, from), onPage(context, to)];
  if (Math.hypot(b.x - a.x, b.y - a.y) < SHORTEST) return [];
  const beside = ASIDE.map((aside) => movedAside(a, b, aside)).filter(
    ([p, q]) => !room.lines.isTaken(lineBox(p, q)),
  );
  const courses = beside.length > 0 ? beside : [movedAside(a, b, ASIDE.at(-1) ?? 0)];
  const ways = [ON_LINE_CLEAR, NEAR_LINE_CLEAR, ANYWHERE].map(
    (where) => (start: Point, end: Point) => placeFigure(context, { a: start, b: end, words }, room, where),
  );
  const found = firstFound(courses, ways);
  const [p, q] = courses[0] ?? [a, b];
  const { figure, ...course } = found ?? { p, q, figure: null };
  room.lines.take(lineBox(course.p, course.q));
  if (figure) room.texts.take(textBox(figure, context.measure));
  return [
    ...dimensionLine(context, course.p, course.q),
    ...witness(context, b, course.q),
    ...(figure ? [figure] : []),
  ];
}

interface PlacedFigure {
  readonly p: Point;
  readonly q: Point;
  readonly figure: TextPrimitive | null;
}

/** The first way that finds a place on any of the courses. */
function firstFound(
  courses: readonly (readonly [Point, Point])[],
  ways: readonly ((p: Point, q: Point) => TextPrimitive | null)[],
): PlacedFigure | null {
  for (const way of ways) {
    for (const [p, q] of courses) {
      const figure = way(p, q);
      if (figure) return { p, q, figure };
    }
  }
  return null;
}

function movedAside(a: Point, b: Point, aside: number): [Point, Point] {
  const move = ({ x, y }: Point): Point => (isUpright(a, b) ? { x: x + aside, y } : { x, y: y + aside });
  return [move(a), move(b)];
}

function isUpright(a: Point, b: Point): boolean {
  return Math.abs(b.x - a.x) < Math.abs(b.y - a.y);
}

/** The strip that a dimension line keeps for itself; its ends may touch what runs across. */
function lineBox(a: Point, b: Point): Box {
  const [x, y] = [Math.min(a.x, b.x), Math.min(a.y, b.y)];
  const [width, height] = [Math.abs(b.x - a.x), Math.abs(b.y - a.y)];
  return isUpright(a, b)
    ? { x: x - CLEARANCE, y: y + CLEARANCE, width: 2 * CLEARANCE, height: height - 2 * CLEARANCE }
    : { x: x + CLEARANCE, y: y - CLEARANCE, width: width - 2 * CLEARANCE, height: 2 * CLEARANCE };
}

const CLEARANCE = 1.2;

/** A line with the oblique strokes of building drawings at its ends. */
export function dimensionLine({ palette }: Pick<PlanContext, 'palette'>, a: Point, b: Point): Primitive[] {
  return [
    { kind: 'path', path: line(a, b), ...pen(palette.faint, WEIGHT.hair) },
    { kind: 'path', path: [...tick(a), ...tick(b)], ...pen(palette.faint, WEIGHT.medium) },
  ];
}

/** From the item to the end of a dimension that runs beside it. */
function witness({ palette }: PlanContext, item: Point, end: Point): Primitive[] {
  if (item.x === end.x && item.y === end.y) return [];
  return [{ kind: 'path', path: line(item, end), ...pen(palette.faint, WEIGHT.hair) }];
}

/** The oblique stroke that ends a dimension line in building drawings. */
function tick({ x, y }: Point): PathItem[] {
  return line({ x: x - 0.8, y: y + 0.8 }, { x: x + 0.8, y: y - 0.8 });
}

interface FigureLine {
  readonly a: Point;
  readonly b: Point;
  readonly words: string;
}

/** Places along the line where the figure is tried, as shares of its length. */
const SHARES = [0.5, 0.35, 0.65, 0.22, 0.78, 0.12, 0.88];
/** Figures stand on their line, or hang under it. */
const ON_LINE = 0.7;
/** From standing on the line to hanging under it. */
const UNDER_LINE = 2 * ON_LINE + TEXT.small * CAP_HEIGHT;

/** Where a figure may stand about its line. */
interface Where {
  /** How far off the line it is tried, mm. */
  readonly off: readonly number[];
  /** No longer than the line, or it would seem to belong to something else. */
  readonly within: boolean;
  /** Off the items too. */
  readonly clear: boolean;
}

const ON_LINE_CLEAR: Where = { off: [0, UNDER_LINE], within: true, clear: true };
const NEAR_LINE_CLEAR: Where = { off: [0, UNDER_LINE, -2.5, 5.5, -5.5, 8], within: false, clear: true };
/** So far out that it is free of texts and marks, over items if need be. */
const ANYWHERE: Where = {
  off: [0, UNDER_LINE, 5.5, -5.5, 9, -9, 13, -13, 18, -18, 25, -25, 35, -35, 50, -50, 70, -70],
  within: false,
  clear: false,
};

function placeFigure(context: PlanContext, line: FigureLine, room: Room, where: Where): TextPrimitive | null {
  const { off, within, clear } = where;
  const tries = off.flatMap((each) => figuresAt(context, line, each));
  const fits = tries.find((figure) => {
    const box = textBox(figure, context.measure);
    if (within && !fitsLine(box, line.a, line.b)) return false;
    return isFree(context, box, room) && !(clear && room.things.isTaken(box));
  });
  return fits ?? null;
}

function isFree({ area }: PlanContext, box: Box, { texts }: Room): boolean {
  return (!area || boxContains(area, box)) && !texts.isTaken(box);
}

/** The figure at its places along the line, `off` mm to the right of it or below it. */
function figuresAt(context: PlanContext, { a, b, words }: FigureLine, off: number): TextPrimitive[] {
  const upright = isUpright(a, b);
  const look = {
    size: TEXT.small,
    weight: 'regular',
    colour: context.palette.faint,
    anchor: 'middle',
  } as const;
  return SHARES.map((share) => {
    const at = { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
    return upright
      ? textLine(words, { x: at.x - ON_LINE + off, y: at.y }, { ...look, turn: -90 })
      : textLine(words, { x: at.x, y: at.y - ON_LINE + off }, look);
  });
}

/** A figure that sticks out beyond its line would seem to belong to something else. */
function fitsLine(box: Box, a: Point, b: Point): boolean {
  const upright = isUpright(a, b);
  return upright
    ? box.y >= Math.min(a.y, b.y) && box.y + box.height <= Math.max(a.y, b.y)
    : box.x >= Math.min(a.x, b.x) && box.x + box.width <= Math.max(a.x, b.x);
}

function centreLine({ origin }: PlanContext): Box {
  return { x: origin.x - CLEARANCE, y: origin.y - 1000, width: 2 * CLEARANCE, height: 2000 };
}
