/** The convex hull of a few upright strokes, as columns. */

import { LEAST_STEP } from '../tolerances.ts';
import { MOST_COLUMNS, type Outline } from './shadows.ts';

/**
 * `outline` holds strokes (u, lo to hi) in any order; afterwards its columns are the convex hull of them all: sorted
 * by u, one column for each different u. Strokes closer than LEAST_STEP are at the same u.
 */
export function hullColumns(outline: Outline): void {
  sortByU(outline);
  if (outline.size === 4 && liesApart(outline.u)) {
    hullOfFour(outline.u, outline.hi, 1);
    hullOfFour(outline.u, outline.lo, -1);
    return;
  }
  mergeEqual(outline);
  raiseToHull(outline.u, outline.hi, outline.size, 1);
  raiseToHull(outline.u, outline.lo, outline.size, -1);
}

/** Insertion sort: most outlines have four strokes. */
function sortByU({ u, lo, hi, size }: Outline): void {
  for (let i = 1; i < size; i++) {
    const at = u[i]!;
    const low = lo[i]!;
    const high = hi[i]!;
    let j = i - 1;
    for (; j >= 0 && u[j]! > at; j--) {
      u[j + 1] = u[j]!;
      lo[j + 1] = lo[j]!;
      hi[j + 1] = hi[j]!;
    }
    u[j + 1] = at;
    lo[j + 1] = low;
    hi[j + 1] = high;
  }
}

function liesApart(u: Float64Array): boolean {
  return u[1]! - u[0]! > LEAST_STEP && u[2]! - u[1]! > LEAST_STEP && u[3]! - u[2]! > LEAST_STEP;
}

/** Most outlines: four strokes, so that the hull is the highest (side 1) or lowest (side -1) chord over the inner two. */
function hullOfFour(u: Float64Array, values: Float64Array, side: 1 | -1): void {
  const a = values[0]! * side;
  const b = values[1]! * side;
  const c = values[2]! * side;
  const d = values[3]! * side;
  const long = (d - a) / (u[3]! - u[0]!);
  const step = u[1]! - u[0]!;
  const back = u[3]! - u[2]!;
  const second = Math.max(b, a + long * step, a + ((c - a) / (u[2]! - u[0]!)) * step);
  const third = Math.max(c, d - long * back, d - ((d - b) / (u[3]! - u[1]!)) * back);
  values[1] = second * side;
  values[2] = third * side;
}

/** Strokes at the same u become one. */
function mergeEqual(outline: Outline): void {
  const { u, lo, hi, size } = outline;
  let last = 0;
  for (let i = 1; i < size; i++) {
    if (u[i]! - u[last]! < LEAST_STEP) {
      if (lo[i]! < lo[last]!) lo[last] = lo[i]!;
      if (hi[i]! > hi[last]!) hi[last] = hi[i]!;
    } else {
      last++;
      u[last] = u[i]!;
      lo[last] = lo[i]!;
      hi[last] = hi[i]!;
    }
  }
  if (size > 0) outline.size = last + 1;
}

const chain = new Int32Array(MOST_COLUMNS);

/** Lifts (side 1) or sinks (side -1) the values that lie inside the hull onto it (Andrew's monotone chain). */
function raiseToHull(u: Float64Array, values: Float64Array, size: number, side: 1 | -1): void {
  let top = -1;
  for (let c = 0; c < size; c++) {
    while (top > 0) {
      const a = chain[top - 1]!;
      const b = chain[top]!;
      const turn = (u[b]! - u[a]!) * (values[c]! - values[a]!) - (values[b]! - values[a]!) * (u[c]! - u[a]!);
      if (turn * side < 0) break;
      top--;
    }
    chain[++top] = c;
  }
  for (let k = 0; k < top; k++) straighten(u, values, chain[k]!, chain[k + 1]!);
}

/** Puts the values between columns a and b on the line from one to the other. */
function straighten(u: Float64Array, values: Float64Array, a: number, b: number): void {
  if (b === a + 1) return;
  const slope = (values[b]! - values[a]!) / (u[b]! - u[a]!);
  for (let i = a + 1; i < b; i++) values[i] = values[a]! + slope * (u[i]! - u[a]!);
}
