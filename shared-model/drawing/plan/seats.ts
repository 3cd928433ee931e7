/** What people sit on, from above. */

import { seatModel, USUAL_SEAT } from '../../catalogue/seats.ts';
import type { Seat } from '../../document/records.ts';
import type { Affine } from '../affine.ts';
import { circle, polyline, roundedRectangle } from '../outline.ts';
import type { Primitive } from '../primitives.ts';
import { WEIGHT } from '../style.ts';
import { itemToPage, paint, pen, type PlanContext } from './context.ts';

export function drawSeat(context: PlanContext, seat: Seat): Primitive[] {
  return chairSymbol(context, itemToPage(context, seat), seat.model);
}

/** In the sitter's frame: he looks along -y, so the back is at +y. */
export function chairSymbol(context: PlanContext, map: Affine, modelId: string): Primitive[] {
  const { palette } = context;
  const { width, depth, round, back } = seatModel(modelId) ?? USUAL_SEAT;
  const look = { fill: palette.chair, ...pen(palette.ink, WEIGHT.thin) };
  if (round) return [paint(map, circle({ x: 0, y: 0 }, width / 2), look)];
  const cushion = roundedRectangle({ x: -width / 2, y: -depth / 2, width, height: depth }, 50);
  if (!back) return [paint(map, cushion, look)];
  const rest = polyline([
    { x: -width / 2 + 15, y: depth / 2 - 30 },
    { x: width / 2 - 15, y: depth / 2 - 30 },
  ]);
  return [paint(map, cushion, look), paint(map, rest, pen(palette.ink, WEIGHT.bold))];
}
