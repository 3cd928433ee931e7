/**
 * A state of the search: what every reader could see after the needs so far, as a flat list of whole numbers.
 *
 * For each station: on which side the leaves lie (2: not settled), the class of when it was last needed, the state of its
 * leaves, how many views it has so far, then the views: a cell for each place, side after side, holding a page that is needed again,
 * `FREE` or `SPENT`. Unless leaves may go back, only the view in sight is kept. After the stations: for each player the place he
 * read at last (from 1; only kept when jumps count), then the turns that pins ask for and that have been made, as bits.
 */

import type { Problem, ProblemStation } from './problem.ts';

export const FREE = 0;
/** A page that nobody needs again takes its place up all the same. */
export const SPENT = 0xffff;
export const NOT_SETTLED = 2;

export const STACK = 0;
export const READY = 1;
export const POSITION = 2;
export const MADE = 3;
const HEADER = 4;

export interface Layout {
  /** First cell of each station. */
  readonly bases: readonly number[];
  /** Views kept of each station. */
  readonly views: number;
  readonly eyes: number;
  readonly pinBits: number;
  readonly length: number;
}

export function layoutOf(problem: Problem, views: number): Layout {
  const bases: number[] = [];
  let length = 0;
  for (const station of problem.stations) {
    bases.push(length);
    length += HEADER + views * viewSize(station);
  }
  const eyes = length;
  return {
    bases,
    views,
    eyes,
    pinBits: eyes + problem.places.length,
    length: eyes + problem.places.length + 1,
  };
}

export function viewSize(station: ProblemStation): number {
  return station.offsets.at(-1) ?? 0;
}

/** Where in a view a page is matters even when jumps do not count: the view moves on by a part of itself. */
export function keepsPlaces(station: ProblemStation): boolean {
  return station.step < viewSize(station);
}

/** First cell of a kept view of a station. Views of a wide concertina overlap as its paper does. */
export function viewStart(layout: Layout, problem: Problem, station: number, view: number): number {
  const shape = problem.stations[station];
  return (layout.bases[station] ?? 0) + HEADER + view * (shape?.step ?? 0);
}

export type Cells = Uint16Array;

/** Two states with the same key have the same future. */
export function keyOf(cells: Cells): string {
  return String.fromCharCode.apply(null, cells as unknown as number[]);
}

/** Sorts a short stretch of cells in place: where in the view a page is does not matter unless jumps count. */
export function sortCells(cells: Cells, from: number, to: number): void {
  for (let index = from + 1; index < to; index++) {
    const value = cells[index] ?? 0;
    let place = index - 1;
    for (; place >= from && (cells[place] ?? 0) > value; place--) cells[place + 1] = cells[place] ?? 0;
    cells[place + 1] = value;
  }
}
