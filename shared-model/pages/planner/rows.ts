/** For one group of players: the fewest turns with so many stations, and what more turns save in panels. */

import { TURN } from './costs.ts';
import { limitOf, type Answer, type GroupSolver } from './group.ts';
import type { Setting } from './options.ts';
import type { Sketch } from './sketch.ts';

export interface Row {
  readonly stations: number;
  readonly turns: number;
  readonly panels: number;
  readonly sketch: Sketch;
  /** No plan with so many stations has fewer turns. */
  readonly leastTurns: number;
}

export interface RowsFound {
  /** One for each number of stations that will do, beginning with the fewest. */
  readonly rows: readonly Row[];
  /** By number of stations: no plan has fewer turns; Infinity: there is none. */
  readonly leastTurns: readonly number[];
}

/** Fewest turns, then fewest panels, for each number of stations up to `most`. */
export function* rowsOf(solver: GroupSolver, most: number): Generator<number, RowsFound> {
  const rows: Row[] = [];
  const leastTurns: number[] = [Infinity];
  const count = Math.min(most, solver.group.stations.length);
  for (let stations = 1; stations <= count; stations++) {
    const { best, least } = yield* bestWith(solver, stations, rows.at(-1)?.turns ?? Infinity);
    leastTurns.push(Math.min(least, leastTurns.at(-1) ?? Infinity));
    if (best) rows.push({ ...best, stations, leastTurns: leastTurns[stations] ?? 0 });
  }
  return { rows, leastTurns };
}

interface Best {
  readonly best: Omit<Row, 'stations' | 'leastTurns'> | null;
  readonly least: number;
}

/** Fewer turns than `known`, which fewer stations do with. */
function* bestWith(solver: GroupSolver, stations: number, known: number): Generator<number, Best> {
  let limit = Number.isFinite(known) ? known * TURN : Infinity;
  let [best, least]: [Best['best'], number] = [null, Infinity];
  for (const setting of solver.settings(stations, true)) {
    if (!solver.isFirstOfTwins(setting)) continue;
    const answer = yield* solver.fewest(setting, { limit });
    if (answer.found) {
      const { counted, sketch } = answer.found;
      best = { turns: counted.turns, panels: counted.panels, sketch };
      limit = limitOf(counted.turns, counted.panels);
    }
    least = Math.min(least, yield* leastTurnsOf(solver, setting, answer));
  }
  return { best, least: Math.min(least, known) };
}

/**
 * Turning back brings no view that a further leaf could not bring, so fewest turns are found going forward only; unless the one who
 * could take a leaf back could not have taken one on. Then the count of turns is bounded by a table in which he could.
 */
function* leastTurnsOf(solver: GroupSolver, setting: Setting, answer: Answer): Generator<number, number> {
  const forward = Math.floor(answer.bound / TURN);
  if (!solver.liftsFromBothSides(setting)) return forward;
  const limit = answer.found ? answer.found.counted.turns * TURN : Infinity;
  const eased = yield* solver.fewest(setting, { anySide: true, limit });
  return Math.min(forward, Math.floor(eased.bound / TURN));
}

/** A front goes no further than this many turns more for fewer panels: nobody would want such a plan. */
const TURNS_FOR_PANELS = 6;

/** Rows that do with fewer panels by some more turns: leaves that go back show pages again without another print. */
export function* thriftyRows(solver: GroupSolver, row: Row): Generator<number, Row[]> {
  const found: Row[] = [];
  if (!solver.hasReturns) return found;
  let { panels } = row;
  for (;;) {
    let best: Answer['found'] = null;
    for (const setting of solver.settings(row.stations, true)) {
      if (!solver.isFirstOfTwins(setting) || solver.floor(setting).panels >= panels) continue;
      const limit: number = best ? best.counted.turns * TURN : limitOf(row.turns + TURNS_FOR_PANELS);
      const answer: Answer = yield* solver.solve(setting, { back: true, maxPanels: panels - 1, limit });
      best = answer.found ?? best;
    }
    if (!best) return found;
    const { counted, sketch } = best;
    found.push({ ...row, turns: counted.turns, panels: counted.panels, sketch });
    panels = counted.panels;
  }
}
