/** Something that stands before a door: the clear ground there should be as deep as a walking route is wide. */

import { allOf, concertOf, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { doorway } from '../../document/openings.ts';
import type { Door, Platform, Point } from '../../document/records.ts';
import { outlineOf } from '../../catalogue/outlines.ts';
import type { Vec2 } from '../../geometry/frame.ts';
import type { Polygon } from '../../geometry/polygon.ts';
import type { Finding } from '../finding.ts';
import { polygonBetween } from './half-planes.ts';
import { roomOf, type Room } from './room.ts';
import { between, lengthOf, outwardOf } from './walls.ts';

/** `measured`: clear depth before the doorway; `required`: the width of a route. Subjects: door, nearest item. */
export function doorFindings(
  document: Document,
  setup: Id<'setup'>,
  room: Room = roomOf(document, setup),
): Finding[] {
  const { routeWidth } = concertOf(document).limits;
  return allOf(document, 'door').flatMap((door) => {
    const nearest = nearestBefore(door, room);
    if (!nearest || nearest.depth >= routeWidth) return [];
    return [findingOf(door, { ...nearest, required: routeWidth })];
  });
}

interface Blocker {
  readonly item: string;
  readonly depth: number;
  readonly at: Point;
}

function nearestBefore(door: Door, { platform, things }: Room): Blocker | null {
  const frame = frameBefore(platform, door);
  let nearest: Blocker | null = null;
  for (const { record } of things) {
    if (record.kind === 'riser' || (record.kind === 'shape' && record.height <= 0)) continue;
    const depth = depthBefore(frame, outlineOf(record));
    if (depth < (nearest?.depth ?? Infinity)) {
      const at = { x: frame.middle.x + frame.inward.x * depth, y: frame.middle.y + frame.inward.y * depth };
      nearest = { item: record.id, depth, at };
    }
  }
  return nearest;
}

interface DoorFrame {
  readonly middle: Point;
  readonly inward: Vec2;
  readonly halfWidth: number;
}

function frameBefore(platform: Platform, door: Door): DoorFrame {
  const opening = doorway(platform, door);
  const { x, y } = outwardOf(platform, door.edge);
  return { middle: between(opening, 0.5), inward: { x: -x, y: -y }, halfWidth: lengthOf(opening) / 2 };
}

/** How deep the ground straight before the doorway is free of the outline; Infinity when it lies elsewhere. */
function depthBefore({ middle, inward, halfWidth }: DoorFrame, outline: Polygon): number {
  const local = outline.map(({ x, y }) => {
    const [dx, dy] = [x - middle.x, y - middle.y];
    return { x: dx * inward.y - dy * inward.x, y: dx * inward.x + dy * inward.y };
  });
  const before = polygonBetween(local, {
    minX: -halfWidth,
    maxX: halfWidth,
    minY: -Infinity,
    maxY: Infinity,
  });
  const [near, far] = before.reduce(
    ([low, high], { y }) => [Math.min(low, y), Math.max(high, y)],
    [Infinity, -Infinity],
  );
  // What lies wholly behind the doorway is not on the platform.
  return (far ?? 0) <= 0 ? Infinity : Math.max(0, near ?? Infinity);
}

function findingOf(
  door: Door,
  { item, depth, at, required }: Blocker & { readonly required: number },
): Finding {
  return {
    code: 'room.door',
    severity: 'caution',
    subjects: [door.id, item],
    measured: depth,
    required,
    unit: 'mm',
    where: at,
    detail: {},
  };
}
