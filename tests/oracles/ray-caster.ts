/**
 * Visible shares by casting rays: an independent second program, on `three` and `three-mesh-bvh`. It meshes the raw
 * scene itself and knows nothing of shadows, hulls or sweeps.
 */

import * as THREE from 'three';
import { mergeGeometries } from 'three/examples/jsm/utils/BufferGeometryUtils.js';
import { MeshBVH } from 'three-mesh-bvh';
import type { Occluder, Scene, SeatPoint, Target } from '#model/checks/scene.ts';
import { diceOf } from './seeded.ts';

/** Row-major shares; `side` x `side` rays a pair, one at a random spot in each cell of a grid over the window. */
export function sharesByRays(scene: Scene, side: number): Float64Array {
  const shares = new Float64Array(scene.seats.length * scene.targets.length);
  scene.targets.forEach((target, t) => {
    const bvh = meshOf(scene.occluders.filter(({ owner }) => owner !== target.id));
    scene.seats.forEach((seat, s) => {
      shares[s * scene.targets.length + t] = bvh ? shareByRays(bvh, seat, target, side) : 1;
    });
  });
  return shares;
}

/** Facets of a capsule, round it and over each end. */
interface Fineness {
  readonly around: number;
  readonly over: number;
}

const FINE: Fineness = { around: 96, over: 16 };

/** All occluders in one tree; null: there are none. */
export function meshOf(occluders: readonly Occluder[], fineness = FINE): MeshBVH | null {
  if (occluders.length === 0) return null;
  return new MeshBVH(mergeGeometries(occluders.map((occluder) => geometryOf(occluder, fineness))));
}

export function shareByRays(bvh: MeshBVH, seat: SeatPoint, target: Target, side: number): number {
  const dice = diceOf(side);
  const eye = new THREE.Vector3(seat.x, seat.y, seat.z);
  const axis = new THREE.Vector3(target.x - seat.x, target.y - seat.y, 0).normalize();
  const right = new THREE.Vector3(axis.y, -axis.x, 0);
  const ray = new THREE.Ray(eye);
  let seen = 0;
  for (let i = 0; i < side; i++) {
    for (let k = 0; k < side; k++) {
      const sideways = ((i + dice.between(0, 1)) / side - 0.5) * target.width;
      const z = target.z0 + ((k + dice.between(0, 1)) / side) * (target.z1 - target.z0);
      ray.direction.set(target.x, target.y, z).addScaledVector(right, sideways).sub(eye);
      const distance = ray.direction.length();
      ray.direction.divideScalar(distance);
      if (!bvh.raycastFirst(ray, THREE.DoubleSide, 0, distance)) seen++;
    }
  }
  return seen / (side * side);
}

function geometryOf(occluder: Occluder, { around, over }: Fineness): THREE.BufferGeometry {
  if (occluder.kind === 'quad') return quadGeometry(occluder.corners.flat());
  if (occluder.kind === 'box') {
    const [dx, dy, dz] = occluder.size;
    const [x, y, z] = occluder.center;
    const box = bare(new THREE.BoxGeometry(dx, dy, dz));
    return box.rotateZ(THREE.MathUtils.degToRad(occluder.yaw)).translate(x, y, z);
  }
  const { x, y, z0, z1, r } = occluder;
  // The library's capsule stands along y.
  const capsule = bare(new THREE.CapsuleGeometry(r, z1 - z0, over, around, 1));
  return capsule.rotateX(Math.PI / 2).translate(x, y, (z0 + z1) / 2);
}

function quadGeometry(corners: readonly number[]): THREE.BufferGeometry {
  const geometry = new THREE.BufferGeometry();
  geometry.setAttribute('position', new THREE.Float32BufferAttribute(corners, 3));
  geometry.setIndex([0, 1, 2, 0, 2, 3]);
  return geometry;
}

/** Positions only, so that all kinds can be merged. */
function bare(geometry: THREE.BufferGeometry): THREE.BufferGeometry {
  geometry.deleteAttribute('normal');
  geometry.deleteAttribute('uv');
  return geometry;
}
