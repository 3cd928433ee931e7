/** The boxes that drawings take up on the page. */

import type { Vec2 } from '../geometry/frame.ts';
import { chain, mapPoint, shift, turnAbout } from './affine.ts';
import type { Box, MeasureText, PathItem, Primitive, TextPrimitive } from './primitives.ts';
import { ASCENT, DESCENT } from './style.ts';

/**
 * The box of everything the primitives paint, in mm: curves by their true extent, lines with half their width,
 * texts by their measured width. Null when nothing is painted.
 */
export function bounds(primitives: readonly Primitive[], measure: MeasureText): Box | null {
  const spread = new Spread();
  for (const primitive of primitives) addPrimitive(spread, primitive, measure);
  return spread.box();
}

/** The upright box round a text, turned or not. */
export function textBox(text: TextPrimitive, measure: MeasureText): Box {
  const spread = new Spread();
  addText(spread, text, measure);
  return spread.box() ?? { x: text.x, y: text.y, width: 0, height: 0 };
}

/**
 * Upright boxes that a text fills: one where it runs along the page's sides; where it runs aslant many small ones along
 * its line, for the box round all of it would claim much that is free.
 */
export function textPieces(text: TextPrimitive, measure: MeasureText): Box[] {
  const turn = text.turn ?? 0;
  if (Math.abs(turn / 90 - Math.round(turn / 90)) < 1e-6) return [textBox(text, measure)];
  const width = measure(text.text, text.size, text.weight);
  const count = Math.max(1, Math.min(MOST_PIECES, Math.ceil(width / text.size)));
  const left = text.anchor === 'start' ? 0 : text.anchor === 'middle' ? -width / 2 : -width;
  const map = chain(turnAbout(turn), shift(text.x, text.y));
  return Array.from({ length: count }, (_, piece) => {
    const spread = new Spread();
    for (const end of [piece, piece + 1]) {
      for (const y of [-ASCENT * text.size, DESCENT * text.size]) {
        const corner = mapPoint(map, { x: left + (width * end) / count, y });
        spread.add(corner.x, corner.y);
      }
    }
    return spread.box() ?? textBox(text, measure);
  });
}

const MOST_PIECES = 100;

/** The boxes of all texts in a drawing. */
export function textBoxes(drawn: readonly Primitive[], measure: MeasureText): Box[] {
  return drawn.flatMap((primitive) => {
    if (primitive.kind === 'text') return textPieces(primitive, measure);
    return primitive.kind === 'group' ? textBoxes(primitive.children, measure) : [];
  });
}

export function boxOfPoints(points: Iterable<Vec2>): Box | null {
  const spread = new Spread();
  for (const { x, y } of points) spread.add(x, y);
  return spread.box();
}

export function joinBoxes(boxes: readonly Box[]): Box | null {
  return boxOfPoints(
    boxes.flatMap(({ x, y, width, height }) => [
      { x, y },
      { x: x + width, y: y + height },
    ]),
  );
}

export function grownBox({ x, y, width, height }: Box, by: number): Box {
  return { x: x - by, y: y - by, width: width + 2 * by, height: height + 2 * by };
}

export function boxesOverlap(a: Box, b: Box): boolean {
  return overlapArea(a, b) > 0;
}

export function overlapArea(a: Box, b: Box): number {
  const width = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
  const height = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
  return width > 0 && height > 0 ? width * height : 0;
}

export function boxContains(outer: Box, inner: Box): boolean {
  return (
    inner.x >= outer.x &&
    inner.y >= outer.y &&
    inner.x + inner.width <= outer.x + outer.width &&
    inner.y + inner.height <= outer.y + outer.height
  );
}

/** Grows as points are added. */
class Spread {
  private minX = Infinity;
  private minY = Infinity;
  private maxX = -Infinity;
  private maxY = -Infinity;

  add(x: number, y: number, margin = 0): void {
    this.minX = Math.min(this.minX, x - margin);
    this.minY = Math.min(this.minY, y - margin);
    this.maxX = Math.max(this.maxX, x + margin);
    this.maxY = Math.max(this.maxY, y + margin);
  }

  box(): Box | null {
    if (this.minX > this.maxX) return null;
    return { x: this.minX, y: this.minY, width: this.maxX - this.minX, height: this.maxY - this.minY };
  }
}

function addPrimitive(spread: Spread, primitive: Primitive, measure: MeasureText): void {
  if (primitive.kind === 'text') addText(spread, primitive, measure);
  else if (primitive.kind === 'path') addPath(spread, primitive.path, (primitive.stroke?.width ?? 0) / 2);
  else addGroup(spread, primitive.children, { clip: primitive.clip, measure });
}

interface GroupContent {
  readonly clip: Box | undefined;
  readonly measure: MeasureText;
}

function addGroup(spread: Spread, children: readonly Primitive[], { clip, measure }: GroupContent): void {
  const inner = bounds(children, measure);
  const seen = inner && clip ? common(inner, clip) : inner;
  if (!seen) return;
  spread.add(seen.x, seen.y);
  spread.add(seen.x + seen.width, seen.y + seen.height);
}

function common(a: Box, b: Box): Box | null {
  const [x, y] = [Math.max(a.x, b.x), Math.max(a.y, b.y)];
  const width = Math.min(a.x + a.width, b.x + b.width) - x;
  const height = Math.min(a.y + a.height, b.y + b.height) - y;
  return width >= 0 && height >= 0 ? { x, y, width, height } : null;
}

function addText(spread: Spread, text: TextPrimitive, measure: MeasureText): void {
  const width = measure(text.text, text.size, text.weight);
  const left = text.anchor === 'start' ? 0 : text.anchor === 'middle' ? -width / 2 : -width;
  const map = chain(turnAbout(text.turn ?? 0), shift(text.x, text.y));
  for (const x of [left, left + width]) {
    for (const y of [-ASCENT * text.size, DESCENT * text.size]) {
      const corner = mapPoint(map, { x, y });
      spread.add(corner.x, corner.y);
    }
  }
}

function addPath(spread: Spread, path: readonly PathItem[], margin: number): void {
  let at = { x: 0, y: 0 };
  for (const item of path) {
    if (item[0] === 'Z') continue;
    const end = item[0] === 'C' ? { x: item[5], y: item[6] } : { x: item[1], y: item[2] };
    if (item[0] === 'C')
      addCubic(spread, [at.x, item[1], item[3], item[5]], [at.y, item[2], item[4], item[6]], margin);
    spread.add(end.x, end.y, margin);
    at = end;
  }
}

type Four = readonly [number, number, number, number];

function addCubic(spread: Spread, x: Four, y: Four, margin: number): void {
  for (const t of [...turningPoints(x), ...turningPoints(y)])
    spread.add(onCubic(x, t), onCubic(y, t), margin);
}

function onCubic([p, q, r, s]: Four, t: number): number {
  const u = 1 - t;
  return u * u * u * p + 3 * u * u * t * q + 3 * u * t * t * r + t * t * t * s;
}

/** Where in (0, 1) the derivative, a quadratic, is zero. */
function turningPoints([p, q, r, s]: Four): number[] {
  const [a, b, c] = [s - 3 * r + 3 * q - p, 2 * (r - 2 * q + p), q - p];
  if (Math.abs(a) < 1e-12) return Math.abs(b) < 1e-12 ? [] : [-c / b].filter(inside);
  const root = b * b - 4 * a * c;
  if (root < 0) return [];
  return [(-b + Math.sqrt(root)) / (2 * a), (-b - Math.sqrt(root)) / (2 * a)].filter(inside);
}

function inside(t: number): boolean {
  return t > 0 && t < 1;
}
