/** Where on the platform a group goes that keeps its shape. */

import type { Vec2 } from '../geometry/frame.ts';
import { boundsOf, depthInPolygon, type Polygon } from '../geometry/polygon.ts';

/** A disc that the group takes on the floor, about its own spot. */
export interface Footprint extends Vec2 {
  readonly radius: number;
}

export interface RoomOrder {
  readonly footprints: readonly Footprint[];
  /** Of the platform, anticlockwise or clockwise. */
  readonly outline: Polygon;
  /** What stands there already. */
  readonly taken: readonly Vec2[];
  /** Kept between the group and the edge, where there is room for that. */
  readonly fromEdge: number;
  /** Ground that is left free, as before a door, where there is room for that. */
  readonly free?: readonly Polygon[];
  /** So much farther upstage than it could be. */
  readonly back?: number;
}

const STEP = 100;
/** Whoever stands there already keeps this much. Common practice, no source. */
const APART = 500;

/**
 * The shift (mm) that brings the whole group onto the platform, free of what stands there; nearest to the centre line
 * first, then nearest to the house. Where there is none, first doors are left less free, then the edges may come nearer,
 * and then others may be in the way; null when the group does not go on the platform at all.
 */
export function roomFor(order: RoomOrder): Vec2 | null {
  return (
    shiftTo(order) ??
    shiftTo({ ...order, free: [] }) ??
    shiftTo({ ...order, free: [], fromEdge: 0 }) ??
    shiftTo({ ...order, free: [], fromEdge: 0, taken: [] })
  );
}

function shiftTo(order: RoomOrder): Vec2 | null {
  const group = boundsOf(order.footprints);
  const platform = boundsOf(order.outline);
  const across = platform.maxX - platform.minX - (group.maxX - group.minX);
  const along = platform.maxY - platform.minY - (group.maxY - group.minY);
  for (const x of outwards(across / 2))
    for (let y = 0; y <= along; y += STEP) {
      const shift = { x: x - middle(group), y: platform.minY + y - group.minY };
      if (fits(order, shift)) return broughtBack(order, shift);
    }
  return null;
}

/** As far upstage as is asked for; null: there it does not fit. */
function broughtBack(order: RoomOrder, { x, y }: Vec2): Vec2 | null {
  const shift = { x, y: y + (order.back ?? 0) };
  return fits(order, shift) ? shift : null;
}

function middle({ minX, maxX }: { readonly minX: number; readonly maxX: number }): number {
  return Math.round((minX + maxX) / 2);
}

/** 0, 100, -100, 200 ... as far as `most`. */
function outwards(most: number): number[] {
  const shifts = [0];
  for (let by = STEP; by <= most; by += STEP) shifts.push(by, -by);
  return shifts;
}

function fits({ footprints, outline, taken, fromEdge, free = [] }: RoomOrder, shift: Vec2): boolean {
  return footprints.every(({ x, y, radius }) => {
    const spot = { x: x + shift.x, y: y + shift.y };
    return (
      depthInPolygon(spot, outline) >= radius + fromEdge &&
      taken.every((other) => Math.hypot(other.x - spot.x, other.y - spot.y) >= radius + APART) &&
      free.every((ground) => depthInPolygon(spot, ground) <= -radius)
    );
  });
}
