/** Which of many boxes lie near a place: a grid of square cells, each with the boxes that touch it. */

import type { Bounds } from '../../geometry/polygon.ts';

const CELL = 1000;
/** Boxes that would fill more cells than this are looked at in every question instead. */
const MOST_CELLS = 400;
/** Columns a row of cells has room for, so that one number names a cell. */
const COLUMNS = 2 ** 22;

export class BoxGrid {
  private readonly cells = new Map<number, number[]>();
  private readonly large: number[] = [];
  private readonly boxes: readonly Bounds[];
  /** The number of the last question in which a box was found, so that no answer names it twice. */
  private readonly found: Uint32Array;
  private question = 0;

  constructor(boxes: readonly Bounds[]) {
    this.boxes = boxes;
    this.found = new Uint32Array(boxes.length);
    boxes.forEach((box, index) => {
      if (cellsIn(box) > MOST_CELLS) this.large.push(index);
      else this.insert(box, index);
    });
  }

  /** Calls `visit` with the index of every box that touches `box`, once, in no particular order. */
  forEachTouching(box: Bounds, visit: (index: number) => void): void {
    this.question++;
    for (const index of this.large) this.look(index, box, visit);
    if (cellsIn(box) > MOST_CELLS) {
      for (let index = 0; index < this.boxes.length; index++) this.look(index, box, visit);
      return;
    }
    // Written out, because routes ask this thousands of times.
    const [left, right] = [Math.floor(box.minX / CELL), Math.floor(box.maxX / CELL)];
    const last = Math.floor(box.maxY / CELL);
    for (let row = Math.floor(box.minY / CELL); row <= last; row++) {
      for (let column = left; column <= right; column++) {
        const there = this.cells.get(row * COLUMNS + column);
        if (there) for (const index of there) this.look(index, box, visit);
      }
    }
  }

  /** Indices of the boxes that touch `box`, in ascending order. */
  touching(box: Bounds): number[] {
    const indices: number[] = [];
    this.forEachTouching(box, (index) => indices.push(index));
    return indices.sort((a, b) => a - b);
  }

  private look(index: number, box: Bounds, visit: (index: number) => void): void {
    if (this.found[index] === this.question) return;
    this.found[index] = this.question;
    if (touch(this.boxes[index], box)) visit(index);
  }

  private insert(box: Bounds, index: number): void {
    forEachCell(box, (cell) => {
      const there = this.cells.get(cell);
      if (there) there.push(index);
      else this.cells.set(cell, [index]);
    });
  }
}

/** The box with `margin` more on every side. */
export function grown(box: Bounds, margin: number): Bounds {
  return {
    minX: box.minX - margin,
    minY: box.minY - margin,
    maxX: box.maxX + margin,
    maxY: box.maxY + margin,
  };
}

export function touch(a: Bounds | undefined, b: Bounds): boolean {
  return a !== undefined && a.minX <= b.maxX && b.minX <= a.maxX && a.minY <= b.maxY && b.minY <= a.maxY;
}

function cellsIn({ minX, minY, maxX, maxY }: Bounds): number {
  const across = Math.floor(maxX / CELL) - Math.floor(minX / CELL) + 1;
  const deep = Math.floor(maxY / CELL) - Math.floor(minY / CELL) + 1;
  return across > 0 && deep > 0 ? across * deep : 0;
}

function forEachCell({ minX, minY, maxX, maxY }: Bounds, visit: (cell: number) => void): void {
  const [left, right] = [Math.floor(minX / CELL), Math.floor(maxX / CELL)];
  for (let row = Math.floor(minY / CELL); row <= Math.floor(maxY / CELL); row++) {
    for (let column = left; column <= right; column++) visit(row * COLUMNS + column);
  }
}
