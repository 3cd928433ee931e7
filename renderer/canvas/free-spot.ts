/** Where there is room for something that is set down without pointing. */

import type { Vec2 } from '#model/geometry/frame.ts';
import { depthInPolygon } from '#model/geometry/polygon.ts';

/** Two players with their stands do not get in each other's way at this distance. Common practice, no source. */
const APART = 900;
const STEP = 300;
const STEPS = 12;

/**
 * The spot nearest to `wanted` (mm) that is on the platform and this far from everything there; `wanted` itself when
 * there is none.
 */
export function freeSpot(wanted: Vec2, taken: readonly Vec2[], platform: readonly Vec2[]): Vec2 {
  const isFree = (spot: Vec2): boolean =>
    taken.every(({ x, y }) => Math.hypot(x - spot.x, y - spot.y) >= APART);
  const spots = AROUND.map(({ x, y }) => ({ x: wanted.x + x, y: wanted.y + y }));
  return spots.find((spot) => isFree(spot) && depthInPolygon(spot, platform) > STEP) ?? wanted;
}

/** The nearest first; of those as near, stage left before stage right. */
const AROUND: readonly Vec2[] = Array.from({ length: (2 * STEPS + 1) ** 2 }, (_, index) => ({
  x: (STEPS - (index % (2 * STEPS + 1))) * STEP,
  y: (Math.floor(index / (2 * STEPS + 1)) - STEPS) * STEP,
})).sort((a, b) => Math.hypot(a.x, a.y) - Math.hypot(b.x, b.y));
