/**
 * Shadows on a window as stacks of columns: at each u a shadow reaches from `lo` to `hi`, straight in between. A
 * convex shadow needs a column at each corner. All shadows of a window share one buffer that is filled anew for
 * every pair of eye and window, so nothing is allocated while computing.
 *
 * In this folder `!` follows a read of a typed array whose index the loop bounds keep in range.
 */

/** What a shadow does to the window. */
export const NOTHING = 0;
export const A_PART = 1;
export const EVERYTHING = 2;
export type Cover = typeof NOTHING | typeof A_PART | typeof EVERYTHING;

export interface Shadows {
  /** Columns of all shadows, one shadow after the other, u growing within each. */
  u: Float64Array;
  lo: Float64Array;
  hi: Float64Array;
  /** Shadow i has the columns from `starts[i]` up to, but not including, `starts[i + 1]`. */
  starts: Int32Array;
  count: number;
}

/** The outline of one shadow while it is made; not yet cut to the window. */
export interface Outline {
  readonly u: Float64Array;
  readonly lo: Float64Array;
  readonly hi: Float64Array;
  size: number;
}

/** No single shadow has more columns than this. */
export const MOST_COLUMNS = 160;

export function createShadows(): Shadows {
  return {
    u: new Float64Array(4 * MOST_COLUMNS),
    lo: new Float64Array(4 * MOST_COLUMNS),
    hi: new Float64Array(4 * MOST_COLUMNS),
    starts: new Int32Array(64),
    count: 0,
  };
}

export function createOutline(): Outline {
  return {
    u: new Float64Array(MOST_COLUMNS),
    lo: new Float64Array(MOST_COLUMNS),
    hi: new Float64Array(MOST_COLUMNS),
    size: 0,
  };
}

/** Adds the part of a convex outline that lies between u = 0 and u = 1, unless it misses the window. */
export function addShadow(shadows: Shadows, outline: Outline): Cover {
  const { u, lo, hi, size } = outline;
  if (size < 2 || u[0]! >= 1 || u[size - 1]! <= 0) return NOTHING;
  const start = openShadow(shadows);
  let first = 0;
  while (u[first + 1]! <= 0) first++;
  let last = size - 1;
  while (u[last - 1]! >= 1) last--;
  let end = start;
  for (let i = first; i <= last; i++, end++) {
    shadows.u[end] = u[i]!;
    shadows.lo[end] = lo[i]!;
    shadows.hi[end] = hi[i]!;
  }
  if (u[first]! < 0) cutAt(shadows, start, start + 1, 0);
  if (u[last]! > 1) cutAt(shadows, end - 1, end - 2, 1);
  return closeShadow(shadows, end);
}

/** Where the next shadow's columns begin; there is room for MOST_COLUMNS. */
function openShadow(shadows: Shadows): number {
  const start = shadows.starts[shadows.count]!;
  if (start + MOST_COLUMNS > shadows.u.length) {
    shadows.u = doubled(shadows.u);
    shadows.lo = doubled(shadows.lo);
    shadows.hi = doubled(shadows.hi);
  }
  return start;
}

/** Keeps the columns from where the shadow was opened up to `end`, unless they pass above or below the window. */
function closeShadow(shadows: Shadows, end: number): Cover {
  const start = shadows.starts[shadows.count]!;
  let highest = -Infinity;
  let lowestTop = Infinity;
  let lowest = Infinity;
  let highestFoot = -Infinity;
  for (let i = start; i < end; i++) {
    const lo = shadows.lo[i]!;
    const hi = shadows.hi[i]!;
    if (hi > highest) highest = hi;
    if (hi < lowestTop) lowestTop = hi;
    if (lo < lowest) lowest = lo;
    if (lo > highestFoot) highestFoot = lo;
  }
  if (highest <= 0 || lowest >= 1) return NOTHING;
  if (lowestTop >= 1 && highestFoot <= 0 && shadows.u[start] === 0 && shadows.u[end - 1] === 1) {
    return EVERYTHING;
  }
  shadows.count++;
  if (shadows.count === shadows.starts.length) shadows.starts = doubled(shadows.starts);
  shadows.starts[shadows.count] = end;
  return A_PART;
}

/** Moves the end column `at` inwards along the line to its neighbour `inner`, so that it stands at u = `edge`. */
function cutAt(shadows: Shadows, at: number, inner: number, edge: number): void {
  const { u, lo, hi } = shadows;
  const part = (edge - u[inner]!) / (u[at]! - u[inner]!);
  lo[at] = lo[inner]! + part * (lo[at]! - lo[inner]!);
  hi[at] = hi[inner]! + part * (hi[at]! - hi[inner]!);
  u[at] = edge;
}

function doubled<A extends Float64Array | Int32Array>(array: A): A {
  const larger =
    array instanceof Float64Array ? new Float64Array(2 * array.length) : new Int32Array(2 * array.length);
  larger.set(array);
  return larger as A;
}
