/** What a way is narrow for: the things on either side of its narrowest place. */

import type { Vec2 } from '../../geometry/frame.ts';
import { distancePointToSegment } from '../../geometry/segments.ts';
import { grown } from './box-grid.ts';
import type { Walker } from './walk.ts';

/** The ids of at most two things there, nearest first; of a wall that of the platform, of the edge of a level its own. */
export function beside({ clearances, free }: Walker, { x, y }: Vec2, width: number): string[] {
  const near: { readonly of: string; readonly distance: number }[] = [];
  const spot = { minX: x, minY: y, maxX: x, maxY: y };
  for (const index of clearances.grid.touching(grown(spot, width))) {
    const thing = clearances.outlines[index];
    if (!thing || free.has(thing.owner)) continue;
    const distance = thing.edges.reduce(
      (least, { ax, ay, bx, by }) =>
        Math.min(least, distancePointToSegment({ x, y }, { x: ax, y: ay }, { x: bx, y: by })),
      Infinity,
    );
    if (distance <= width) near.push({ of: thing.of, distance });
  }
  const names = near.sort((a, b) => a.distance - b.distance).map(({ of }) => of);
  return [...new Set(names)].slice(0, 2);
}
