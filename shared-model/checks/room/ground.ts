/** Everything a walker meets on the floor in one setup. */

import { chairOutline, outlineOf } from '../../catalogue/outlines.ts';
import { placedInSetup, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { PlacedRecord } from '../../document/records.ts';
import type { Ground, Obstacle } from './sites.ts';
import { exitsOf, wallsOf } from './walls.ts';

export function groundOf(document: Document, setup: Id<'setup'>): Ground {
  return {
    walls: wallsOf(document),
    obstacles: placedInSetup(document, setup).flatMap(obstaclesOf),
    exits: exitsOf(document),
  };
}

/** A riser is stepped on, and what has no height is walked over. */
function obstaclesOf(record: PlacedRecord): Obstacle[] {
  if (record.kind === 'riser' || (record.kind === 'shape' && record.height <= 0)) return [];
  const obstacle = { owner: record.id, outline: outlineOf(record) };
  const chair = record.kind === 'player' ? chairOutline(record) : null;
  return chair ? [obstacle, { owner: record.id, outline: chair }] : [obstacle];
}
