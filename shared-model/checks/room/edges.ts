/**
 * Players, chairs and stands near an open edge. The distance is a precaution of the director's own: building codes
 * mostly leave the audience's edge of a stage unguarded on purpose (IBC 1015.2 exceptions 2 to 4, as printed in the
 * California Building Code), so nothing here says that a code is met or broken.
 */

import { concertOf, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { edgeOf, type Segment } from '../../document/openings.ts';
import type { Platform, Point } from '../../document/records.ts';
import { forEachEdge, type Polygon } from '../../geometry/polygon.ts';
import { gapBetweenSegments } from '../../geometry/segments.ts';
import type { Finding } from '../finding.ts';
import { overhang } from './off-platform.ts';
import { roomOf, type Room } from './room.ts';
import type { Solid } from './solids.ts';
import { outwardOf } from './walls.ts';

/** IBC 1015.2: guards where the drop is more than 30 in (762 mm). */
export const GUARD_DROP = 762;

/** `measured` and `required`: distances from the footprint to the nearest open edge. One finding an item. */
export function edgeFindings(
  document: Document,
  setup: Id<'setup'>,
  room: Room = roomOf(document, setup),
): Finding[] {
  const { edgeDistance } = concertOf(document).limits;
  const { platform } = room;
  if (platform.height <= 0) return [];
  return room.things.flatMap(({ record, solids }) => {
    const feet = solids.filter(isAtRisk);
    // What already stands out is reported as such.
    if (feet.some(({ outline }) => overhang(outline, platform.outline))) return [];
    const nearest = nearestEdge(feet, platform);
    if (!nearest || nearest.distance >= edgeDistance) return [];
    return [findingOf(record.id, { ...nearest, required: edgeDistance, platform })];
  });
}

/** Whether a code of that kind asks for a guard at this edge, for the wording of the caution only. */
export function guardTrigger(platform: Platform, edge: number): 'none' | 'guard' | 'audienceSide' {
  if (platform.height <= GUARD_DROP) return 'none';
  return isAudienceSide(platform, edge) ? 'audienceSide' : 'guard';
}

/** The edge looks at the house rather than to a side. */
export function isAudienceSide(platform: Platform, edge: number): boolean {
  return outwardOf(platform, edge).y < -Math.SQRT1_2;
}

function isAtRisk({ record, part }: Solid): boolean {
  const { kind } = record;
  return kind === 'player' || kind === 'seat' || (kind === 'stand' && part === 'foot');
}

interface NearEdge {
  readonly distance: number;
  readonly edge: number;
  readonly at: Point;
}

function nearestEdge(feet: readonly Solid[], platform: Platform): NearEdge | null {
  let nearest: NearEdge | null = null;
  for (const edge of platform.openEdges) {
    for (const { outline } of feet) {
      const { distance, at } = distanceTo(outline, edgeOf(platform, edge));
      if (distance < (nearest?.distance ?? Infinity)) nearest = { distance, edge, at };
    }
  }
  return nearest;
}

function distanceTo(outline: Polygon, { a, b }: Segment): { distance: number; at: Point } {
  let best = { distance: Infinity, at: a };
  forEachEdge(outline, (p, q) => {
    const gap = gapBetweenSegments(p, q, a, b);
    if (gap.distance < best.distance) best = { distance: gap.distance, at: gap.b };
  });
  return best;
}

interface Near extends NearEdge {
  readonly required: number;
  readonly platform: Platform;
}

function findingOf(id: string, { distance, edge, at, required, platform }: Near): Finding {
  return {
    code: 'room.edge',
    severity: 'caution',
    subjects: [id],
    measured: distance,
    required,
    unit: 'mm',
    where: at,
    detail: { drop: platform.height, guard: guardTrigger(platform, edge) },
  };
}
