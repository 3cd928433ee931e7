/** Where there is room for something that is set down without pointing. */

import type { Vec2 } from '#model/geometry/frame.ts';
import { depthInPolygon } from '#model/geometry/polygon.ts';

/** Two players with their stands do not get in each other's way at this distance. Common practice, no source. */
const APART = 900;
/** Copies that have no room of their own can at least be told from what they were made of. */
const TOLD_APART = 300;
const STEP = 300;
const STEPS = 12;

/**
 * The spot nearest to `wanted` (mm) that is on the platform and this far from everything there; `wanted` itself when
 * there is none.
 */
export function freeSpot(wanted: Vec2, taken: readonly Vec2[], platform: readonly Vec2[]): Vec2 {
  const isThere = (spot: Vec2): boolean => depthInPolygon(spot, platform) > STEP;
  return moved(wanted, freeWay([wanted], { taken, apart: APART, isThere }) ?? { x: 0, y: 0 });
}

/**
 * The shortest way (mm) that takes copies of all these to where nothing stands, together: what stood on the platform
 * stays on it. Where the platform is full they come to stand among what is there, but not on what they were made of.
 */
export function wayForCopies(
  originals: readonly Vec2[],
  taken: readonly Vec2[],
  platform: readonly Vec2[],
): Vec2 {
  const depths = originals.map((spot) => depthInPolygon(spot, platform));
  const isThere = (spot: Vec2, index: number): boolean =>
    depthInPolygon(spot, platform) >= Math.min(STEP, depths[index] ?? 0);
  return (
    freeWay(originals, { taken: [...taken, ...originals], apart: APART, isThere }) ??
    freeWay(originals, { taken: originals, apart: TOLD_APART, isThere }) ?? { x: STEP, y: -STEP }
  );
}

interface Room {
  readonly taken: readonly Vec2[];
  readonly apart: number;
  readonly isThere: (spot: Vec2, index: number) => boolean;
}

function freeWay(spots: readonly Vec2[], { taken, apart, isThere }: Room): Vec2 | null {
  const isFree = (spot: Vec2): boolean =>
    taken.every(({ x, y }) => Math.hypot(x - spot.x, y - spot.y) >= apart);
  const fits = (spot: Vec2, index: number): boolean => isThere(spot, index) && isFree(spot);
  return AROUND.find((way) => spots.every((spot, index) => fits(moved(spot, way), index))) ?? null;
}

const moved = (spot: Vec2, way: Vec2): Vec2 => ({ x: spot.x + way.x, y: spot.y + way.y });

/** The nearest first; of those as near, stage left before stage right. */
const AROUND: readonly Vec2[] = Array.from({ length: (2 * STEPS + 1) ** 2 }, (_, index) => ({
  x: (STEPS - (index % (2 * STEPS + 1))) * STEP,
  y: (Math.floor(index / (2 * STEPS + 1)) - STEPS) * STEP,
})).sort((a, b) => Math.hypot(a.x, a.y) - Math.hypot(b.x, b.y));
