/** How far the eyes and the head turn across a row of pages, seen from above. */

import type { Rectangle3 } from '../../document/desks.ts';
import type { Degrees } from '../../document/records.ts';
import { facingTowards, normaliseFacing, type Vec2, type Vec3 } from '../../geometry/frame.ts';
import { lookFrom } from './gaze.ts';
import { middleOf } from './places.ts';
import { MARGIN } from './published.ts';
import { between, difference, lengthOf } from './vectors.ts';

export interface RowTurn {
  /** From the middle of the row to the end of a line that is farther to the side. */
  readonly aside: Degrees;
  /** From the leftmost to the rightmost end of a line. */
  readonly sweep: Degrees;
}

export function rowTurn(row: Rectangle3, eye: Vec2): RowTurn {
  const [lipLeft, lipRight] = row;
  const ahead = lookFrom(eye, middleOf(row), facingTowards(lipLeft, lipRight) + 90);
  let [right, left] = [0, 0];
  for (const end of endsOfLines(row)) {
    const angle = normaliseFacing(lookFrom(eye, end, ahead) - ahead);
    right = Math.min(right, angle);
    left = Math.max(left, angle);
  }
  return { aside: Math.max(-right, left), sweep: left - right };
}

/** The corners of what is printed on the row. */
function endsOfLines([lipLeft, lipRight, topRight, topLeft]: Rectangle3): Vec3[] {
  const across = MARGIN / lengthOf(difference(lipRight, lipLeft));
  const up = MARGIN / lengthOf(difference(topLeft, lipLeft));
  const corner = (a: number, b: number): Vec3 =>
    between(between(lipLeft, lipRight, a), between(topLeft, topRight, a), b);
  return [corner(across, up), corner(1 - across, up), corner(1 - across, 1 - up), corner(across, 1 - up)];
}
