/** What reaches over the platform's outline, or over the edge of the level it stands on. */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { floorHeightOn } from '../../document/levels.ts';
import type { Point, Riser } from '../../document/records.ts';
import { outlineOf } from '../../catalogue/outlines.ts';
import { depthInPolygon, type Polygon } from '../../geometry/polygon.ts';
import type { Finding } from '../finding.ts';
import { roomOf, type Room } from './room.ts';
import type { Solid } from './solids.ts';

/** Less than this is not seen with a tape measure. */
const NOTICED = 1;

/** `measured` is minus the farthest that the item stands out; `required` 0. One finding an item. */
export function offPlatformFindings(
  document: Document,
  setup: Id<'setup'>,
  room: Room = roomOf(document, setup),
): Finding[] {
  const worst = new Map<string, Finding>();
  for (const solid of room.solids) {
    const { record } = solid;
    if ((record.kind === 'shape' && record.fixed) || solid.part === 'pole') continue;
    const finding = overPlatform(solid, room) ?? overLevel(solid, room);
    const known = worst.get(record.id);
    if (finding && (!known || finding.measured < known.measured)) worst.set(record.id, finding);
  }
  return [...worst.values()];
}

interface Overhang {
  readonly by: number;
  readonly at: Point;
}

/** The farthest that `outline` reaches out of `ground`; null when it lies within. */
export function overhang(outline: Polygon, ground: Polygon): Overhang | null {
  const out = outline.map((corner) => ({ by: -depthInPolygon(corner, ground), at: corner }));
  // An inward corner of the ground can cut into an outline whose own corners all lie within.
  const cuts = ground.map((corner) => ({ by: depthInPolygon(corner, outline), at: corner }));
  return farthest([...out, ...cuts]);
}

function overPlatform(solid: Solid, { platform }: Room): Finding | null {
  const over = overhang(solid.outline, platform.outline);
  return over && findingOf(over, [solid.record.id]);
}

/** What reaches over the level it stands on. Compared corner by corner: levels side by side carry together. */
export function overLevel(solid: Solid, { risers }: Pick<Room, 'risers'>): Finding | null {
  const { record, low } = solid;
  if (record.kind === 'riser' || (record.kind === 'player' && solid.part === 'body') || low <= 0) return null;
  const height = floorHeightOn(risers, record);
  const carrying = risers.filter((riser) => riser.height >= height);
  const under = carrying.find((riser) => depthInPolygon(record, outlineOf(riser)) >= 0);
  const over = farthest(
    solid.outline
      .filter((corner) => floorHeightOn(risers, corner) < height)
      .map((corner) => ({ by: distanceTo(carrying, corner), at: corner })),
  );
  return over && under ? findingOf(over, [record.id, under.id]) : null;
}

function distanceTo(risers: readonly Riser[], point: Point): number {
  return risers.reduce((least, riser) => Math.min(least, -depthInPolygon(point, outlineOf(riser))), Infinity);
}

function farthest(overhangs: readonly Overhang[]): Overhang | null {
  return overhangs.reduce<Overhang | null>(
    (best, next) => (next.by > (best?.by ?? NOTICED) ? next : best),
    null,
  );
}

function findingOf({ by, at }: Overhang, subjects: readonly string[]): Finding {
  return {
    code: 'room.offPlatform',
    severity: 'fail',
    subjects,
    measured: -by,
    required: 0,
    unit: 'mm',
    where: at,
    detail: {},
  };
}
