/** Positions and facings as commands leave them: tidy numbers, and cables that stay at their lamp. */

import { normaliseFacing } from '../geometry/frame.ts';
import type { Degrees, Lamp, Millimetres, Point } from '../document/records.ts';
import type { Movable } from './targets.ts';

/** To the thousandth, so that turning and moving leaves no digits that nobody asked for; never -0. */
export function tidy(value: Millimetres): Millimetres {
  return Math.round(value * 1000) / 1000 + 0;
}

export function tidyFacing(facing: Degrees): Degrees {
  return tidy(normaliseFacing(facing));
}

/** The record at another spot. The lamp's end of a cable comes along; its socket stays where it is. */
export function movedTo<R extends Movable>(record: R, to: Point): R;
export function movedTo(record: Movable, to: Point): Movable {
  if (record.x === to.x && record.y === to.y) return record;
  const spot = { x: tidy(to.x), y: tidy(to.y) };
  return record.kind === 'lamp'
    ? { ...record, ...spot, cable: cableFrom(record, spot) }
    : { ...record, ...spot };
}

function cableFrom({ cable, x, y }: Lamp, spot: Point): readonly Point[] {
  const [plug, ...rest] = cable;
  if (!plug) return cable;
  return [{ x: tidy(plug.x + spot.x - x), y: tidy(plug.y + spot.y - y) }, ...rest];
}
