/**
 * Where the players of an ensemble go: in a row, on an arc, in facing pairs, on a horseshoe. In the frame of the
 * platform, about a spot of its own: (0, 0) is the middle of the ensemble's front, +y upstage. Those written first are at
 * stage right, as violins are. Common practice, no source.
 */

import { facingTowards, radians, type Vec2 } from '../geometry/frame.ts';

export const SHAPES = ['arc', 'row', 'horseshoe', 'pairs'] as const;
export type Shape = (typeof SHAPES)[number];

export interface Place extends Vec2 {
  readonly facing: number;
}

/** How wide an arc is open, in degrees; a horseshoe goes a little further round than half. */
const SPAN = { arc: 130, horseshoe: 200 } as const;
/** Of an arc's players, between straight at the house (0) and straight at its middle (1). */
const INWARD = { arc: 0.55, horseshoe: 1 } as const;
/** From a player to the far edge of his own desk, and what a stand takes along the inner ring. */
const BEFORE = 900;
const STAND_ACROSS = 560;
/** Between the two of a facing pair, with a desk each or one ridge that both share; and from one pair to the next. */
const PAIR = { own: 2100, shared: 1500 } as const;

export interface ShapeOrder {
  readonly shape: Shape;
  /** How much room each wants from side to side, in order, millimetres. */
  readonly widths: readonly number[];
  /** Two who face each other read from one stand, back to back. */
  readonly shared: boolean;
}

/** One place for each width. */
export function placesOf({ shape, widths, shared }: ShapeOrder): Place[] {
  if (widths.length < 2) return widths.map(() => ({ x: 0, y: 0, facing: 0 }));
  if (shape === 'row') return row(widths);
  if (shape === 'pairs') return pairs(widths, shared ? PAIR.shared : PAIR.own);
  return round(widths, shape);
}

function row(widths: readonly number[]): Place[] {
  return middles(widths).map((x) => ({ x, y: 0, facing: 0 }));
}

/** Middles of neighbours, the whole about 0. */
function middles(widths: readonly number[]): number[] {
  const whole = sum(widths);
  let before = -whole / 2;
  return widths.map((width) => {
    const middle = before + width / 2;
    before += width;
    return middle;
  });
}

/** On a circle whose middle lies downstage of them; its open side towards the house. */
function round(widths: readonly number[], shape: 'arc' | 'horseshoe'): Place[] {
  // The outer two stand at the ends of the span.
  const steps = middles(widths);
  const [first = 0, last = 0] = [steps[0], steps.at(-1)];
  const span = radians(SPAN[shape]);
  const radius = Math.max((last - first) / span, BEFORE + (STAND_ACROSS * (widths.length - 1)) / span);
  const front = radius * Math.cos(span / 2);
  return steps.map((step) => {
    const angle = -span / 2 + ((step - first) / (last - first)) * span;
    const spot = { x: radius * Math.sin(angle), y: radius * Math.cos(angle) };
    const facing = facingTowards(spot, { x: 0, y: 0 }) * INWARD[shape];
    return { x: spot.x, y: spot.y - front, facing };
  });
}

/** Each pair one behind the other; somebody left over sits at the top, between them. */
function pairs(widths: readonly number[], apart: number): Place[] {
  const places: Place[] = [];
  let y = 0;
  for (let index = 0; index + 1 < widths.length; index += 2) {
    const depth = Math.max(widths[index] ?? 0, widths[index + 1] ?? 0);
    y += index === 0 ? 0 : depth;
    places.push({ x: -apart / 2, y, facing: 90 }, { x: apart / 2, y, facing: -90 });
  }
  if (widths.length % 2 === 1) places.push({ x: 0, y: y + BEFORE + STAND_ACROSS, facing: 0 });
  return places;
}

function sum(values: readonly number[]): number {
  return values.reduce((whole, value) => whole + value, 0);
}
