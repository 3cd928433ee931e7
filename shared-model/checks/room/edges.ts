/**
 * Players, chairs and stands near an open edge of the platform, or near an edge of the level they stand on (level-drops.ts). The distance is a precaution of the director's own: building codes
 * mostly leave the audience's edge of a stage unguarded on purpose (IBC 1015.2 exceptions 2 to 4, as printed in the
 * California Building Code), so nothing here says that a code is met or broken.
 */

import { concertOf, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { floorHeightOn } from '../../document/levels.ts';
import { edgeOf, type Segment } from '../../document/openings.ts';
import type { Platform, Point } from '../../document/records.ts';
import { forEachEdge, type Polygon } from '../../geometry/polygon.ts';
import { gapBetweenSegments } from '../../geometry/segments.ts';
import type { Finding } from '../finding.ts';
import { dropsBeside, FOOTHOLD, levelDrops } from './level-drops.ts';
import type { LevelEdge } from './level-edges.ts';
import { overhang, overLevel } from './off-platform.ts';
import { roomOf, type Room, type Thing } from './room.ts';
import type { Solid } from './solids.ts';
import { outwardOf } from './walls.ts';

/** IBC 1015.2: guards where the drop is more than 30 in (762 mm). */
export const GUARD_DROP = 762;

/**
 * `measured` and `required`: distances from the footprint to the nearest open edge of the platform. One finding an item,
 * and another one for the nearest edge of the level that it stands on, with that level as its second subject.
 */
export function edgeFindings(
  document: Document,
  setup: Id<'setup'>,
  room: Room = roomOf(document, setup),
): Finding[] {
  const { edgeDistance } = concertOf(document).limits;
  const { platform } = room;
  const openEdges = platform.openEdges.map((index) => ({ ...edgeOf(platform, index), index }));
  const drops = { drops: levelDrops(room), risers: room.risers, within: edgeDistance };
  return room.things.flatMap((thing) => {
    const feet = thing.solids.filter(isAtRisk);
    // What already stands out is reported as such.
    if (feet.some(({ outline }) => overhang(outline, platform.outline))) return [];
    const open = nearestEdge(feet, openEdges);
    const isOver = feet.some((foot) => overLevel(foot, room));
    const level = isOver ? null : nearestEdge(feet, dropsBeside(thing, drops));
    const near = [open && overOpenEdge(thing, open, room), level && overLevelEdge(thing, level)];
    return near.flatMap((finding) =>
      finding && finding.measured < edgeDistance ? [{ ...finding, required: edgeDistance }] : [],
    );
  });
}

/** Whether a code of that kind asks for a guard at this edge, for the wording of the caution only. */
export function guardTrigger(
  platform: Platform,
  edge: number,
  drop: number = platform.height,
): 'none' | 'guard' | 'audienceSide' {
  if (drop <= GUARD_DROP) return 'none';
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

interface NearEdge<E extends Segment> {
  readonly distance: number;
  readonly edge: E;
  readonly at: Point;
}

function nearestEdge<E extends Segment>(feet: readonly Solid[], edges: readonly E[]): NearEdge<E> | null {
  let nearest: NearEdge<E> | null = null;
  for (const edge of edges) {
    for (const { outline } of feet) {
      const { distance, at } = distanceTo(outline, edge);
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

interface OpenEdge extends Segment {
  readonly index: number;
}

/** Null where the floor does not drop. */
function overOpenEdge(
  { record }: Thing,
  { distance, edge: { index }, at }: NearEdge<OpenEdge>,
  { platform, risers }: Room,
): Finding | null {
  const outward = outwardOf(platform, index);
  // A level that ends at the edge, or so near it that nobody stands between, drops as far as both.
  const within = { x: at.x - FOOTHOLD * outward.x, y: at.y - FOOTHOLD * outward.y };
  const drop = platform.height + floorHeightOn(risers, within);
  if (drop <= 0) return null;
  return findingOf([record.id], { distance, at, drop, guard: guardTrigger(platform, index, drop) });
}

function overLevelEdge(
  { record }: Thing,
  { distance, edge: { riser, high, low }, at }: NearEdge<LevelEdge>,
): Finding {
  const drop = high - low;
  return findingOf([record.id, riser.id], {
    distance,
    at,
    drop,
    guard: drop > GUARD_DROP ? 'guard' : 'none',
  });
}

interface Near {
  readonly distance: number;
  readonly at: Point;
  readonly drop: number;
  readonly guard: ReturnType<typeof guardTrigger>;
}

function findingOf(subjects: readonly string[], { distance, at, drop, guard }: Near): Finding {
  return {
    code: 'room.edge',
    severity: 'caution',
    subjects,
    measured: distance,
    required: 0,
    unit: 'mm',
    where: at,
    detail: { drop, guard },
  };
}
