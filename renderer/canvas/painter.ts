/**
 * Translates the drawing's primitives to a canvas, and decides nothing: every size, colour and place comes from the
 * drawing. The caller has set the context's transform so that one unit is a millimetre of the drawing's paper.
 */

import type {
  FontWeight,
  GroupPrimitive,
  MeasureText,
  PathItem,
  PathPrimitive,
  Primitive,
  TextPrimitive,
} from '#model/drawing/primitives.ts';

/** The face the paper is set in; the same file is embedded in the PDF. */
export const DRAWING_FACE = 'Atkinson Hyperlegible Next';

const WEIGHTS: Readonly<Record<FontWeight, number>> = { regular: 400, bold: 700 };

/** Canvas text smaller than a few units is laid out coarsely by browsers, so it is set larger and scaled down. */
const TYPE_UNIT = 64;

/** Of the window or of a worker. */
export type Pen = CanvasRenderingContext2D | OffscreenCanvasRenderingContext2D;

const outlines = new WeakMap<readonly PathItem[], Path2D>();

export function paint(context: Pen, primitives: readonly Primitive[]): void {
  for (const primitive of primitives) {
    if (primitive.kind === 'path') paintPath(context, primitive);
    else if (primitive.kind === 'text') paintText(context, primitive);
    else paintGroup(context, primitive);
  }
}

/** Text widths of a canvas, which sets the same face with the same figures as the screen does. */
export function canvasMeasure(context: Pen): MeasureText {
  const known = new Map<string, number>();
  return (text, size, weight) => {
    const key = weight + text;
    let width = known.get(key);
    if (width === undefined) {
      context.font = fontOf(weight, TYPE_UNIT);
      width = context.measureText(text).width / TYPE_UNIT;
      known.set(key, width);
    }
    return width * size;
  };
}

/**
 * The path as the browser's own object, made once for each path of the drawing. From text, for built up call by call
 * it takes time with the square of its length.
 */
export function outlineOfPath(items: readonly PathItem[]): Path2D {
  let outline = outlines.get(items);
  if (!outline) {
    outline = new Path2D(items.map((item) => item.join(' ')).join(''));
    outlines.set(items, outline);
  }
  return outline;
}

/**
 * Longer than this, a path is the seats of a large house or the like, painted some at a time and straight from the drawing:
 * as the browser's own object it would keep hold of more memory than all else, until long after it is painted over.
 */
const LONG = 2000;

function paintPath(context: Pen, primitive: PathPrimitive): void {
  const { path, stroke, fill } = primitive;
  if (fill !== undefined) context.fillStyle = fill;
  if (stroke) {
    context.strokeStyle = stroke.colour;
    context.lineWidth = stroke.width;
    context.lineJoin = 'round';
    context.lineCap = stroke.dash ? 'butt' : 'round';
    context.setLineDash(stroke.dash ? [...stroke.dash] : []);
  }
  if (path.length > LONG) return paintInPieces(context, primitive);
  const outline = outlineOfPath(path);
  if (fill !== undefined) context.fill(outline);
  if (stroke) context.stroke(outline);
}

/** Pieces end where an outline does; those of a long path lie beside each other. */
function paintInPieces(context: Pen, { path, fill, stroke }: PathPrimitive): void {
  for (let from = 0; from < path.length;) {
    let to = Math.min(path.length, from + PIECE);
    while (to < path.length && path[to]?.[0] !== 'M') to++;
    context.beginPath();
    for (; from < to; from++) traceItem(context, path[from]);
    if (fill !== undefined) context.fill();
    if (stroke) context.stroke();
  }
}

const PIECE = 400;

function traceItem(context: Pen, item: PathItem | undefined): void {
  if (item?.[0] === 'M') context.moveTo(item[1], item[2]);
  else if (item?.[0] === 'L') context.lineTo(item[1], item[2]);
  else if (item?.[0] === 'C') context.bezierCurveTo(item[1], item[2], item[3], item[4], item[5], item[6]);
  else if (item) context.closePath();
}

function paintText(context: Pen, primitive: TextPrimitive): void {
  context.save();
  context.translate(primitive.x, primitive.y);
  if (primitive.turn) context.rotate((primitive.turn * Math.PI) / 180);
  context.scale(primitive.size / TYPE_UNIT, primitive.size / TYPE_UNIT);
  context.font = fontOf(primitive.weight, TYPE_UNIT);
  context.textAlign = primitive.anchor === 'middle' ? 'center' : primitive.anchor;
  context.textBaseline = 'alphabetic';
  context.fillStyle = primitive.colour;
  context.fillText(primitive.text, 0, 0);
  context.restore();
}

function paintGroup(context: Pen, group: GroupPrimitive): void {
  if (!group.clip) return paint(context, group.children);
  const { x, y, width, height } = group.clip;
  context.save();
  context.beginPath();
  context.rect(x, y, width, height);
  context.clip();
  paint(context, group.children);
  context.restore();
}

export function fontOf(weight: FontWeight, size: number): string {
  return `${WEIGHTS[weight]} ${size}px "${DRAWING_FACE}", sans-serif`;
}
