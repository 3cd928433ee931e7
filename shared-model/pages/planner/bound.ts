/** What must still be paid at least, whatever comes: by counting pages that are not in view. */

import { PANEL, TURN } from './costs.ts';
import type { Problem } from './problem.ts';
import { FREE, MADE, POSITION, SPENT, viewStart, type Cells, type Layout } from './state.ts';

/**
 * A reader who needs `n` more pages than are in view or fit in beside them needs `n` new places, and one turn brings no more than
 * his widest view. Turns serve several readers, so the most any of them needs counts; panels are each reader's own.
 */
export function boundAhead(problem: Problem, layout: Layout, cells: Cells, need: number): number {
  const ahead = problem.ahead[need] ?? [];
  let [turns, panels] = [0, 0];
  for (let player = 0; player < problem.places.length; player++) {
    const wanted = ahead[player] ?? 0;
    if (wanted === 0) continue;
    const { inView, kept, widest, panelWidth } = roomFor(problem, layout, cells, player);
    const missing = wanted - inView;
    if (missing > 0) turns = Math.max(turns, widest > 0 ? Math.ceil(missing / widest) : Infinity);
    if (wanted > kept) panels += Math.ceil((wanted - kept) / panelWidth);
  }
  return turns * TURN + panels * PANEL;
}

interface Room {
  /** Pages that are needed again and in view, and free places in view. */
  inView: number;
  /** What is printed already, or can be without another panel. */
  kept: number;
  /** New places by one turn. */
  widest: number;
  panelWidth: number;
}

function roomFor(problem: Problem, layout: Layout, cells: Cells, player: number): Room {
  const room: Room = { inView: 0, kept: 0, widest: 0, panelWidth: 1 };
  for (const { station, side } of problem.places[player] ?? []) {
    const shape = problem.stations[station];
    if (!shape) continue;
    const [first = 0, end = 0] = [shape.offsets[side], shape.offsets[side + 1]];
    const isNewATurn = Math.min(shape.step, end - first);
    if (shape.option.turning) room.widest = Math.max(room.widest, isNewATurn);
    const isRidge = shape.option.kind === 'ridge';
    if (isRidge) room.panelWidth = Math.max(room.panelWidth, end - first);
    const base = layout.bases[station] ?? 0;
    const current = layout.views === 1 ? 0 : (cells[base + POSITION] ?? 0);
    const made = layout.views === 1 ? 1 : (cells[base + MADE] ?? 1);
    for (let view = 0; view < made; view++) {
      const start = viewStart(layout, problem, station, view);
      if (view === current) room.inView += unspent(cells, start + first, start + end);
      let [live, free, spent] = [0, 0, 0];
      // What hangs together with the view before has been counted there.
      const fresh = view === 0 ? first : end - isNewATurn;
      for (let cell = start + fresh; cell < start + end; cell++) {
        const page = cells[cell] ?? SPENT;
        if (page === FREE) free++;
        else if (page === SPENT) spent++;
        else live++;
      }
      // A blank panel is another panel as soon as something is printed on it.
      room.kept += live + (isRidge && live + spent > 0 ? free : 0);
    }
  }
  return room;
}

function unspent(cells: Cells, first: number, end: number): number {
  let count = 0;
  for (let cell = first; cell < end; cell++) if (cells[cell] !== SPENT) count++;
  return count;
}
