/** Points and arrows in space. */

import type { Vec3 } from '../../geometry/frame.ts';

export { between, cross, difference, dot, lengthOf } from '../../checks/reading/vectors.ts';

export const sum = (a: Vec3, b: Vec3): Vec3 => ({ x: a.x + b.x, y: a.y + b.y, z: a.z + b.z });

export const scaled = ({ x, y, z }: Vec3, by: number): Vec3 => ({ x: x * by, y: y * by, z: z * by });

/** The arrow of length one in the same direction. */
export function unit(arrow: Vec3): Vec3 {
  return scaled(arrow, 1 / Math.hypot(arrow.x, arrow.y, arrow.z));
}

/** The middle of some points; of none, the origin. */
export function meanOf(points: readonly Vec3[]): Vec3 {
  let [x, y, z] = [0, 0, 0];
  for (const point of points) [x, y, z] = [x + point.x, y + point.y, z + point.z];
  const count = Math.max(1, points.length);
  return { x: x / count, y: y / count, z: z / count };
}
