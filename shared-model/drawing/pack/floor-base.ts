/**
 * The two points from which a rehearsal floor is taped: on a line parallel to the front edge, as far apart and as far before
 * the marks as makes the tapes cross steeply at all of them.
 */

import type { Units } from '../../document/measures.ts';
import type { Millimetres, Point } from '../../document/records.ts';
import { taped, type Base } from './tapes.ts';

const FOOT: Millimetres = 304.8;
/** Half the length of the line, and how far it lies off the nearest mark, in metres or in steps of three feet. */
const HALVES = [1, 1.5, 2, 3, 4];
const OFFS = [0.5, 1, 1.5, 2, 3];

export interface FloorBase {
  readonly base: Base;
  /** How far the line lies from the front edge: positive upstage. */
  readonly y: Millimetres;
}

/** The shortest and nearest of those with which most marks need only the coarsest figures. */
export function floorBase(marks: readonly Point[], units: Units): FloorBase {
  const step = units === 'metric' ? 1000 : 3 * FOOT;
  const front = marks.reduce((least, { y }) => Math.min(least, y), marks.length === 0 ? 0 : Infinity);
  let best: (FloorBase & { readonly cost: number }) | null = null;
  for (const half of HALVES) {
    for (const off of OFFS) {
      const y = Math.floor((front - off * step) / (step / 2)) * (step / 2);
      const base: Base = [
        { x: -half * step, y, letter: 'E' },
        { x: half * step, y, letter: 'F' },
      ];
      // A room that is taped is smaller than a platform: rather a little finer figures than a metre more of it.
      const cost = fineness(marks, base, units) + (half + off) / 100;
      if (!best || cost < best.cost) best = { base, y, cost };
    }
  }
  if (!best) throw new Error('there are bases to choose from');
  return best;
}

function fineness(marks: readonly Point[], base: Base, units: Units): number {
  if (marks.length === 0) return 0;
  const fine = marks.filter((mark) => {
    const tapes = taped(mark, [base], units);
    return !tapes || tapes.part > (units === 'metric' ? 1 : 32);
  });
  return fine.length / marks.length;
}
