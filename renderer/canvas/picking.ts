/** Which item lies under the pointer or inside a marquee, from the outlines of the items as they stand. */

import { depthInPolygon, polygonArea, type Polygon } from '#model/geometry/polygon.ts';
import type { Vec2 } from '#model/geometry/frame.ts';
import { holds, type Extent } from './camera.ts';

export interface Pickable {
  readonly id: string;
  readonly outline: Polygon;
  /** 0 for what others stand on (risers); things on top are found first. */
  readonly layer: number;
}

/**
 * The item at a spot: the topmost whose outline holds it, small ones before large ones on the same layer. Where
 * only the floor or a riser is, the nearest item within `reach` counts, so that a thin leg can be caught too.
 */
export function itemAt(items: readonly Pickable[], spot: Vec2, reach: number): string | null {
  let under: Pickable | null = null;
  let near: Pickable | null = null;
  let least = reach;
  for (const item of items) {
    const depth = depthInPolygon(spot, item.outline);
    if (depth >= 0) {
      if (!under || isBefore(item, under)) under = item;
    } else if (item.layer > 0 && -depth <= least) {
      near = item;
      least = -depth;
    }
  }
  return under && under.layer > 0 ? under.id : (near?.id ?? under?.id ?? null);
}

/** Every item that lies wholly in the marquee. */
export function itemsWithin(items: readonly Pickable[], marquee: Extent): string[] {
  return items.filter(({ outline }) => outline.every((corner) => holds(marquee, corner))).map(({ id }) => id);
}

function isBefore(item: Pickable, other: Pickable): boolean {
  if (item.layer !== other.layer) return item.layer > other.layer;
  return polygonArea(item.outline) < polygonArea(other.outline);
}
