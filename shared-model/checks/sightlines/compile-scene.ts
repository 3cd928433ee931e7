/** A scene as plain arrays of numbers, for the kernel. */

import { radians } from '../../geometry/frame.ts';
import { boundsOf } from '../../geometry/polygon.ts';
import type { BoxOccluder, CapsuleOccluder, Occluder, QuadOccluder, Scene } from '../scene.ts';
import { nestedQuads } from './nested-quads.ts';

export const QUAD = 0;
export const PRISM = 1;
export const CAPSULE = 2;

/** Numbers that describe one occluder; see the shadow functions in geometry/shadows for what they mean. */
export const SHAPE_STRIDE = 12;

export interface CompiledTarget {
  readonly x: number;
  readonly y: number;
  readonly z0: number;
  readonly z1: number;
  readonly width: number;
  /** The owner that does not hide it. */
  readonly owner: number;
}

export interface CompiledScene {
  readonly eyes: { readonly x: Float64Array; readonly y: Float64Array; readonly z: Float64Array };
  readonly targets: readonly CompiledTarget[];
  readonly occluders: CompiledOccluders;
}

export interface CompiledOccluders {
  readonly count: number;
  readonly kind: Uint8Array;
  readonly shape: Float64Array;
  /** A disc round it in plan. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly r: Float64Array;
  /** Number of the owner's id, the same for a target of that id; -1: nobody. */
  readonly owner: Int32Array;
  /** 1: another occluder of the same record hides all that it hides. */
  readonly nested: Uint8Array;
}

export function compileScene(scene: Scene): CompiledScene {
  const numbers = new Map<string, number>();
  const numberOf = (id: string): number => {
    const known = numbers.get(id) ?? numbers.size;
    numbers.set(id, known);
    return known;
  };
  const targets = scene.targets.map(({ id, x, y, z0, z1, width }) => ({
    x,
    y,
    z0,
    z1,
    width,
    owner: numberOf(id),
  }));
  return { eyes: compileEyes(scene), targets, occluders: compileOccluders(scene.occluders, numberOf) };
}

/** The same scene with other shapes for the occluders at `indices`; their owners are what they were. */
export function recompileShapes(
  { eyes, targets, occluders: before }: CompiledScene,
  { occluders: given }: Scene,
  indices: readonly number[],
): CompiledScene {
  const occluders: CompiledOccluders = {
    count: before.count,
    kind: before.kind.slice(),
    shape: before.shape.slice(),
    x: before.x.slice(),
    y: before.y.slice(),
    r: before.r.slice(),
    owner: before.owner,
    nested: before.nested.slice(),
  };
  const changed = indices.map((index) => given[index]).filter((occluder) => occluder !== undefined);
  const nested = nestedQuads(changed);
  changed.forEach((occluder, i) => {
    const index = indices[i] ?? -1;
    setShape(occluders, index, occluder);
    occluders.nested[index] = nested[i] ?? 0;
  });
  return { eyes, targets, occluders };
}

function compileEyes({ seats }: Scene): CompiledScene['eyes'] {
  const eyes = {
    x: new Float64Array(seats.length),
    y: new Float64Array(seats.length),
    z: new Float64Array(seats.length),
  };
  seats.forEach((seat, index) => {
    eyes.x[index] = seat.x;
    eyes.y[index] = seat.y;
    eyes.z[index] = seat.z;
  });
  return eyes;
}

function compileOccluders(given: readonly Occluder[], numberOf: (id: string) => number): CompiledOccluders {
  const count = given.length;
  const compiled = {
    count,
    kind: new Uint8Array(count),
    shape: new Float64Array(count * SHAPE_STRIDE),
    x: new Float64Array(count),
    y: new Float64Array(count),
    r: new Float64Array(count),
    owner: new Int32Array(count).fill(-1),
    nested: nestedQuads(given),
  };
  given.forEach((occluder, index) => {
    setShape(compiled, index, occluder);
    if (occluder.owner !== undefined) compiled.owner[index] = numberOf(occluder.owner);
  });
  return compiled;
}

function setShape(compiled: CompiledOccluders, index: number, occluder: Occluder): void {
  const { kind, shape, plan } = shapeOf(occluder);
  compiled.kind[index] = kind;
  compiled.shape.fill(0, index * SHAPE_STRIDE, (index + 1) * SHAPE_STRIDE);
  compiled.shape.set(shape, index * SHAPE_STRIDE);
  compiled.x[index] = plan.x;
  compiled.y[index] = plan.y;
  compiled.r[index] = plan.r;
}

interface Disc {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

interface CompiledShape {
  readonly kind: number;
  readonly shape: readonly number[];
  readonly plan: Disc;
}

function shapeOf(occluder: Occluder): CompiledShape {
  if (occluder.kind === 'quad') return quadShape(occluder);
  return occluder.kind === 'box' ? boxShape(occluder) : capsuleShape(occluder);
}

function quadShape({ corners }: QuadOccluder): CompiledShape {
  return { kind: QUAD, shape: corners.flat(), plan: discRound(corners) };
}

/** A box is an upright prism. A negative size is the same box. */
function boxShape({ center, size, yaw }: BoxOccluder): CompiledShape {
  const [x, y, z] = center;
  const [halfX, halfY, halfZ] = [size[0] / 2, size[1] / 2, Math.abs(size[2] / 2)];
  const [c, s] = [Math.cos(radians(yaw)), Math.sin(radians(yaw))];
  const corner = (dx: number, dy: number): [number, number] => [x + c * dx - s * dy, y + s * dx + c * dy];
  const foot = [corner(-halfX, -halfY), corner(halfX, -halfY), corner(halfX, halfY), corner(-halfX, halfY)];
  return { kind: PRISM, shape: [...foot.flat(), z - halfZ, z + halfZ], plan: discRound(foot) };
}

function capsuleShape({ x, y, z0, z1, r }: CapsuleOccluder): CompiledShape {
  return { kind: CAPSULE, shape: [x, y, Math.min(z0, z1), Math.max(z0, z1), r], plan: { x, y, r } };
}

function discRound(corners: readonly (readonly number[])[]): Disc {
  const spots = corners.map(([x = 0, y = 0]) => ({ x, y }));
  const { minX, minY, maxX, maxY } = boundsOf(spots);
  const middle = { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
  const farthest = spots.reduce((r, { x, y }) => Math.max(r, Math.hypot(x - middle.x, y - middle.y)), 0);
  // A hair more than it takes, so that rounding never puts a corner outside.
  return { ...middle, r: farthest * (1 + 1e-9) + 1e-6 };
}
