/** What is set anew on a thing that goes from one spot to another, or stays where it is. */

import type { Degrees, Millimetres, Piano } from '../document/records.ts';
import { normaliseFacing } from '../geometry/frame.ts';
import { seatModel } from '../catalogue/seats.ts';
import type { Unit } from './units.ts';

export type Adjustment =
  | { readonly what: 'lip' | 'height'; readonly from: Millimetres; readonly to: Millimetres }
  | { readonly what: 'tilt'; readonly from: Degrees; readonly to: Degrees }
  | { readonly what: 'lid'; readonly from: Piano['lid']; readonly to: Piano['lid'] }
  | { readonly what: 'cable' };

/** Nobody sets a thing more finely than this: mm, degrees. Common practice, no source. */
export const SAME_SPOT: Millimetres = 20;
const [SAME_LENGTH, SAME_ANGLE, SAME_FACING] = [5, 1, 3];

/** Whether a thing that stands at the one spot already stands at the other. */
export function isSameSpot(from: Unit, to: Unit): boolean {
  const [a, b] = [from.spot, to.spot];
  return Math.hypot(a.x - b.x, a.y - b.y) <= SAME_SPOT && Math.abs(a.level - b.level) <= SAME_LENGTH;
}

/** By how much it is turned, degrees anticlockwise from above; 0 for what looks the same from every side. */
export function turnBetween(from: Unit, to: Unit): Degrees {
  if (isRound(from)) return 0;
  const turn = normaliseFacing(to.spot.facing - from.spot.facing);
  return Math.abs(turn) <= SAME_FACING ? 0 : turn;
}

/** A lamp or a peg looks the same from every side. */
function isRound({ thing }: Unit): boolean {
  if (thing.item === 'lamp' || thing.item === 'instrumentStand') return true;
  return thing.item === 'seat' && seatModel(thing.model)?.round === true;
}

export function adjustmentsBetween(from: Unit, to: Unit): Adjustment[] {
  const [a, b] = [from.settings, to.settings];
  const lengths = (['lip', 'height'] as const).flatMap((what): Adjustment[] =>
    differ(a[what], b[what], SAME_LENGTH) ? [{ what, from: a[what] ?? 0, to: b[what] ?? 0 }] : [],
  );
  const tilt: Adjustment[] = differ(a.tilt, b.tilt, SAME_ANGLE)
    ? [{ what: 'tilt', from: a.tilt ?? 0, to: b.tilt ?? 0 }]
    : [];
  const lid: Adjustment[] =
    a.lid !== undefined && b.lid !== undefined && a.lid !== b.lid
      ? [{ what: 'lid', from: a.lid, to: b.lid }]
      : [];
  return [...lengths, ...tilt, ...lid, ...(isCableLaidAnew(from, to) ? [{ what: 'cable' } as const] : [])];
}

function differ(a: number | undefined, b: number | undefined, by: number): boolean {
  return a !== undefined && b !== undefined && Math.abs(a - b) > by;
}

function isCableLaidAnew({ settings: { cable: a } }: Unit, { settings: { cable: b } }: Unit): boolean {
  if (!a || !b || (a.length === 0 && b.length === 0)) return false;
  return (
    a.length !== b.length ||
    a.some(({ x, y }, index) => {
      const other = b[index];
      return !other || Math.hypot(other.x - x, other.y - y) > SAME_SPOT;
    })
  );
}
