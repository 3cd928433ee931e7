/** Tilted boards in space: whether two of them run into each other, and what one takes up between two heights. */

import type { Rectangle3 } from '../../document/desks.ts';
import type { Vec3 } from '../../geometry/frame.ts';
import type { Polygon } from '../../geometry/polygon.ts';

/** A board with its paper is taken to be so thick. */
const THICKNESS = 2;

/** Whether two boards have room in common: two oriented boxes and the fifteen axes that could part them. */
export function boardsMeet(a: Rectangle3, b: Rectangle3): boolean {
  const [first, second] = [boxOf(a), boxOf(b)];
  const apart = minus(second.middle, first.middle);
  const crossings = first.axes.flatMap((p) => second.axes.map((q) => cross(p, q)));
  return [...first.axes, ...second.axes, ...crossings].every((axis) => {
    const length = Math.hypot(axis.x, axis.y, axis.z);
    // Parallel edges give no axis of their own.
    return length < 1e-9 || Math.abs(dot(apart, axis)) < extent(first, axis) + extent(second, axis);
  });
}

/** The plan outline of the part of a board between two heights; empty when there is none. */
export function planBetween(board: Rectangle3, low: number, high: number): Polygon {
  const aboveLow = cutAt(board, (corner) => corner.z - low);
  const between = cutAt(aboveLow, (corner) => high - corner.z);
  return between.map(({ x, y }) => ({ x, y }));
}

export function heightsOf(board: Rectangle3): { readonly low: number; readonly high: number } {
  // The lip and the upper edge are level.
  const [a, , c] = board;
  return { low: Math.min(a.z, c.z), high: Math.max(a.z, c.z) };
}

interface Box {
  readonly middle: Vec3;
  readonly axes: readonly [Vec3, Vec3, Vec3];
  /** Half the size along each axis. */
  readonly half: readonly [number, number, number];
}

function boxOf([a, b, c]: Rectangle3): Box {
  const [across, up] = [minus(b, a), minus(c, b)];
  const [width, height] = [norm(across), norm(up)];
  const [u, v] = [scaled(across, 1 / (width || 1)), scaled(up, 1 / (height || 1))];
  const middle = { x: (a.x + c.x) / 2, y: (a.y + c.y) / 2, z: (a.z + c.z) / 2 };
  return { middle, axes: [u, v, cross(u, v)], half: [width / 2, height / 2, THICKNESS / 2] };
}

function extent({ axes, half }: Box, axis: Vec3): number {
  return (
    half[0] * Math.abs(dot(axes[0], axis)) +
    half[1] * Math.abs(dot(axes[1], axis)) +
    half[2] * Math.abs(dot(axes[2], axis))
  );
}

/** The part of a convex polygon on the side where `depth` is not negative. */
function cutAt(corners: readonly Vec3[], depth: (corner: Vec3) => number): Vec3[] {
  return corners.flatMap((corner, index) => {
    const next = corners[(index + 1) % corners.length] ?? corner;
    const [here, there] = [depth(corner), depth(next)];
    const kept = here >= 0 ? [corner] : [];
    if (here >= 0 === there >= 0) return kept;
    const share = here / (here - there);
    return [...kept, plus(corner, scaled(minus(next, corner), share))];
  });
}

const minus = (a: Vec3, b: Vec3): Vec3 => ({ x: a.x - b.x, y: a.y - b.y, z: a.z - b.z });
const plus = (a: Vec3, b: Vec3): Vec3 => ({ x: a.x + b.x, y: a.y + b.y, z: a.z + b.z });
const scaled = (a: Vec3, by: number): Vec3 => ({ x: a.x * by, y: a.y * by, z: a.z * by });
const dot = (a: Vec3, b: Vec3): number => a.x * b.x + a.y * b.y + a.z * b.z;
const norm = (a: Vec3): number => Math.hypot(a.x, a.y, a.z);
const cross = (a: Vec3, b: Vec3): Vec3 => ({
  x: a.y * b.z - a.z * b.y,
  y: a.z * b.x - a.x * b.z,
  z: a.x * b.y - a.y * b.x,
});
