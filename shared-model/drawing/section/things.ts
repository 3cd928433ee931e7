/** Furniture and instruments from the side: the same boxes and boards that the sight check computes with. */

import { WHEELCHAIR } from '../../catalogue/seats.ts';
import { standModel, USUAL_STAND } from '../../catalogue/stands.ts';
import type { Occluder, Scene } from '../../checks/scene.ts';
import { onPlane } from '../../checks/sightlines/rake-plane.ts';
import { kindWord } from '../../document/labels.ts';
import { floorHeightAt } from '../../document/levels.ts';
import type { PlacedRecord, Stand } from '../../document/records.ts';
import { convexHull } from '../../geometry/convex-hull.ts';
import { radians, type Vec2 } from '../../geometry/frame.ts';
import { boxOfPoints } from '../bounds.ts';
import { circle, hatching, line, polygon, type Path } from '../outline.ts';
import { paint, pen } from '../plan/context.ts';
import type { Box, GroupPrimitive, Primitive } from '../primitives.ts';
import { WEIGHT } from '../style.ts';
import { planeToPage, type SectionContext, type ShownItem } from './context.ts';
import { chairLines, looksAlong } from './figure.ts';
import { wheelchairParts } from './wheelchair.ts';

export function drawThing(context: SectionContext, item: ShownItem): GroupPrimitive {
  return {
    kind: 'group',
    subject: item.record.id,
    description: kindWord(item.record.kind),
    children: symbolOf(context, item),
  };
}

function symbolOf(context: SectionContext, { record, full }: ShownItem): Primitive[] {
  const { palette } = context;
  switch (record.kind) {
    case 'stand':
      return drawStand(context, record);
    case 'riser':
      return outlines(
        context,
        record,
        full ? palette.riser : palette.paper,
        full ? palette.ink : palette.faint,
      );
    case 'shape':
      return record.fixed
        ? drawBuilding(context, record)
        : outlines(context, record, palette.wood, palette.ink);
    case 'table':
    case 'piano':
    case 'largeInstrument':
      return outlines(context, record, palette.wood, palette.ink);
    case 'instrumentStand':
      return drawPost(context, record, { height: record.height, head: palette.instrument });
    case 'lamp':
      return drawPost(context, record, { height: record.height, head: palette.lamp });
    case 'seat': {
      const floor = floorHeightAt(context.document, context.setup, record);
      const looks = looksAlong(context.plane, record.facing);
      const at = { x: onPlane(context.plane, record).out, y: floor };
      if (record.model === WHEELCHAIR.id) {
        const { behind, before } = wheelchairParts(context, { ...at, seat: record.height, looks });
        return [...behind, ...before];
      }
      const lines = chairLines({ ...at, seat: record.height, looks, back: true });
      return [paint(context.toPage, lines, pen(palette.ink, WEIGHT.medium))];
    }
    case 'player':
      return [];
  }
}

/** The parts of a record as they show from the side, in mm of the plane, farthest first. */
function partsOf({ scene, plane }: SectionContext, record: PlacedRecord): { id: string; corners: Vec2[] }[] {
  return occludersOf(scene, record.id)
    .map((occluder) => {
      const spots = cornersOf(occluder).map(([x, y, z]) => ({ ...onPlane(plane, { x, y }), z }));
      const beyond = spots.reduce((sum, spot) => sum + spot.beyond, 0) / Math.max(1, spots.length);
      return { id: occluder.id, beyond, corners: convexHull(spots.map(({ out, z }) => ({ x: out, y: z }))) };
    })
    .sort((a, b) => b.beyond - a.beyond);
}

/** Sorted by record once a scene: looking through all for each of ten thousand things takes minutes. */
const BY_RECORD = new WeakMap<Scene['occluders'], ReadonlyMap<string, readonly Occluder[]>>();

function occludersOf({ occluders }: Scene, record: string): readonly Occluder[] {
  const sorted = BY_RECORD.get(occluders) ?? sortedByRecord(occluders);
  BY_RECORD.set(occluders, sorted);
  return sorted.get(record) ?? [];
}

function sortedByRecord(occluders: Scene['occluders']): ReadonlyMap<string, readonly Occluder[]> {
  const sorted = new Map<string, Occluder[]>();
  for (const occluder of occluders) {
    const others = sorted.get(occluder.record);
    if (others) others.push(occluder);
    else sorted.set(occluder.record, [occluder]);
  }
  return sorted;
}

function cornersOf(occluder: Occluder): (readonly [number, number, number])[] {
  if (occluder.kind === 'quad') return [...occluder.corners];
  if (occluder.kind === 'capsule') return [];
  const [x, y, z] = occluder.center;
  const [halfX, halfY, halfZ] = [occluder.size[0] / 2, occluder.size[1] / 2, occluder.size[2] / 2];
  const [c, s] = [Math.cos(radians(occluder.yaw)), Math.sin(radians(occluder.yaw))];
  return [-halfX, halfX].flatMap((dx) =>
    [-halfY, halfY].flatMap((dy) =>
      [-halfZ, halfZ].map((dz) => [x + c * dx - s * dy, y + s * dx + c * dy, z + dz] as const),
    ),
  );
}

function outlines(context: SectionContext, record: PlacedRecord, fill: string, ink: string): Primitive[] {
  return partsOf(context, record).map(({ corners }) =>
    paint(context.toPage, polygon(corners), { fill, ...pen(ink, WEIGHT.thin) }),
  );
}

/** Hatched, as on the plan. */
function drawBuilding(context: SectionContext, record: PlacedRecord): Primitive[] {
  const { palette } = context;
  const hull = convexHull(partsOf(context, record).flatMap(({ corners }) => corners));
  const corners = hull.map(({ x, y }) => planeToPage(context, x, y));
  return [
    { kind: 'path', path: polygon(corners), fill: palette.paper },
    { kind: 'path', path: hatching(corners, 1, 45), ...pen(palette.building, WEIGHT.thin) },
    { kind: 'path', path: polygon(corners), ...pen(palette.ink, WEIGHT.medium) },
  ];
}

/** Column and foot under each desk, then boards and paper. */
function drawStand(context: SectionContext, stand: Stand): Primitive[] {
  const { palette, toPage } = context;
  const parts = partsOf(context, stand);
  const boards = parts.filter(({ id }) => id.includes(':desk'));
  const floor = floorHeightAt(context.document, context.setup, stand);
  const { baseRadius } = standModel(stand.model) ?? USUAL_STAND;
  const columns = boards.flatMap(({ corners }): Path => {
    const box = boxOfPoints(corners);
    if (!box) return [];
    const x = box.x + box.width / 2;
    return [
      ...line({ x, y: floor + 40 }, { x, y: box.y + box.height / 2 }),
      ...line({ x: x - baseRadius, y: floor }, { x, y: floor + 60 }),
      ...line({ x: x + baseRadius, y: floor }, { x, y: floor + 60 }),
    ];
  });
  return [
    paint(toPage, columns, pen(palette.metal, WEIGHT.medium)),
    ...parts.map(({ id, corners }) => {
      const isPaper = id.includes(':paper');
      const look = isPaper
        ? { fill: palette.page, ...pen(palette.desk, WEIGHT.hair) }
        : { fill: palette.desk, ...pen(palette.desk, WEIGHT.bold) };
      return paint(toPage, polygon(corners), look);
    }),
  ];
}

interface Post {
  readonly height: number;
  readonly head: string;
}

/** What waits on a peg, or a lamp on its stand: a post with a foot and a head. */
function drawPost(context: SectionContext, record: PlacedRecord, { height, head }: Post): Primitive[] {
  const { palette, toPage } = context;
  const x = onPlane(context.plane, record).out;
  const y = floorHeightAt(context.document, context.setup, record);
  const foot = line({ x: x - POST_FOOT, y }, { x: x + POST_FOOT, y });
  return [
    paint(toPage, [...foot, ...line({ x, y }, { x, y: y + height })], pen(palette.metal, WEIGHT.medium)),
    paint(toPage, circle({ x, y: y + height }, POST_HEAD), { fill: head, ...pen(palette.ink, WEIGHT.hair) }),
  ];
}

const POST_FOOT = 140;
const POST_HEAD = 60;

/** The box of a thing on the page, for its label. */
export function thingBox(context: SectionContext, record: PlacedRecord): Box {
  const parts = partsOf(context, record).flatMap(({ corners }) => corners);
  const spots = parts.map(({ x, y }) => planeToPage(context, x, y));
  const at = planeToPage(context, onPlane(context.plane, record).out, heightOf(record));
  return boxOfPoints(spots) ?? { x: at.x - 0.5, y: at.y - 0.5, width: 1, height: 1 };
}

function heightOf(record: PlacedRecord): number {
  return 'height' in record ? record.height : 0;
}
