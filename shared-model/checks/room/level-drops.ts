/** The edges of levels from which somebody could fall: where the next floor is lower by more than a step. */

import { floorHeightOn } from '../../document/levels.ts';
import type { Millimetres, PlacedRecord, Platform, Riser } from '../../document/records.ts';
import { WHEELCHAIR } from '../../catalogue/seats.ts';
import { boundsOf, pointInPolygon } from '../../geometry/polygon.ts';
import { grown, touch } from './box-grid.ts';
import { HIGHEST_STEP, LEAST_STEP, levelEdges, type LevelEdge } from './level-edges.ts';
import type { Room, Thing } from './room.ts';
import { between, lengthOf } from './walls.ts';

/** Nobody falls through a gap narrower than this, nor stands on a strip so narrow. Common practice, no source. */
export const FOOTHOLD: Millimetres = 100;

/** Beside a slanting wall the gap is looked at so often along an edge. */
const EVERY: Millimetres = 250;

/**
 * Pieces of the levels' edges beyond which, farther than a gap, the platform's floor or a lower level lies. An edge at a
 * wall drops nowhere; one at the platform's own open edge is told of with that edge.
 */
export function levelDrops({ risers, platform }: Room): LevelEdge[] {
  return levelEdges(risers, LEAST_STEP, FOOTHOLD)
    .flatMap(shortened)
    .filter(({ below }) => isOn(platform, below));
}

export interface Drops {
  readonly drops: readonly LevelEdge[];
  readonly risers: readonly Riser[];
  /** No farther away than this. */
  readonly within: Millimetres;
}

/** Those of the level that a thing stands on, where they drop by more than it goes down in a step. */
export function dropsBeside({ record, bounds }: Thing, { drops, risers, within }: Drops): LevelEdge[] {
  const floor = floorHeightOn(risers, record);
  const step = isOnWheels(record) ? LEAST_STEP : HIGHEST_STEP;
  const around = grown(bounds, within);
  return drops.filter(
    ({ a, b, high, low }) =>
      Math.abs(high - floor) <= LEAST_STEP && high - low > step && touch(boundsOf([a, b]), around),
  );
}

function isOnWheels(record: PlacedRecord): boolean {
  if (record.kind === 'player') return record.mobility === 'wheelchair';
  return record.kind === 'seat' && record.model === WHEELCHAIR.id;
}

function shortened(edge: LevelEdge): LevelEdge[] {
  const count = Math.ceil(lengthOf(edge) / EVERY);
  const middle = between(edge, 0.5);
  return Array.from({ length: count }, (_, index) => {
    const [a, b] = [between(edge, index / count), between(edge, (index + 1) / count)];
    const here = between({ a, b }, 0.5);
    const below = { x: edge.below.x + here.x - middle.x, y: edge.below.y + here.y - middle.y };
    return { ...edge, a, b, below };
  });
}

function isOn({ outline }: Platform, point: LevelEdge['below']): boolean {
  return pointInPolygon(point, outline);
}
