/** Distances of an item from the centre line and from the front edge, as dimension lines. */

import { formatAcross, formatDepth } from '../../document/measures.ts';
import type { PlacedRecord, Point } from '../../document/records.ts';
import { boxContains, textBox } from '../bounds.ts';
import { createOccupancy, type Occupancy } from '../occupancy.ts';
import { line } from '../outline.ts';
import type { Box, GroupPrimitive, PathItem, Primitive, TextPrimitive } from '../primitives.ts';
import { CAP_HEIGHT, TEXT, WEIGHT } from '../style.ts';
import { textLine } from '../text.ts';
import { onPage, pen, type PlanContext } from './context.ts';

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
  return records.flatMap((record) => drawRecord(context, record, { texts, things, lines }));
}

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
  // On the line if that can be; otherwise off it, so far out that it is free.
  const figures = courses.map(([p, q]) => ({ p, q, figure: onLine(context, { a: p, b: q, words }, room) }));
  const [p, q] = courses[0] ?? [a, b];
  const { figure, ...course } = figures.find((each) => each.figure !== null) ?? {
    p,
    q,
    figure: offLine(context, { a: p, b: q, words }, room),
  };
  room.lines.take(lineBox(course.p, course.q));
  if (figure) room.texts.take(textBox(figure, context.measure));
  return [
    ...dimensionLine(context, course.p, course.q),
    ...witness(context, b, course.q),
    ...(figure ? [figure] : []),
  ];
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
/** How far off its line a figure is tried when there is no room on it, mm. */
const OFF_LINE = [0, 3.5, -3.5, 7, -7, 11, -11, 16, -16, 22, -22, 30, -30, 40, -40, 55, -55];

/** Within the line's length, over no text, rather clear of the items. */
function onLine(context: PlanContext, dimension: FigureLine, room: Room): TextPrimitive | null {
  const { a, b } = dimension;
  const tries = [0, UNDER_LINE].flatMap((off) => figuresAt(context, dimension, off));
  const free = tries.filter((figure) => {
    const box = textBox(figure, context.measure);
    return fitsLine(box, a, b) && isFree(context, box, room);
  });
  const clear = free.find((figure) => !room.things.isTaken(textBox(figure, context.measure)));
  return clear ?? free[0] ?? null;
}

function offLine(context: PlanContext, dimension: FigureLine, room: Room): TextPrimitive | null {
  const tries = OFF_LINE.flatMap((off) => figuresAt(context, dimension, off));
  return tries.find((figure) => isFree(context, textBox(figure, context.measure), room)) ?? null;
}

function isFree({ area }: PlanContext, box: Box, { texts }: Room): boolean {
  return (!area || boxContains(area, box)) && !texts.isTaken(box);
}

/** From standing on the line to hanging under it. */
const UNDER_LINE = 2 * ON_LINE + TEXT.small * CAP_HEIGHT;

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
