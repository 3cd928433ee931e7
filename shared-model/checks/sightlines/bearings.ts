/**
 * Which seats an occluder may hide a target from, by bearings alone.
 *
 * Seen from the target's axis T, an eye E looks past a point P of the occluder at a point T + q of the window
 * (|q| at most half its width) only if E - T is parallel to (P - T) - t q for some t in 0..1. So E's bearing from T
 * is the bearing of a point of the occluder widened by half the window. For each target the seats are sorted by their
 * bearing once; then an occluder concerns one stretch of the sorted seats (two, when it goes round the end).
 */

import { CAPSULE, PRISM, SHAPE_STRIDE, type CompiledOccluders, type CompiledScene } from './compile-scene.ts';

const FULL_TURN = 2 * Math.PI;

/** Added to every stretch at both ends: far more than rounding, far less than a seat. */
const MARGIN = 1e-8;

/** Bearings are sorted as whole numbers of this many steps a turn, with the seat's number behind them. */
const STEPS = 2 ** 30;
const SEATS = 2 ** 22;

export interface SeatsByBearing {
  /** The seats in the order of their bearings. */
  readonly order: Int32Array;
  /** Their bearings in steps, in the same order. */
  readonly bearings: Float64Array;
}

export function sortSeats({ eyes }: CompiledScene, x: number, y: number): SeatsByBearing {
  const count = eyes.x.length;
  if (count > SEATS) throw new Error(`more than ${SEATS} seats`);
  // One number for both, because sorting plain numbers is many times faster than sorting with a comparison.
  const keys = new Float64Array(count);
  for (let seat = 0; seat < count; seat++) {
    const bearing = Math.atan2(eyes.y[seat]! - y, eyes.x[seat]! - x);
    keys[seat] = stepOf(bearing) * SEATS + seat;
  }
  keys.sort();
  const order = new Int32Array(count);
  const bearings = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    bearings[i] = Math.floor(keys[i]! / SEATS);
    order[i] = keys[i]! - bearings[i]! * SEATS;
  }
  return { order, bearings };
}

/** The whole step of a bearing in -pi..pi. */
function stepOf(bearing: number): number {
  return Math.floor(((bearing + Math.PI) / FULL_TURN) * STEPS);
}

/** Up to two stretches of sorted seats: from, to, from, to; `to` is one past the last. Unused ones are 0, 0. */
export type Stretches = [number, number, number, number];

export function stretchesOf(seats: SeatsByBearing, wedge: Wedge | null, into: Stretches): void {
  const count = seats.order.length;
  into.fill(0);
  if (wedge === null) {
    into[1] = count;
    return;
  }
  const from = stepOf(wedge.from - MARGIN);
  const to = stepOf(wedge.to + MARGIN);
  into[0] = firstFrom(seats.bearings, from);
  into[1] = firstFrom(seats.bearings, to + 1);
  // What sticks out over one end of the turn comes in again at the other.
  if (from < 0) {
    into[2] = Math.max(into[1], firstFrom(seats.bearings, from + STEPS));
    into[3] = count;
  } else if (to >= STEPS) {
    into[3] = Math.min(into[0], firstFrom(seats.bearings, to - STEPS + 1));
  }
}

/** Index of the first of the sorted values that is at least `least`. */
function firstFrom(sorted: Float64Array, least: number): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! < least) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** A range of bearings in radians, less than half a turn; it may stick out over -pi or pi. */
export interface Wedge {
  readonly from: number;
  readonly to: number;
}

/** Somewhere to look from, and by how much what is looked at is widened. */
export interface Axis {
  readonly x: number;
  readonly y: number;
  readonly margin: number;
}

/** The bearings of a convex occluder from an axis; null when the widened occluder lies all round it. */
export function wedgeOf(occluders: CompiledOccluders, index: number, axis: Axis): Wedge | null {
  const { shape, kind } = occluders;
  const at = index * SHAPE_STRIDE;
  const isCapsule = kind[index] === CAPSULE;
  const corners = isCapsule ? 1 : 4;
  const stride = kind[index] === PRISM ? 2 : 3;
  const margin = axis.margin + (isCapsule ? shape[at + 4]! : 0);
  const middle = Math.atan2(shape[at + 1]! - axis.y, shape[at]! - axis.x);
  let from = Infinity;
  let to = -Infinity;
  for (let k = at; k < at + corners * stride; k += stride) {
    const dx = shape[k]! - axis.x;
    const dy = shape[k + 1]! - axis.y;
    const distance = Math.sqrt(dx * dx + dy * dy);
    if (distance <= margin) return null;
    const bearing = wrapped(Math.atan2(dy, dx) - middle);
    const half = Math.asin(margin / distance);
    from = Math.min(from, bearing - half);
    to = Math.max(to, bearing + half);
  }
  // From within the hull of the widened corners they reach more than half way round; from outside, less.
  return to - from < Math.PI - MARGIN ? { from: middle + from, to: middle + to } : null;
}

function wrapped(angle: number): number {
  if (angle > Math.PI) return angle - FULL_TURN;
  return angle <= -Math.PI ? angle + FULL_TURN : angle;
}
