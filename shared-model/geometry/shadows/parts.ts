/**
 * Parts of a window, each between two upright cuts and two straight edges, one below and one above. What shadows leave
 * uncovered is made of such parts, and what two sets of shadows leave together is what their parts have in common.
 */

import { LEAST_STEP } from '../tolerances.ts';
import type { Shadows } from './shadows.ts';

/** Numbers of a part: u at its left and right end, and the heights of its two edges at both ends. */
const PART = 6;
const LEFT = 0;
const RIGHT = 1;
export const LOW = 2;
export const HIGH = 4;

/** Parts one after the other from left to right; those over the same stretch of u from below. */
export interface Parts {
  values: Float64Array;
  count: number;
}

export function createParts(): Parts {
  return { values: new Float64Array(64 * PART), count: 0 };
}

/**
 * Adds a part from `left` to `right` and says where its numbers begin: the caller writes the heights, at LOW and
 * LOW + 1 (left and right end of the lower edge) and at HIGH and HIGH + 1.
 */
export function openPart(parts: Parts, left: number, right: number): number {
  const at = parts.count * PART;
  if (at === parts.values.length) {
    const larger = new Float64Array(2 * at);
    larger.set(parts.values);
    parts.values = larger;
  }
  parts.values[at + LEFT] = left;
  parts.values[at + RIGHT] = right;
  parts.count++;
  return at;
}

/** Makes the one shadow of a window into parts: what it covers, which may reach beyond the window. */
export function partsOfShadow({ u, lo, hi, starts }: Shadows, parts: Parts): void {
  parts.count = 0;
  const last = starts[1]! - 1;
  for (let i = starts[0]!; i < last; i++) {
    if (u[i + 1]! - u[i]! <= LEAST_STEP) continue;
    const at = openPart(parts, u[i]!, u[i + 1]!);
    parts.values[at + LOW] = lo[i]!;
    parts.values[at + LOW + 1] = lo[i + 1]!;
    parts.values[at + HIGH] = hi[i]!;
    parts.values[at + HIGH + 1] = hi[i + 1]!;
  }
}

/** The area that the parts `from` up to, but not including, `to` of `some` have in common with all of `others`. */
export function commonArea(some: Parts, from: number, to: number, others: Parts): number {
  const end = others.count * PART;
  let area = 0;
  let first = 0;
  for (let p = from * PART; p < to * PART; p += PART) {
    const left = some.values[p + LEFT]!;
    const right = some.values[p + RIGHT]!;
    while (first < end && others.values[first + RIGHT]! <= left) first += PART;
    for (let q = first; q < end && others.values[q + LEFT]! < right; q += PART) {
      area += overlap(some.values, p, others.values, q);
    }
  }
  return area;
}

/** The stretch looked at, and the heights of both parts' edges at its two ends. */
const shared = new Float64Array(2);
const LOW0 = 0;
const LOW1 = 1;
const HIGH0 = 2;
const HIGH1 = 3;
const one = new Float64Array(4);
const other = new Float64Array(4);

function overlap(a: Float64Array, p: number, b: Float64Array, q: number): number {
  if (isBelow(a, p, b, q) || isBelow(b, q, a, p)) return 0;
  const left = Math.max(a[p + LEFT]!, b[q + LEFT]!);
  const right = Math.min(a[p + RIGHT]!, b[q + RIGHT]!);
  if (left >= right) return 0;
  shared[LEFT] = left;
  shared[RIGHT] = right;
  placeEdges(one, a, p);
  placeEdges(other, b, q);
  return (right - left) * meanHeight();
}

/** Whether one part lies wholly below another: soon said, and most often true. */
function isBelow(a: Float64Array, p: number, b: Float64Array, q: number): boolean {
  const high = Math.max(a[p + HIGH]!, a[p + HIGH + 1]!);
  return high <= b[q + LOW]! && high <= b[q + LOW + 1]!;
}

function placeEdges(edges: Float64Array, values: Float64Array, at: number): void {
  const start = values[at + LEFT]!;
  const perWidth = 1 / (values[at + RIGHT]! - start);
  const from = (shared[LEFT]! - start) * perWidth;
  const to = (shared[RIGHT]! - start) * perWidth;
  const low = values[at + LOW]!;
  const high = values[at + HIGH]!;
  const lowRise = values[at + LOW + 1]! - low;
  const highRise = values[at + HIGH + 1]! - high;
  edges[LOW0] = low + from * lowRise;
  edges[LOW1] = low + to * lowRise;
  edges[HIGH0] = high + from * highRise;
  edges[HIGH1] = high + to * highRise;
}

/** The mean height, over the stretch, of what lies between the two higher lower edges and the two lower upper ones. */
function meanHeight(): number {
  // Which edge is the higher or the lower one may change where two of them cross.
  const lows = crossing(one[LOW0]! - other[LOW0]!, one[LOW1]! - other[LOW1]!);
  const highs = crossing(one[HIGH0]! - other[HIGH0]!, one[HIGH1]! - other[HIGH1]!);
  const start = Math.min(one[HIGH0]!, other[HIGH0]!) - Math.max(one[LOW0]!, other[LOW0]!);
  const end = Math.min(one[HIGH1]!, other[HIGH1]!) - Math.max(one[LOW1]!, other[LOW1]!);
  if (lows === 1 && highs === 1) return meanAbove(start, end);
  const near = Math.min(lows, highs);
  const far = Math.max(lows, highs);
  const [nearHeight, farHeight] = [heightAt(near), far === 1 ? end : heightAt(far)];
  return (
    near * meanAbove(start, nearHeight) +
    (far - near) * meanAbove(nearHeight, farHeight) +
    (1 - far) * meanAbove(farHeight, end)
  );
}

/** The part (0..1) of the stretch at which a distance changes its sign; 1 when it does not. */
function crossing(from: number, to: number): number {
  return from * to < 0 ? from / (from - to) : 1;
}

/** Height in common at a part (0..1) of the stretch; below 0 when there is none. */
function heightAt(part: number): number {
  const high = one[HIGH0]! + part * (one[HIGH1]! - one[HIGH0]!);
  const otherHigh = other[HIGH0]! + part * (other[HIGH1]! - other[HIGH0]!);
  const low = one[LOW0]! + part * (one[LOW1]! - one[LOW0]!);
  const otherLow = other[LOW0]! + part * (other[LOW1]! - other[LOW0]!);
  return Math.min(high, otherHigh) - Math.max(low, otherLow);
}

/** The mean of what is above 0 of a height that runs straight from one value to another. */
function meanAbove(from: number, to: number): number {
  if (from >= 0 && to >= 0) return (from + to) / 2;
  if (from <= 0 && to <= 0) return 0;
  const positive = Math.max(from, to);
  return (positive * positive) / (2 * Math.abs(from - to));
}
