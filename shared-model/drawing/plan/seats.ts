/** What people sit on, from above. */

import { seatModel, USUAL_SEAT } from '../../catalogue/seats.ts';
import type { Point, Seat } from '../../document/records.ts';
import { boundsOf } from '../../geometry/polygon.ts';
import type { Affine } from '../affine.ts';
import { circle, polygon, polyline, roundedRectangle } from '../outline.ts';
import type { Primitive } from '../primitives.ts';
import { WEIGHT } from '../style.ts';
import { itemToPage, paint, pen, type PlanContext } from './context.ts';

export function drawSeat(context: PlanContext, seat: Seat): Primitive[] {
  return chairSymbol(context, itemToPage(context, seat), seat.model);
}

/** In the sitter's frame: he looks along -y, so the back is at +y. */
export function chairSymbol(context: PlanContext, map: Affine, modelId: string): Primitive[] {
  const { palette } = context;
  const { width, depth, round, back, outline } = seatModel(modelId) ?? USUAL_SEAT;
  if (outline) return wheelchairSymbol(context, map, outline);
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

/** Wheels to either side, the back behind, footrests before: told from a chair by its shape alone. */
function wheelchairSymbol({ palette }: PlanContext, map: Affine, outline: readonly Point[]): Primitive[] {
  const { minX, maxX, minY, maxY } = boundsOf(outline);
  const front = outline.filter(({ x }) => x === minX).reduce((least, { y }) => Math.min(least, y), maxY);
  const bold = pen(palette.ink, WEIGHT.bold);
  const lineAt = (from: Point, to: Point): Primitive => paint(map, polyline([from, to]), bold);
  return [
    paint(map, polygon(outline), { fill: palette.chair, ...pen(palette.ink, WEIGHT.thin) }),
    ...[minX + WHEEL, maxX - WHEEL].map((x) => lineAt({ x, y: maxY - 30 }, { x, y: front + 30 })),
    lineAt({ x: minX + 90, y: maxY - BACK }, { x: maxX - 90, y: maxY - BACK }),
    paint(
      map,
      polyline([
        { x: 0, y: front },
        { x: 0, y: minY },
      ]),
      pen(palette.ink, WEIGHT.hair),
    ),
  ];
}

/** Drawn so far within the outline: wheels, and the back over the rear axle. Common practice, no source. */
const WHEEL = 30;
const BACK = 170;
