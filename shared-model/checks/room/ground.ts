/** Everything that somebody meets on the floor in one setup. */

import { chairOutline, outlineOf } from '../../catalogue/outlines.ts';
import { inSetup, placedInSetup, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { floorHeightOn } from '../../document/levels.ts';
import type { PlacedRecord, Riser } from '../../document/records.ts';
import type { Gait } from './gait.ts';
import { LEAST_STEP, levelEdges } from './level-edges.ts';
import type { Ground, Obstacle } from './sites.ts';
import { exitsOf, wallsOf, type Exit } from './walls.ts';

export function groundOf(
  document: Document,
  setup: Id<'setup'>,
  { onWheels }: Pick<Gait, 'onWheels'>,
): Ground {
  const obstacles = placedInSetup(document, setup).flatMap(obstaclesOf);
  if (!onWheels) return { obstacles, walls: wallsOf(document), exits: exitsOf(document) };
  const risers = inSetup(document, setup, 'riser');
  const exits = stepFreeExits(document, risers);
  const ids = new Set(exits.map(({ id }) => id));
  const walls = wallsOf(document, ({ id }) => ids.has(id));
  return { obstacles, exits, walls: [...walls, ...levelEdges(risers)] };
}

/** Doors for people on wheels: marked as free of steps, and with no level standing before them. */
function stepFreeExits(document: Document, risers: readonly Riser[]): Exit[] {
  return exitsOf(document).filter(({ stepFree, middle, outward }) => {
    const within = { x: middle.x - outward.x, y: middle.y - outward.y };
    return stepFree && floorHeightOn(risers, within) <= LEAST_STEP;
  });
}

/** Whoever walks steps onto levels, and what has no height is gone over. */
function obstaclesOf(record: PlacedRecord): Obstacle[] {
  if (record.kind === 'riser' || (record.kind === 'shape' && record.height <= 0)) return [];
  const obstacle = { owner: record.id, outline: outlineOf(record) };
  const chair = record.kind === 'player' ? chairOutline(record) : null;
  return chair ? [obstacle, { owner: record.id, outline: chair }] : [obstacle];
}
