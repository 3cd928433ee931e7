/**
 * The widest way out by flooding a grid: slow, coarse and independent of the checks' own search. A width is possible
 * when a flood from the player's spot reaches the exit over points that keep half of it from every outline.
 */

import type { Vec2 } from '#model/geometry/frame.ts';
import { boundsOf, depthInPolygon, type Polygon } from '#model/geometry/polygon.ts';
import { distancePointToSegment } from '#model/geometry/segments.ts';

export interface Yard {
  readonly outline: Polygon;
  readonly obstacles: readonly Polygon[];
  /** A stretch of the outline. */
  readonly exit: readonly [Vec2, Vec2];
  readonly spot: Vec2;
  readonly firstStep: number;
  readonly squeeze: number;
}

export const PITCH = 30;

/** To 1 mm of what the grid can tell. Truth lies at most 2 * PITCH above, and next to nothing below. */
export function floodedWidth(yard: Yard, most: number): number {
  const grid = gridOf(yard);
  let [possible, not] = [0, most + 1];
  while (not - possible > 1) {
    const width = (possible + not) / 2;
    if (reaches(grid, yard, width)) possible = width;
    else not = width;
  }
  return possible;
}

interface GridPoint extends Vec2 {
  readonly clearance: number;
  readonly isNear: boolean;
  readonly isAtExit: boolean;
}

interface Grid {
  readonly minX: number;
  readonly minY: number;
  readonly columns: number;
  readonly points: readonly GridPoint[];
}

function gridOf(yard: Yard): Grid {
  const { minX, minY, maxX, maxY } = boundsOf(yard.outline);
  const columns = Math.floor((maxX - minX) / PITCH) + 1;
  const rows = Math.floor((maxY - minY) / PITCH) + 1;
  const points = Array.from({ length: columns * rows }, (_, index) => {
    const at = { x: minX + (index % columns) * PITCH, y: minY + Math.floor(index / columns) * PITCH };
    return { ...at, ...natureOf(at, yard) };
  });
  return { minX, minY, columns, points };
}

function natureOf(
  point: Vec2,
  { outline, obstacles, exit, spot, firstStep }: Yard,
): Omit<GridPoint, 'x' | 'y'> {
  const toObstacles = obstacles.map((obstacle) => -depthInPolygon(point, obstacle));
  return {
    clearance: Math.min(toWalls(point, outline, exit), ...toObstacles),
    isNear: Math.hypot(point.x - spot.x, point.y - spot.y) <= firstStep,
    isAtExit: distancePointToSegment(point, ...exit) <= PITCH,
  };
}

/** The outline's own distance, except that the exit's stretch is no wall. */
function toWalls(point: Vec2, outline: Polygon, [from, to]: readonly [Vec2, Vec2]): number {
  let least = Infinity;
  outline.forEach((a, index) => {
    const b = outline[(index + 1) % outline.length] ?? a;
    const holdsExit = distancePointToSegment(from, a, b) < 1 && distancePointToSegment(to, a, b) < 1;
    if (!holdsExit) least = Math.min(least, distancePointToSegment(point, a, b));
    else {
      least = Math.min(least, distancePointToSegment(point, a, from), distancePointToSegment(point, to, b));
    }
  });
  return least;
}

function reaches({ points, columns, minX, minY }: Grid, { spot, squeeze }: Yard, width: number): boolean {
  const start = Math.round((spot.x - minX) / PITCH) + columns * Math.round((spot.y - minY) / PITCH);
  const seen = new Uint8Array(points.length);
  const waiting = [start];
  for (let index = waiting.pop(); index !== undefined; index = waiting.pop()) {
    if (points[index]?.isAtExit) return true;
    for (const step of [-columns - 1, -columns, -columns + 1, -1, 1, columns - 1, columns, columns + 1]) {
      const point = points[index + step];
      // Steps over the ends of a row lead to a wall, where nothing is free.
      if (!point || seen[index + step]) continue;
      seen[index + step] = 1;
      const isFree = point.clearance >= width / 2 || (point.isNear && point.clearance >= squeeze / 2);
      if (isFree) waiting.push(index + step);
    }
  }
  return false;
}
