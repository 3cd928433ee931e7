/** Points and arrows in space. */

import type { Vec3 } from '../../geometry/frame.ts';

export function difference(a: Vec3, b: Vec3): Vec3 {
  return { x: a.x - b.x, y: a.y - b.y, z: a.z - b.z };
}

export function dot(a: Vec3, b: Vec3): number {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

export function cross(a: Vec3, b: Vec3): Vec3 {
  return { x: a.y * b.z - a.z * b.y, y: a.z * b.x - a.x * b.z, z: a.x * b.y - a.y * b.x };
}

export function lengthOf(a: Vec3): number {
  return Math.hypot(a.x, a.y, a.z);
}

/** So much of the way from `a` to `b`. */
export function between(a: Vec3, b: Vec3, share: number): Vec3 {
  return { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share, z: a.z + (b.z - a.z) * share };
}
