/** Which parts of a page are taken, so that texts can be kept apart. Boxes in mm, found through a coarse grid. */

import { boxesOverlap, grownBox, overlapArea, textPieces } from './bounds.ts';
import type { Box, MeasureText, TextPrimitive } from './primitives.ts';

export interface Occupancy {
  take(box: Box): void;
  /** Gives up a box that was taken: the very one, not an equal one. */
  release(box: Box): void;
  /** Whether any taken box overlaps. */
  isTaken(box: Box): boolean;
  /** Sum of the areas that taken boxes have in common with this one. */
  coveredArea(box: Box): number;
}

const CELL = 12;

export function createOccupancy(taken: readonly Box[] = []): Occupancy {
  const cells = new Map<number, Box[]>();
  const take = (box: Box): void => {
    for (const cell of cellsOf(box)) {
      const boxes = cells.get(cell);
      if (boxes) boxes.push(box);
      else cells.set(cell, [box]);
    }
  };
  for (const box of taken) take(box);
  return {
    take,
    release(box) {
      for (const cell of cellsOf(box)) {
        const boxes = cells.get(cell) ?? [];
        const at = boxes.indexOf(box);
        if (at >= 0) boxes.splice(at, 1);
      }
    },
    isTaken(box) {
      for (const cell of cellsOf(box)) {
        if (cells.get(cell)?.some((other) => boxesOverlap(other, box))) return true;
      }
      return false;
    },
    coveredArea(box) {
      // A box in several cells counts once.
      const near = new Set<Box>();
      for (const cell of cellsOf(box)) for (const other of cells.get(cell) ?? []) near.add(other);
      let area = 0;
      for (const other of near) area += overlapArea(other, box);
      return area;
    },
  };
}

export interface Clearance {
  readonly measure: MeasureText;
  /** Room that a text keeps round itself, mm. */
  readonly air?: number;
}

/** The first of the texts that overlaps nothing taken, and takes its place; none: there is no room. */
export function firstFree(
  candidates: readonly TextPrimitive[],
  taken: Occupancy,
  { measure, air = 0 }: Clearance,
): TextPrimitive[] {
  for (const text of candidates) {
    const pieces = textPieces(text, measure);
    if (pieces.some((piece) => taken.isTaken(grownBox(piece, air)))) continue;
    for (const piece of pieces) taken.take(piece);
    return [text];
  }
  return [];
}

/** A box far off any page is cut down, or it would fill millions of cells. */
const FARTHEST = 5000;
/** More than there are cells in a row. */
const ROW = 1024;

function cellsOf({ x, y, width, height }: Box): number[] {
  const cell = (at: number): number => Math.floor(Math.max(-FARTHEST, Math.min(FARTHEST, at)) / CELL);
  const [firstColumn, lastColumn] = [cell(x), cell(x + width)];
  const [firstRow, lastRow] = [cell(y), cell(y + height)];
  const cells: number[] = [];
  for (let column = firstColumn; column <= lastColumn; column++) {
    for (let row = firstRow; row <= lastRow; row++) cells.push(column * ROW + row);
  }
  return cells;
}
