/** The same question answered by general-purpose libraries. */

import polygonClipping, { type MultiPolygon, type Pair, type Polygon } from 'polygon-clipping';
import { DoubleSide, Ray, Vector3 } from 'three';
import type { MeshBVH } from 'three-mesh-bvh';
import type { Occluder, Scene, SeatPoint, Target, Triple } from '#model/checks/scene.ts';
import { meshOf } from '../oracles/ray-caster.ts';

/** Segments round a capsule and over each of its ends: coarse, which is what makes the rays fast. */
const COARSE = { around: 16, over: 4 };

export interface Pairing {
  readonly seat: SeatPoint;
  readonly target: Target;
}

/** Every `step`th pair of a scene. */
export function somePairs({ seats, targets }: Scene, step: number): Pairing[] {
  const pairs: Pairing[] = [];
  for (let pair = 0; pair < seats.length * targets.length; pair += step) {
    const [seat, target] = [seats[Math.floor(pair / targets.length)], targets[pair % targets.length]];
    if (seat && target) pairs.push({ seat, target });
  }
  return pairs;
}

/** All occluders in one tree; owners are left aside, which spares the rays a second tree. */
export function rayTree(scene: Scene): MeshBVH {
  const tree = meshOf(scene.occluders, COARSE);
  if (!tree) throw new Error('a scene without occluders');
  return tree;
}

const ray = new Ray();
const aim = new Vector3();

/** Rays to the middles of side x side cells; nothing is made anew but what the library makes. */
export function shareByTree(tree: MeshBVH, { seat, target }: Pairing, side: number): number {
  const [dx, dy] = [target.x - seat.x, target.y - seat.y];
  const distance = Math.hypot(dx, dy);
  ray.origin.set(seat.x, seat.y, seat.z);
  let seen = 0;
  for (let i = 0; i < side; i++) {
    const sideways = (((i + 0.5) / side - 0.5) * target.width) / distance;
    for (let k = 0; k < side; k++) {
      const up = target.z0 + ((k + 0.5) / side) * (target.z1 - target.z0) - seat.z;
      aim.set(dx + dy * sideways, dy - dx * sideways, up);
      const length = aim.length();
      ray.direction.copy(aim).divideScalar(length);
      if (!tree.raycastFirst(ray, DoubleSide, 0, length)) seen++;
    }
  }
  return seen / side ** 2;
}

/** Every occluder is projected whole and united, without culling. */
export function shareByUnion({ occluders }: Scene, { seat, target }: Pairing): number {
  const half = target.width / 2;
  const window: Polygon = [
    [
      [-half, target.z0],
      [half, target.z0],
      [half, target.z1],
      [-half, target.z1],
    ],
  ];
  const shadows: Polygon[] = [];
  for (const occluder of occluders) {
    if (occluder.owner === target.id) continue;
    for (const face of facesOf(occluder, seat)) {
      const shadow = shadowOf(face, seat, target);
      if (shadow) shadows.push([shadow]);
    }
  }
  const [first, ...others] = shadows;
  if (!first) return 1;
  const covered = polygonClipping.intersection(polygonClipping.union(first, ...others), window);
  return 1 - areaOf(covered) / (target.width * (target.z1 - target.z0));
}

/** Corners on the window's plane; null for what is not wholly between the eye and it. */
function shadowOf(face: readonly Triple[], seat: SeatPoint, target: Target): Pair[] | null {
  const [dx, dy] = [target.x - seat.x, target.y - seat.y];
  const distance = Math.hypot(dx, dy);
  const shadow: Pair[] = [];
  for (const [x, y, z] of face) {
    const depth = ((x - seat.x) * dx + (y - seat.y) * dy) / distance;
    if (depth < 1 || depth > distance) return null;
    const across = ((x - seat.x) * dy - (y - seat.y) * dx) / distance;
    shadow.push([grid((across * distance) / depth), grid(seat.z + ((z - seat.z) * distance) / depth)]);
  }
  return shadow;
}

/** The library needs coordinates on a grid to be sure of itself; see tests/oracles/polygon-union.ts. */
const grid = (length: number): number => Math.round(length * 1024) / 1024;

function facesOf(occluder: Occluder, seat: SeatPoint): (readonly Triple[])[] {
  if (occluder.kind === 'quad') return [occluder.corners];
  if (occluder.kind === 'capsule') return [outlineFacing(occluder, seat)];
  const [x, y, z] = occluder.center;
  const [dx, dy, dz] = occluder.size.map((size) => size / 2) as [number, number, number];
  const [c, s] = [Math.cos((occluder.yaw * Math.PI) / 180), Math.sin((occluder.yaw * Math.PI) / 180)];
  const corner = (a: number, b: number, h: number): Triple => [
    x + c * a * dx - s * b * dy,
    y + s * a * dx + c * b * dy,
    z + h * dz,
  ];
  const ring = (h: number): Triple[] => [
    corner(-1, -1, h),
    corner(1, -1, h),
    corner(1, 1, h),
    corner(-1, 1, h),
  ];
  const sides = (
    [
      [-1, -1, 1, -1],
      [1, -1, 1, 1],
      [1, 1, -1, 1],
      [-1, 1, -1, -1],
    ] as const
  ).map(([a, b, p, q]): Triple[] => [corner(a, b, -1), corner(p, q, -1), corner(p, q, 1), corner(a, b, 1)]);
  return [ring(1), ring(-1), ...sides];
}

/** A stadium of 24 corners that faces the eye: near enough for timing. */
function outlineFacing(
  { x, y, z0, z1, r }: Extract<Occluder, { kind: 'capsule' }>,
  seat: SeatPoint,
): Triple[] {
  const distance = Math.hypot(x - seat.x, y - seat.y);
  const [rx, ry] = [((y - seat.y) / distance) * r, (-(x - seat.x) / distance) * r];
  return Array.from({ length: 24 }, (_, k) => {
    const angle = ((k + 0.5) * Math.PI) / 12;
    const z = angle < Math.PI ? z1 : z0;
    return [x + rx * Math.cos(angle), y + ry * Math.cos(angle), z + r * Math.sin(angle)];
  });
}

function areaOf(polygons: MultiPolygon): number {
  let area = 0;
  for (const rings of polygons) {
    rings.forEach((ring, index) => {
      let twice = 0;
      ring.forEach(([x1, y1], i) => {
        const [x2, y2] = ring[(i + 1) % ring.length] ?? [x1, y1];
        twice += x1 * y2 - x2 * y1;
      });
      area += ((index === 0 ? 1 : -1) * Math.abs(twice)) / 2;
    });
  }
  return area;
}
