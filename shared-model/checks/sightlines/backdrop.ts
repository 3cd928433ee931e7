/**
 * What is left of each window when certain records are taken away. It is kept while those records are moved about: then
 * only their own shadows have to be cast anew and held against the parts of the window that everything else leaves open.
 * Pairs of seat and target are looked into when they are first asked for.
 */

import { uncoveredShare } from '../../geometry/shadows/uncovered.ts';
import { CROWD } from '../../geometry/shadows/crowd.ts';
import { commonArea, createParts, partsOfShadow, type Parts } from '../../geometry/shadows/parts.ts';
import { EVERYTHING, type Shadows } from '../../geometry/shadows/shadows.ts';
import { castShadow, type Kernel } from './pair-kernel.ts';
import type { Candidates } from './candidates.ts';
import type { CompiledOccluders } from './compile-scene.ts';
import { TALLEST } from './share-steps.ts';

export interface Backdrop {
  /** The records that are taken away. */
  readonly records: ReadonlySet<string>;
  /** By target; null: nothing is known of it yet. */
  readonly columns: (BackdropColumn | null)[];
  /** Uncovered parts of all pairs. */
  readonly parts: Parts;
}

/** By place in the target's order of seats. */
export interface BackdropColumn {
  /** Uncovered area of the window, NaN: not looked into yet, UNFIT: not to be worked with. */
  readonly area: Float64Array;
  /** The pair's parts: from `from[place]` up to, but not including, `to[place]`. */
  readonly from: Int32Array;
  readonly to: Int32Array;
}

/** Of a pair whose shadows are too many, or reach too far, for two ways of computing to agree. */
export const UNFIT = -1;

/** With more parts than this (48 bytes each) further pairs are not kept. */
const MOST_PARTS = 500_000;

/** So many shadows of what moves may be held against the rest. */
const MOST_MOVING = 8;

export function createBackdrop(records: ReadonlySet<string>, targets: number): Backdrop {
  return { records, columns: new Array<null>(targets).fill(null), parts: createParts() };
}

/** The same backdrop, but nothing is known of some targets any more. */
export function forgetTargets(backdrop: Backdrop, targets: ReadonlySet<number>): Backdrop {
  if (targets.size === 0) return backdrop;
  return { ...backdrop, columns: backdrop.columns.map((column, t) => (targets.has(t) ? null : column)) };
}

export function columnOf(backdrop: Backdrop, target: number, seats: number): BackdropColumn {
  const known = backdrop.columns[target];
  if (known) return known;
  const made = {
    area: new Float64Array(seats).fill(NaN),
    from: new Int32Array(seats),
    to: new Int32Array(seats),
  };
  backdrop.columns[target] = made;
  return made;
}

export interface LookedAt {
  readonly backdrop: Backdrop;
  readonly column: BackdropColumn;
  readonly place: number;
}

/** What may hide the target, but for the occluders that `isMoving` marks with 1. */
export interface Rest {
  readonly candidates: Candidates;
  readonly isMoving: Uint8Array;
}

/** Looks into a pair that the kernel is aimed at. */
export function lookBehind(
  { backdrop, column, place }: LookedAt,
  kernel: Kernel,
  occluders: CompiledOccluders,
  { candidates: { list, count }, isMoving }: Rest,
): void {
  const { parts } = backdrop;
  column.from[place] = column.to[place] = parts.count;
  for (let i = 0; i < count; i++) {
    if (isMoving[list[i]!] === 1) continue;
    if (castShadow(kernel, occluders, list[i]!) === EVERYTHING) {
      column.area[place] = 0;
      return;
    }
  }
  const fit = parts.count < MOST_PARTS && isFit(kernel.shadows, CROWD - MOST_MOVING);
  const area = fit ? uncoveredShare(kernel.shadows, parts) : UNFIT;
  column.to[place] = parts.count;
  column.area[place] = area;
}

const moving = createParts();

/** The area that is left when the shadows of what moves come on top; UNFIT when that cannot be said closely enough. */
export function areaBehind({ backdrop, column, place }: LookedAt, shadows: Shadows): number {
  const area = column.area[place]!;
  if (area <= 0) return area;
  if (!isFit(shadows, MOST_MOVING)) return UNFIT;
  const [from, to] = [column.from[place]!, column.to[place]!];
  if (shadows.count === 1) {
    partsOfShadow(shadows, moving);
    return area - commonArea(backdrop.parts, from, to, moving);
  }
  moving.count = 0;
  uncoveredShare(shadows, moving);
  return commonArea(backdrop.parts, from, to, moving);
}

function isFit({ lo, hi, starts, count }: Shadows, most: number): boolean {
  if (count > most) return false;
  const end = starts[count]!;
  for (let i = 0; i < end; i++) if (lo[i]! < -TALLEST || hi[i]! > TALLEST) return false;
  return true;
}
