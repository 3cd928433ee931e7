/** Something that stands before a door: the clear ground there should be as deep as a walking route is wide. */

import { allOf, concertOf, platformOf, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { doorway } from '../../document/openings.ts';
import type { Door, Platform, Point } from '../../document/records.ts';
import { outlineOf } from '../../catalogue/outlines.ts';
import type { Vec2 } from '../../geometry/frame.ts';
import { boundsOf, type Bounds, type Polygon } from '../../geometry/polygon.ts';
import { TOUCHING } from '../../geometry/tolerances.ts';
import type { Finding } from '../finding.ts';
import { BoxGrid, grown } from './box-grid.ts';
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
  const ground = groundBefore(room);
  return allOf(document, 'door').flatMap((door) => {
    const nearest = nearestBefore(door, ground, routeWidth);
    if (!nearest || nearest.depth >= routeWidth) return [];
    return [findingOf(door, { ...nearest, required: routeWidth })];
  });
}

/** The ground before each door that should be free: as wide as the doorway, as deep as a route is wide. */
export function groundsBeforeDoors(document: Document): Polygon[] {
  const { routeWidth } = concertOf(document).limits;
  const platform = platformOf(document);
  return allOf(document, 'door').map((door) => cornersBefore(frameBefore(platform, door), routeWidth));
}

/** What may stand before doors, with its outline on plan. */
interface Ground {
  readonly platform: Platform;
  readonly items: readonly { readonly id: string; readonly outline: Polygon }[];
  readonly grid: BoxGrid;
}

function groundBefore({ platform, things }: Room): Ground {
  const items = things.flatMap(({ record }) =>
    record.kind === 'riser' || (record.kind === 'shape' && record.height <= 0)
      ? []
      : [{ id: record.id, outline: outlineOf(record) }],
  );
  return { platform, items, grid: new BoxGrid(items.map(({ outline }) => boundsOf(outline))) };
}

interface Blocker {
  readonly item: string;
  readonly depth: number;
  readonly at: Point;
}

/** The nearest of what stands within `deep` before the door. */
function nearestBefore(door: Door, { platform, items, grid }: Ground, deep: number): Blocker | null {
  const frame = frameBefore(platform, door);
  let nearest: Blocker | null = null;
  for (const index of grid.touching(boundsBefore(frame, deep))) {
    const item = items[index];
    const depth = item ? depthBefore(frame, item.outline) : Infinity;
    if (item && depth < (nearest?.depth ?? Infinity)) {
      const at = { x: frame.middle.x + frame.inward.x * depth, y: frame.middle.y + frame.inward.y * depth };
      nearest = { item: item.id, depth, at };
    }
  }
  return nearest;
}

/** Round the ground that is asked to be free. */
function boundsBefore(frame: DoorFrame, deep: number): Bounds {
  return grown(boundsOf(cornersBefore(frame, deep)), TOUCHING);
}

function cornersBefore({ middle, inward, halfWidth }: DoorFrame, deep: number): Polygon {
  const corner = (aside: number, ahead: number): Point => ({
    x: middle.x + aside * inward.y + ahead * inward.x,
    y: middle.y - aside * inward.x + ahead * inward.y,
  });
  return [corner(-halfWidth, 0), corner(halfWidth, 0), corner(halfWidth, deep), corner(-halfWidth, deep)];
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
