/** Just enough of space to fold paper in: vectors and rigid motions. */

export type Vector = readonly [number, number, number];

export const add = (a: Vector, b: Vector): Vector => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const scale = (a: Vector, by: number): Vector => [a[0] * by, a[1] * by, a[2] * by];
export const minus = (a: Vector, b: Vector): Vector => add(a, scale(b, -1));
export const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const distance = (a: Vector, b: Vector): number => Math.hypot(...minus(a, b));

/** A rigid motion: where the three axes and the origin go. */
export interface Pose {
  readonly x: Vector;
  readonly y: Vector;
  readonly z: Vector;
  readonly origin: Vector;
}

export const direction = ({ x, y, z }: Pose, [a, b, c]: Vector): Vector =>
  add(add(scale(x, a), scale(y, b)), scale(z, c));

export const place = (pose: Pose, at: Vector): Vector => add(pose.origin, direction(pose, at));

/** The pose after turning everything about a line through `through` (Rodrigues' formula). */
export function turned(pose: Pose, through: Vector, axis: Vector, angle: number): Pose {
  const spin = (v: Vector): Vector =>
    add(
      add(scale(v, Math.cos(angle)), scale(cross(axis, v), Math.sin(angle))),
      scale(axis, dot(axis, v) * (1 - Math.cos(angle))),
    );
  return {
    x: spin(pose.x),
    y: spin(pose.y),
    z: spin(pose.z),
    origin: add(through, spin(minus(pose.origin, through))),
  };
}

export type Point = readonly [number, number];
export type Segment = readonly [Point, Point];

const side = ([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point): number =>
  (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);

/** Whether two segments cross in their inside. */
export function crosses([a, b]: Segment, [c, d]: Segment): boolean {
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}
