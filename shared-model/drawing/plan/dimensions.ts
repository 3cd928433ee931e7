/** Distances of an item from the centre line and from the front edge, as dimension lines. */

import { inSetup } from '../../document/document.ts';
import { formatAcross, formatDepth } from '../../document/measures.ts';
import type { PlacedRecord, Point } from '../../document/records.ts';
import { boxContains, textBox } from '../bounds.ts';
import { createOccupancy, type Occupancy } from '../occupancy.ts';
import { line } from '../outline.ts';
import type { Box, GroupPrimitive, PathItem, Primitive, TextPrimitive } from '../primitives.ts';
import { TEXT, WEIGHT } from '../style.ts';
import { textLine } from '../text.ts';
import { onPage, pen, type PlanContext } from './context.ts';

export interface DimensionRoom {
  /** Figures never fall on other texts. Grows by the figures. */
  readonly texts: Occupancy;
  /** The items; figures keep off them if they can. */
  readonly things: Occupancy;
}

/**
 * The dimensions that the layers ask for. Of "all" only those are drawn whose figures find a free place (the marks
 * table has the rest); those asked for by record are always drawn.
 */
export function drawDimensions(context: PlanContext, { texts, things }: DimensionRoom): GroupPrimitive[] {
  const { dimensions } = context.layers;
  if (dimensions === 'none') return [];
  const insist = dimensions !== 'all';
  const records = insist
    ? context.items.filter((record) => dimensions.includes(record.id))
    : [
        ...inSetup(context.document, context.setup, 'stand'),
        ...inSetup(context.document, context.setup, 'player'),
      ];
  const lines = createOccupancy([centreLine(context)]);
  return records.flatMap((record) => drawRecord(context, record, { texts, things, lines, insist }));
}

interface Room extends DimensionRoom {
  /** Where dimension lines run already; the centre line is one. */
  readonly lines: Occupancy;
  readonly insist: boolean;
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
  const upright = isUpright(a, b);
  for (const aside of ASIDE) {
    const [p, q] = upright
      ? [
          { x: a.x + aside, y: a.y },
          { x: b.x + aside, y: b.y },
        ]
      : [
          { x: a.x, y: a.y + aside },
          { x: b.x, y: b.y + aside },
        ];
    if (room.lines.isTaken(lineBox(p, q)) && !(room.insist && aside === ASIDE.at(-1))) continue;
    const figure = placeFigure(context, { a: p, b: q, words }, room);
    if (!figure) continue;
    room.lines.take(lineBox(p, q));
    return [...dimensionLine(context, p, q), ...witness(context, b, q), figure];
  }
  return [];
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

function placeFigure(context: PlanContext, { a, b, words }: FigureLine, room: Room): TextPrimitive | null {
  const upright = isUpright(a, b);
  const look = {
    size: TEXT.small,
    weight: 'regular',
    colour: context.palette.faint,
    anchor: 'middle',
  } as const;
  const tries = SHARES.map((share) => {
    const at = { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
    return upright
      ? textLine(words, { x: at.x - 0.7, y: at.y }, { ...look, turn: -90 })
      : textLine(words, { x: at.x, y: at.y - 0.7 }, look);
  });
  const free = tries.filter((figure) => {
    const box = textBox(figure, context.measure);
    return (
      fitsLine(box, a, b) && (!context.area || boxContains(context.area, box)) && !room.texts.isTaken(box)
    );
  });
  const clear = free.find((figure) => !room.things.isTaken(textBox(figure, context.measure)));
  const chosen = clear ?? (room.insist ? (free[0] ?? tries[0]) : undefined);
  if (chosen) room.texts.take(textBox(chosen, context.measure));
  return chosen ?? null;
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
