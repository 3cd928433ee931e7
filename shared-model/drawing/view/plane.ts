/** Planes in space: points p with n . p = d, n of length one. */

import type { Vec3 } from '../../geometry/frame.ts';

export interface Plane extends Vec3 {
  readonly d: number;
}

/** Distance of a point from a plane, positive on the side that the normal points to. */
export function heightOver(plane: Plane, point: Vec3): number {
  return plane.x * point.x + plane.y * point.y + plane.z * point.z - plane.d;
}

export function turnedOver({ x, y, z, d }: Plane): Plane {
  return { x: -x, y: -y, z: -z, d: -d };
}

/** Twice an area in mm2 that is too small to have a direction. */
const LEAST_AREA = 1e-6;

/**
 * The plane of a ring of corners x, y, z, x, y, z, ..., its normal towards whoever sees them run anticlockwise; null
 * when it has no area. By Newell's sums over all corners, so that no three of them that happen to lie on a line can
 * spoil it.
 */
export function planeOf(corners: readonly number[]): Plane | null {
  const last = corners.length - 3;
  let [x, y, z] = [0, 0, 0];
  let [ax, ay, az] = [corners[last] ?? 0, corners[last + 1] ?? 0, corners[last + 2] ?? 0];
  let [mx, my, mz] = [0, 0, 0];
  for (let i = 0; i <= last; i += 3) {
    const [bx, by, bz] = [corners[i] ?? 0, corners[i + 1] ?? 0, corners[i + 2] ?? 0];
    x += (ay - by) * (az + bz);
    y += (az - bz) * (ax + bx);
    z += (ax - bx) * (ay + by);
    [mx, my, mz] = [mx + bx, my + by, mz + bz];
    [ax, ay, az] = [bx, by, bz];
  }
  const size = Math.sqrt(x * x + y * y + z * z);
  if (!(size > LEAST_AREA)) return null;
  [x, y, z] = [x / size, y / size, z / size];
  return { x, y, z, d: ((x * mx + y * my + z * mz) * 3) / corners.length };
}
