/** How high the floor is under a spot of the platform: risers lift what stands on them. */

import { facingVector } from '../geometry/frame.ts';
import { inSetup, type Document } from './document.ts';
import type { Id } from './ids.ts';
import type { Millimetres, Point, Riser } from './records.ts';

/** Height above the platform's floor; the highest riser under the point counts. */
export function floorHeightAt(document: Document, setup: Id<'setup'>, point: Point): Millimetres {
  return floorHeightOn(inSetup(document, setup, 'riser'), point);
}

export function floorHeightOn(risers: readonly Riser[], point: Point): Millimetres {
  let height = 0;
  for (const riser of risers) if (riser.height > height && standsOn(riser, point)) height = riser.height;
  return height;
}

function standsOn(riser: Riser, point: Point): boolean {
  const along = facingVector(riser.facing);
  const [dx, dy] = [point.x - riser.x, point.y - riser.y];
  const forward = dx * along.x + dy * along.y;
  const sideways = dx * along.y - dy * along.x;
  return Math.abs(forward) <= riser.depth / 2 && Math.abs(sideways) <= riser.width / 2;
}
