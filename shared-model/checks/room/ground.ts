/** Everything that somebody meets on the floor in one setup. */

import { chairOutline, outlineOf } from '../../catalogue/outlines.ts';
import { inSetup, placedInSetup, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { floorHeightOn } from '../../document/levels.ts';
import type { Door, PlacedRecord, Point, Riser } from '../../document/records.ts';
import type { Gait } from './gait.ts';
import { levelEdges } from './level-edges.ts';
import type { Ground, Obstacle } from './sites.ts';
import { exitsOf, wallsOf, type Exit } from './walls.ts';

type Manner = Pick<Gait, 'onWheels' | 'highestStep'>;

export function groundOf(document: Document, setup: Id<'setup'>, manner: Manner): Ground {
  const exits = exitsFor(document, inSetup(document, setup, 'riser'), manner);
  const ids = new Set(exits.map(({ id }) => id));
  return { ...groundBehind(document, { setup, manner, isOpen: ({ id }) => ids.has(id) }), exits };
}

/** With every door shut: what lies beyond one is not known. */
export function groundWithin(document: Document, setup: Id<'setup'>, manner: Manner): Ground {
  return { ...groundBehind(document, { setup, manner, isOpen: () => false }), exits: [] };
}

interface Doors {
  readonly setup: Id<'setup'>;
  readonly manner: Manner;
  readonly isOpen: (door: Door) => boolean;
}

function groundBehind(document: Document, { setup, manner, isOpen }: Doors): Omit<Ground, 'exits'> {
  const steps = levelEdges(inSetup(document, setup, 'riser'), manner.highestStep);
  const walls = steps.map(({ a, b, riser }) => ({ a, b, of: riser.id }));
  return {
    obstacles: placedInSetup(document, setup).flatMap(obstaclesOf),
    walls: [...wallsOf(document, isOpen), ...walls],
  };
}

/** Exits before which no level stands too high; for wheels those alone that are marked as free of steps. */
function exitsFor(document: Document, risers: readonly Riser[], { onWheels, highestStep }: Manner): Exit[] {
  return exitsOf(document).filter(
    (exit) => (exit.stepFree || !onWheels) && floorHeightOn(risers, before(exit)) <= highestStep,
  );
}

/** A spot of the platform just before an exit. */
export function before({ middle, outward }: Exit): Point {
  return { x: middle.x - outward.x, y: middle.y - outward.y };
}

/** Whoever walks steps onto levels, and what has no height is gone over. */
function obstaclesOf(record: PlacedRecord): Obstacle[] {
  if (record.kind === 'riser' || (record.kind === 'shape' && record.height <= 0)) return [];
  const obstacle = { owner: record.id, outline: outlineOf(record) };
  const chair = record.kind === 'player' ? chairOutline(record) : null;
  return chair ? [obstacle, { owner: record.id, outline: chair }] : [obstacle];
}
