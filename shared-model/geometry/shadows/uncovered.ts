/**
 * The share of a window that no shadow covers: exact, by a sweep from the left edge to the right.
 *
 * Between two stops the ends of all shadows run along straight lines. Where no two of them change places either, the
 * uncovered height is a linear function, so its mean over the stretch is the mean of its two ends. The sweep
 * therefore stops at every column and, in between, wherever an order on which the sum relies would change.
 *
 * Nothing here hangs on whether two edges coincide: an order that is decided wrongly because of rounding is wrong by
 * no more than the rounding, and so is the area.
 */

import { LEAST_STEP, SAME_HEIGHT } from '../tolerances.ts';
import { HIGH as PART_HIGH, LOW as PART_LOW, openPart, type Parts } from './parts.ts';
import type { Shadows } from './shadows.ts';

/**
 * One record of RECORD numbers a shadow. The ends at the stretch's left and right take turns: what is right now is
 * left in the next stretch, so the place of the left ones is `side` (0 or 1) and that of the right ones 1 - side.
 */
const RECORD = 8;
const LOW = 0;
const HIGH = 2;
const LOW_SLOPE = 4;
const HIGH_SLOPE = 5;
/** Where the current stretch of the shadow's outline ends. */
const STRETCH_END = 6;

const room = {
  records: new Float64Array(64 * RECORD),
  /** Records (their first index) of the shadows under the sweep, sorted by their lower ends from stretch to stretch. */
  order: new Int32Array(64),
  /** Shadows in the order of their left ends. */
  waiting: new Int32Array(64),
  /** The column at or left of the sweep, for each shadow. */
  column: new Int32Array(64),
};

/** What `sumGaps` found. */
const found = new Float64Array(3);
const GAP_LEFT = 0;
const GAP_RIGHT = 1;
/** The part of the stretch for which the gaps run straight from left to right. */
const HOLDS = 2;

/** From 0 (all covered) to 1 (nothing covered). The uncovered parts are added to `parts`, when that is given. */
export function uncoveredShare(shadows: Shadows, parts: Parts | null = null): number {
  if (shadows.count === 0) {
    if (parts !== null) listGaps(parts, 0, 0, { left: 0, right: 1, holds: 1 });
    return 1;
  }
  makeRoom(shadows.count);
  const { order, waiting } = room;
  sortByStart(shadows);
  let nextStart = startOf(shadows, waiting[0]!);
  let left = nextStart;
  let area = left;
  if (parts !== null) listGaps(parts, 0, 0, { left: 0, right: left, holds: 1 });
  let entered = 0;
  let active = 0;
  let side = 0;
  while (left < 1) {
    active = passColumns(shadows, active, left, side);
    while (nextStart <= left) {
      const shadow = waiting[entered++]!;
      order[active++] = shadow * RECORD;
      beginStretch(shadows, shadow, shadows.starts[shadow]!, side);
      nextStart = entered < shadows.count ? startOf(shadows, waiting[entered]!) : 2;
    }
    const right = nextStop(active, Math.min(nextStart, 1));
    const width = right - left;
    placeRightEnds(active, width, side);
    sumGaps(active, side);
    const holds = found[HOLDS]!;
    const gap = found[GAP_LEFT]!;
    area += width * holds * (gap + ((found[GAP_RIGHT]! - gap) * holds) / 2);
    if (parts !== null) listGaps(parts, active, side, { left, right: left + width * holds, holds });
    if (holds === 1) {
      left = right;
      side = 1 - side;
    } else {
      const step = Math.min(width, Math.max(width * holds, LEAST_STEP));
      left = step === width ? right : left + step;
      moveLeftEnds(active, step, side);
    }
  }
  return Math.max(0, Math.min(1, area));
}

function makeRoom(shadows: number): void {
  if (shadows <= room.order.length) return;
  room.records = new Float64Array(2 * shadows * RECORD);
  room.order = new Int32Array(2 * shadows);
  room.waiting = new Int32Array(2 * shadows);
  room.column = new Int32Array(2 * shadows);
}

function startOf(shadows: Shadows, shadow: number): number {
  return shadows.u[shadows.starts[shadow]!]!;
}

function sortByStart(shadows: Shadows): void {
  const { waiting } = room;
  for (let i = 0; i < shadows.count; i++) {
    const start = startOf(shadows, i);
    let j = i - 1;
    for (; j >= 0 && startOf(shadows, waiting[j]!) > start; j--) waiting[j + 1] = waiting[j]!;
    waiting[j + 1] = i;
  }
}

/** Moves shadows whose stretch is over on to the next one and drops those that end. Returns how many are left. */
function passColumns(shadows: Shadows, active: number, left: number, side: number): number {
  const { records, order } = room;
  let kept = 0;
  for (let k = 0; k < active; k++) {
    const record = order[k]!;
    if (records[record + STRETCH_END]! <= left && !nextStretch(shadows, record / RECORD, left, side))
      continue;
    order[kept++] = record;
  }
  return kept;
}

/** False when the shadow ends here. */
function nextStretch(shadows: Shadows, shadow: number, left: number, side: number): boolean {
  const { column } = room;
  const last = shadows.starts[shadow + 1]! - 1;
  let at = column[shadow]! + 1;
  while (at < last && shadows.u[at + 1]! <= left) at++;
  if (at >= last) return false;
  beginStretch(shadows, shadow, at, side);
  return true;
}

function beginStretch({ u, lo, hi }: Shadows, shadow: number, at: number, side: number): void {
  const { records, column } = room;
  const record = shadow * RECORD;
  const end = u[at + 1]!;
  const width = end - u[at]!;
  // A stretch of next to no width has no slope to speak of, and no area.
  const perWidth = width > LEAST_STEP ? 1 / width : 0;
  column[shadow] = at;
  records[record + LOW + side] = lo[at]!;
  records[record + HIGH + side] = hi[at]!;
  records[record + LOW_SLOPE] = (lo[at + 1]! - lo[at]!) * perWidth;
  records[record + HIGH_SLOPE] = (hi[at + 1]! - hi[at]!) * perWidth;
  records[record + STRETCH_END] = end;
}

function nextStop(active: number, limit: number): number {
  const { records, order } = room;
  let stop = limit;
  for (let k = 0; k < active; k++) {
    const end = records[order[k]! + STRETCH_END]!;
    if (end < stop) stop = end;
  }
  return stop;
}

/** Places the right ends, and sorts by the lower left ends; by the lower right ones where those tie. */
function placeRightEnds(active: number, width: number, side: number): void {
  const { records, order } = room;
  const low0 = LOW + side;
  const low1 = LOW + 1 - side;
  let below = -Infinity;
  for (let k = 0; k < active; k++) {
    const record = order[k]!;
    const low = records[record + low0]!;
    const lowRight = low + records[record + LOW_SLOPE]! * width;
    records[record + low1] = lowRight;
    records[record + HIGH + 1 - side] =
      records[record + HIGH + side]! + records[record + HIGH_SLOPE]! * width;
    if (low > below + SAME_HEIGHT) {
      below = low;
      continue;
    }
    let j = k - 1;
    for (; j >= 0; j--) {
      const other = order[j]!;
      const above = records[other + low0]! - low;
      if (above < -SAME_HEIGHT || (above <= SAME_HEIGHT && records[other + low1]! <= lowRight)) break;
      order[j + 1] = other;
    }
    order[j + 1] = record;
    below = records[order[k]! + low0]!;
  }
}

/**
 * Goes up through the active shadows and sums what they leave open. `top` is the upper end of what is covered so far,
 * `floor` the lower end of the stack that it belongs to. Numbers end in 0 for the left end of the stretch and in 1 for
 * the right one. Where two lines keep their order from end to end, plain comparisons say so; else `decide` does.
 */
function sumGaps(active: number, side: number): void {
  const { records, order } = room;
  let top0 = 0;
  let top1 = 0;
  let floor0 = -Infinity;
  let floor1 = -Infinity;
  let gap0 = 0;
  let gap1 = 0;
  let open = true;
  found[HOLDS] = 1;
  for (let k = 0; k < active; k++) {
    const record = order[k]!;
    const low0 = records[record + LOW + side]!;
    const low1 = records[record + LOW + 1 - side]!;
    // The gaps below the stack stay as they are only while nothing else reaches down into them.
    if (low1 < floor1) decide(low0 - floor0, low1 - floor1);
    if (!open) continue;
    const high0 = records[record + HIGH + side]!;
    const high1 = records[record + HIGH + 1 - side]!;
    if (high0 <= top0 && high1 <= top1) continue;
    if ((high0 <= top0 || high1 <= top1) && !decide(high0 - top0, high1 - top1)) continue;
    const overhead = high0 > 1 || high1 > 1;
    if (overhead && decide(low0 - 1, low1 - 1)) continue;
    if (low0 > top0 || low1 > top1) {
      if ((low0 > top0 && low1 > top1) || decide(low0 - top0, low1 - top1)) {
        gap0 += low0 - top0;
        gap1 += low1 - top1;
        floor0 = low0;
        floor1 = low1;
      }
    }
    top0 = high0;
    top1 = high1;
    if (overhead) open = !decide(high0 - 1, high1 - 1);
  }
  found[GAP_LEFT] = open ? gap0 + 1 - top0 : gap0;
  found[GAP_RIGHT] = open ? gap1 + 1 - top1 : gap1;
}

/**
 * Whether one line is above another at the left end of the stretch, given how far it is at both ends; where they tie,
 * the right end decides. Where they cross, the sum holds no farther than that.
 */
function decide(distance0: number, distance1: number): boolean {
  if (distance0 > SAME_HEIGHT) {
    if (distance1 < -SAME_HEIGHT) holdUntil(distance0 / (distance0 - distance1));
    return true;
  }
  if (distance0 >= -SAME_HEIGHT) return distance1 > 0;
  if (distance1 > SAME_HEIGHT) holdUntil(distance0 / (distance0 - distance1));
  return false;
}

function holdUntil(part: number): void {
  if (part < found[HOLDS]!) found[HOLDS] = part;
}

interface Straight {
  readonly left: number;
  readonly right: number;
  /** The part of the whole stretch that lies between them. */
  readonly holds: number;
}

/**
 * Adds the gaps that `sumGaps` has summed, as far as they run straight. No order that matters changes there, so the
 * middle says which of two lines is above.
 */
function listGaps(parts: Parts, active: number, side: number, stretch: Straight): void {
  const { left, right, holds } = stretch;
  // What has next to no width has no area either.
  if (right - left <= LEAST_STEP) return;
  const { records, order } = room;
  let top0 = 0;
  let top1 = 0;
  for (let k = 0; k < active && top0 + top1 < 2; k++) {
    const record = order[k]!;
    const high0 = records[record + HIGH + side]!;
    const high1 = high0 + holds * (records[record + HIGH + 1 - side]! - high0);
    if (high0 + high1 <= top0 + top1) continue;
    const low0 = records[record + LOW + side]!;
    const low1 = low0 + holds * (records[record + LOW + 1 - side]! - low0);
    if (low0 + low1 >= 2) break;
    if (low0 + low1 > top0 + top1) {
      const at = openPart(parts, left, right);
      writeHeights(parts.values, at + PART_LOW, top0, top1);
      writeHeights(parts.values, at + PART_HIGH, low0, low1);
    }
    top0 = high0;
    top1 = high1;
  }
  if (top0 + top1 >= 2) return;
  const at = openPart(parts, left, right);
  writeHeights(parts.values, at + PART_LOW, top0, top1);
  writeHeights(parts.values, at + PART_HIGH, 1, 1);
}

function writeHeights(values: Float64Array, at: number, left: number, right: number): void {
  values[at] = left;
  values[at + 1] = right;
}

/** Moves the left ends to where the sweep stopped within the stretch. */
function moveLeftEnds(active: number, step: number, side: number): void {
  const { records, order } = room;
  for (let k = 0; k < active; k++) {
    const record = order[k]!;
    records[record + LOW + side]! += records[record + LOW_SLOPE]! * step;
    records[record + HIGH + side]! += records[record + HIGH_SLOPE]! * step;
  }
}
