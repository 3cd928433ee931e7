/** Whether one state can do whatever another can, at no more cost. */

import { PANEL } from './costs.ts';
import type { Node } from './search.ts';
import type { Problem } from './problem.ts';
import {
  FREE,
  keepsPlaces,
  MADE,
  NOT_SETTLED,
  READY,
  SPENT,
  STACK,
  viewStart,
  type Cells,
  type Layout,
} from './state.ts';

/** States compared with each new one; more would cost more time than they save. */
const MOST_COMPARED = 400;

export interface Shape {
  readonly problem: Problem;
  readonly layout: Layout;
  /** Panels have a limit of their own, whatever they weigh against turns. */
  readonly countsPanels: boolean;
}

/** `others` cost no more than `node`. Only for states that keep no more than the view in sight. */
export function isDominated(node: Node, others: readonly Node[], shape: Shape): boolean {
  const count = Math.min(others.length, MOST_COMPARED);
  for (let index = 0; index < count; index++) {
    const other = others[index];
    if (!other || (shape.countsPanels && other.panels > node.panels)) continue;
    const owed = panelsOwed(other.cells, node.cells, shape);
    if (other.cost + owed * PANEL > node.cost) continue;
    if (!shape.countsPanels || other.panels + owed <= node.panels) return true;
  }
  return false;
}

/** Panels that `a` has still to print for what `b` has printed already; Infinity: it cannot do all that `b` can. */
function panelsOwed(a: Cells, b: Cells, { problem, layout }: Shape): number {
  if (a[layout.pinBits] !== b[layout.pinBits]) return Infinity;
  let owed = 0;
  for (let station = 0; station < problem.stations.length; station++) {
    const base = layout.bases[station] ?? 0;
    const stack = a[base + STACK] ?? 0;
    if (stack !== NOT_SETTLED && stack !== b[base + STACK]) return Infinity;
    if ((a[base + READY] ?? 0) > (b[base + READY] ?? 0) || a[base + MADE] !== b[base + MADE]) return Infinity;
    const start = viewStart(layout, problem, station, 0);
    const shape = problem.stations[station];
    if (!shape) continue;
    const { offsets, option } = shape;
    const sideOwes = keepsPlaces(shape) ? placesOwe : pagesOwe;
    for (let side = 0; side + 1 < offsets.length; side++) {
      const [first, end] = [start + (offsets[side] ?? 0), start + (offsets[side + 1] ?? 0)];
      owed += sideOwes(a, b, { first, end, isRidge: option.kind === 'ridge' });
    }
  }
  return owed;
}

interface Stretch {
  readonly first: number;
  readonly end: number;
  readonly isRidge: boolean;
}

/** `a` needs every page that `b` has in view, or a free place for it, and as many free places besides as `b` has. */
function pagesOwe(a: Cells, b: Cells, { first, end, isRidge }: Stretch): number {
  let [spare, missing, blankA, blankB] = [0, 0, true, true];
  for (let cell = first; cell < end; cell++) {
    const page = b[cell] ?? SPENT;
    if (a[cell] === FREE) spare++;
    else blankA = false;
    if (page === FREE) spare--;
    else blankB = false;
    if (page === FREE || page === SPENT || includes(a, page, first, end)) continue;
    spare--;
    missing++;
  }
  if (spare < 0) return Infinity;
  return isRidge ? (blankA && !blankB ? 1 : 0) : missing;
}

/** Where places differ: `a` has in each what `b` has there, or nothing yet. */
function placesOwe(a: Cells, b: Cells, { first, end }: Stretch): number {
  let missing = 0;
  for (let cell = first; cell < end; cell++) {
    const page = b[cell] ?? SPENT;
    if (a[cell] === page) continue;
    if (a[cell] !== FREE) return Infinity;
    if (page !== SPENT) missing++;
  }
  return missing;
}

function includes(cells: Cells, page: number, first: number, end: number): boolean {
  for (let cell = first; cell < end; cell++) if (cells[cell] === page) return true;
  return false;
}
