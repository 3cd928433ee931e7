/** What stands on the stage just as the sight check counts it: boards, boxes and upright round bodies, and no more. */

import { buildScene } from '../../../checks/scene/build-scene.ts';
import type { BoxOccluder, CapsuleOccluder, Occluder, QuadOccluder } from '../../../checks/scene.ts';
import { rectangle } from '../../../catalogue/shapes.ts';
import type { Vec3 } from '../../../geometry/frame.ts';
import { placeOn, type ViewContext } from '../context.ts';
import { allOver, loft, prism, sheet, type Part, type Solid } from '../mesh.ts';

/** One solid for each thing that hides anything, in the order of the scene; not the platform, risers and the house. */
export function countedSolids(context: ViewContext): Solid[] {
  const { document, setup, items } = context;
  const kinds = new Map<string, string>(items.map(({ id, kind }) => [id, kind]));
  for (const { id, kind } of context.instruments) kinds.set(id, kind);
  const parts = new Map<string, Part[]>();
  for (const occluder of buildScene(document, setup).occluders) {
    const kind = kinds.get(occluder.record);
    if (kind === undefined || kind === 'riser') continue;
    const own = parts.get(occluder.record) ?? [];
    own.push(partOf(occluder, colourOf(context, kind, occluder)));
    parts.set(occluder.record, own);
  }
  return [...parts].map(([subject, own]) => ({ subject, parts: own }));
}

function colourOf({ palette, tints }: ViewContext, kind: string, { id }: Occluder): string {
  switch (kind) {
    case 'player':
      return id.endsWith(':head') ? tints.skin : tints.coat;
    case 'stand':
      return id.includes(':paper') ? tints.page : tints.desk;
    case 'instrument':
      return palette.instrument;
    default:
      return palette.wood;
  }
}

/** An occluder as a part of a picture. */
export function partOf(occluder: Occluder, colour: string): Part {
  switch (occluder.kind) {
    case 'quad':
      return sheet(cornersOf(occluder), { fill: colour });
    case 'box':
      return block(occluder, colour);
    case 'capsule':
      return roundBody(occluder, colour);
  }
}

export function cornersOf({ corners }: QuadOccluder): Vec3[] {
  return corners.map(([x, y, z]) => ({ x, y, z }));
}

function block({ center, size, yaw }: BoxOccluder, colour: string): Part {
  const [x, y, z] = center;
  const [width, depth, height] = size;
  const place = placeOn({ x, y, facing: yaw }, z);
  return prism(rectangle(width, depth), [-height / 2, height / 2], place, allOver(colour));
}

/** Corners of a ring, and rings of a dome: the flat faces lie at most half a hundredth of the radius inside. */
const AROUND = 28;
const DOME = [0, 0.16, 0.34, 0.5, 0.64, 0.76, 0.86, 0.94].map((share) => (share * Math.PI) / 2);

/** As large as the round body: corners so far out that each ring has the area of its circle. */
const FULL = Math.sqrt((2 * Math.PI) / AROUND / Math.sin((2 * Math.PI) / AROUND));

function roundBody({ x, y, z0, z1, r }: CapsuleOccluder, colour: string): Part {
  const ring = (latitude: number, z: number): Vec3[] =>
    Array.from({ length: AROUND }, (_, corner) => {
      const angle = (2 * Math.PI * corner) / AROUND;
      const radius = r * FULL * Math.cos(latitude);
      return {
        x: x + radius * Math.cos(angle),
        y: y + radius * Math.sin(angle),
        z: z + r * FULL * Math.sin(latitude),
      };
    });
  const rings = [
    ...DOME.toReversed().map((latitude) => ring(-latitude, z0)),
    ...DOME.map((latitude) => ring(latitude, z1)),
  ];
  return loft(rings, () => colour);
}
