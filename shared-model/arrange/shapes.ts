/**
 * Where the players of an ensemble go: in a row, on an arc, in facing pairs, on a horseshoe. In the frame of the
 * platform, about a spot of its own: (0, 0) is the middle of the ensemble's front, +y upstage. Those written first are at
 * stage right, as violins are. Common practice, no source.
 */

import { facingTowards, radians, type Vec2 } from '../geometry/frame.ts';
import { usualFashion, type Fashion } from './fashions.ts';

export const SHAPES = ['arc', 'row', 'horseshoe', 'pairs'] as const;
export type Shape = (typeof SHAPES)[number];

export interface Place extends Vec2 {
  /** Where he sits towards: his page, as far as that does not turn his back on the house. */
  readonly facing: number;
  /** Where his page lies, a direction like `facing`. */
  readonly page: number;
}

/** Of an arc's players, between straight at the house (0) and straight at its middle (1). */
const INWARD = { arc: 0.55, horseshoe: 1 } as const;
/** From a player to the far edge of his own desk, and what a stand takes along the inner ring. */
const BEFORE = 900;
const STAND_ACROSS = 560;
/** Between the two of a facing pair, with a desk each or one ridge that both share; and from one pair to the next. */
const PAIR = { own: 2100, shared: 1500 } as const;
/** How far pairs over one stand are set aside, of how much farther apart they would sit with a desk each. */
const STAGGER = 0.3;
/** Farther round he would have his back to the house. */
const PROFILE = 90;

export interface ShapeOrder {
  readonly shape: Shape;
  /** How much room each wants from side to side, in order, millimetres. */
  readonly widths: readonly number[];
  /** Two who face each other read from one stand, back to back. */
  readonly shared: boolean;
  /** Left out: the usual one. */
  readonly fashion?: Fashion;
}

/** One place for each width. */
export function placesOf({ shape, widths, shared, fashion = usualFashion(shape) }: ShapeOrder): Place[] {
  if (widths.length < 2) return widths.map(() => looking({ x: 0, y: 0 }, turnedAside(0, 0, fashion.aside)));
  if (shape === 'row') return row(widths, fashion);
  if (shape === 'pairs') return pairs(widths, shared, fashion);
  return round(widths, shape, fashion);
}

function looking({ x, y }: Vec2, page: number): Place {
  return { x, y, facing: Math.max(-PROFILE, Math.min(PROFILE, page)), page };
}

/** Whoever is at stage right looks at least so far towards stage left, and the other way round. */
function turnedAside(x: number, page: number, aside: number): number {
  if (Math.abs(page) >= aside) return page;
  return x > 1 || (Math.abs(x) <= 1 && page < 0) ? -aside : aside;
}

function row(widths: readonly number[], { roomy, open, aside }: Fashion): Place[] {
  const steps = middles(widths.map((width) => width * roomy));
  const half = Math.abs(steps[0] ?? 0) || 1;
  return steps.map((x) =>
    looking({ x, y: open * Math.max(0, 1 - (x / half) ** 2) }, turnedAside(x, 0, aside)),
  );
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
function round(widths: readonly number[], shape: 'arc' | 'horseshoe', fashion: Fashion): Place[] {
  // The outer two stand at the ends of the span.
  const steps = middles(widths);
  const [first = 0, last = 0] = [steps[0], steps.at(-1)];
  const span = radians(fashion.open);
  const least = Math.max((last - first) / span, BEFORE + (STAND_ACROSS * (widths.length - 1)) / span);
  const radius = least * fashion.roomy;
  const front = radius * Math.cos(span / 2);
  return steps.map((step) => {
    const angle = -span / 2 + ((step - first) / (last - first)) * span;
    const spot = { x: radius * Math.sin(angle), y: radius * Math.cos(angle) };
    const inward = facingTowards(spot, { x: 0, y: 0 }) * INWARD[shape];
    return looking({ x: spot.x, y: spot.y - front }, turnedAside(spot.x, inward, fashion.aside));
  });
}

/** Each pair one behind the other; somebody left over sits at the top, between them. */
function pairs(widths: readonly number[], shared: boolean, { open, aside, roomy }: Fashion): Place[] {
  const places: Place[] = [];
  const rows = Math.floor(widths.length / 2);
  let y = 0;
  for (let row = 0; row < rows; row++) {
    const depth = Math.max(widths[2 * row] ?? 0, widths[2 * row + 1] ?? 0);
    y += row === 0 ? 0 : depth * roomy;
    // Over one stand both have to sit as near as it lets them: pairs are set to the sides of each other instead.
    const apart = shared ? PAIR.shared : PAIR.own + open * (rows - 1 - row);
    const middle = shared && rows > 1 ? (row % 2 === 0 ? -1 : 1) * STAGGER * open : 0;
    places.push(looking({ x: middle - apart / 2, y }, aside), looking({ x: middle + apart / 2, y }, -aside));
  }
  if (widths.length % 2 === 1) {
    const top = y + BEFORE + STAND_ACROSS * roomy;
    places.push(looking({ x: 0, y: top }, open === 0 ? 0 : aside - PROFILE / 3));
  }
  return places;
}

function sum(values: readonly number[]): number {
  return values.reduce((whole, value) => whole + value, 0);
}
