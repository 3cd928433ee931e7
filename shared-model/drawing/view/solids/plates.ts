/** Flat bodies with a rounded outline that lie any way in space: violins, cellos, folders. */

import type { Vec2, Vec3 } from '../../../geometry/frame.ts';
import type { Mesh, MeshFace, Place } from '../mesh.ts';
import { cross, dot, scaled, sum, unit } from '../vectors.ts';

export interface Plate {
  /** In an item's own frame, as are both directions; `across` is made square to `along`. */
  readonly middle: Vec3;
  readonly along: Vec3;
  readonly across: Vec3;
  /** x along, y across; convex, anticlockwise. */
  readonly outline: readonly Vec2[];
  readonly thickness: number;
  readonly fill: string;
}

export function plate(place: Place, { middle, along, across, outline, thickness, fill }: Plate): Mesh {
  const u = unit(along);
  const v = unit(sum(across, scaled(u, -dot(across, u))));
  const w = cross(u, v);
  const at = ({ x, y }: Vec2, out: number): Vec3 =>
    place(
      middle.x + u.x * x + v.x * y + w.x * out,
      middle.y + u.y * x + v.y * y + w.y * out,
      middle.z + u.z * x + v.z * y + w.z * out,
    );
  const count = outline.length;
  const indices = outline.map((_, index) => index);
  const sides = indices.map((i): MeshFace => {
    const next = (i + 1) % count;
    return { corners: [i, next, next + count, i + count], fill };
  });
  return {
    kind: 'mesh',
    points: [
      ...outline.map((corner) => at(corner, -thickness / 2)),
      ...outline.map((corner) => at(corner, thickness / 2)),
    ],
    convex: true,
    faces: [
      ...sides,
      { corners: indices.map((i) => i + count), fill },
      { corners: indices.toReversed(), fill },
    ],
  };
}

/** A rectangle about the middle whose corners are rounded off over a share (0 to 0.5) of each side. */
export function roundedOutline(length: number, width: number, roundness: number): Vec2[] {
  const [x, y] = [length / 2, width / 2];
  if (roundness === 0) {
    return [
      { x: -x, y: -y },
      { x, y: -y },
      { x, y },
      { x: -x, y },
    ];
  }
  const [rx, ry] = [length * roundness, width * roundness];
  const quarters: readonly (readonly [number, number])[] = [
    [1, 1],
    [-1, 1],
    [-1, -1],
    [1, -1],
  ];
  return quarters.flatMap(([sx, sy], quarter) =>
    [0, 30, 60, 90].map((step) => {
      const angle = ((quarter * 90 + step) * Math.PI) / 180;
      return { x: sx * (x - rx) + rx * Math.cos(angle), y: sy * (y - ry) + ry * Math.sin(angle) };
    }),
  );
}
