/**
 * The two points from which a rehearsal floor is taped: on a line parallel to the front edge, as far apart and as far before
 * the marks as makes the tapes cross steeply at all of them.
 */

import type { Units } from '../../document/measures.ts';
import type { Millimetres, Point } from '../../document/records.ts';
import { isFlat, isSteep, type Base } from './tapes.ts';

const FOOT: Millimetres = 304.8;
/** Half the length of the line, and how far it lies off the nearest mark, in metres or in steps of three feet. */
const HALVES = [1, 1.5, 2, 2.5, 3];
const OFFS = [0.5, 1, 1.5];
/** What it costs: a metre more of it, and if rounding moves all marks, or they are met by tapes that run nearly alike. */
const COST = { metre: 0.1, moved: 0.5, flat: 10 };

export interface FloorBase {
  readonly base: Base;
  /** How far the line lies from the front edge: positive upstage. */
  readonly y: Millimetres;
}

/** Short and near, but so that tapes cross steeply at the marks; a room to rehearse in is smaller than a platform. */
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
      const share = (is: (mark: Point) => boolean): number =>
        marks.filter(is).length / Math.max(1, marks.length);
      const cost =
        COST.flat * share((mark) => isFlat(mark, base)) +
        COST.moved * share((mark) => !isSteep(mark, base)) +
        COST.metre * (half + off);
      if (!best || cost < best.cost) best = { base, y, cost };
    }
  }
  if (!best) throw new Error('there are bases to choose from');
  return best;
}
