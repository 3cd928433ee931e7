/** Which parts of a page are taken, so that texts can be kept apart. Boxes in mm, found through a coarse grid. */

import { boxesOverlap, overlapArea, textBox } from './bounds.ts';
import type { Box, MeasureText, TextPrimitive } from './primitives.ts';

export interface Occupancy {
  take(box: Box): void;
  /** Whether any taken box overlaps. */
  isTaken(box: Box): boolean;
  /** Sum of the areas that taken boxes have in common with this one. */
  coveredArea(box: Box): number;
}

const CELL = 12;

export function createOccupancy(taken: readonly Box[] = []): Occupancy {
  const cells = new Map<string, Box[]>();
  const take = (box: Box): void => {
    for (const cell of cellsOf(box)) {
      const boxes = cells.get(cell);
      if (boxes) boxes.push(box);
      else cells.set(cell, [box]);
    }
  };
  const near = (box: Box): Set<Box> => {
    const found = new Set<Box>();
    for (const cell of cellsOf(box)) for (const other of cells.get(cell) ?? []) found.add(other);
    return found;
  };
  for (const box of taken) take(box);
  return {
    take,
    isTaken(box) {
      for (const other of near(box)) if (boxesOverlap(other, box)) return true;
      return false;
    },
    coveredArea(box) {
      let area = 0;
      for (const other of near(box)) area += overlapArea(other, box);
      return area;
    },
  };
}

/** The first of the texts that overlaps nothing taken, and takes its place; none: there is no room. */
export function firstFree(
  candidates: readonly TextPrimitive[],
  taken: Occupancy,
  measure: MeasureText,
): TextPrimitive[] {
  for (const text of candidates) {
    const box = textBox(text, measure);
    if (taken.isTaken(box)) continue;
    taken.take(box);
    return [text];
  }
  return [];
}

/** A box far off any page is cut down, or it would fill millions of cells. */
const FARTHEST = 5000;

function* cellsOf({ x, y, width, height }: Box): Generator<string> {
  const cell = (at: number): number => Math.floor(Math.max(-FARTHEST, Math.min(FARTHEST, at)) / CELL);
  const [lastColumn, lastRow] = [cell(x + width), cell(y + height)];
  for (let column = cell(x); column <= lastColumn; column++) {
    for (let row = cell(y); row <= lastRow; row++) yield `${column},${row}`;
  }
}
