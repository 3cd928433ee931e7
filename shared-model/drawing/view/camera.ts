/**
 * Central projection on a plane, the pinhole camera of the textbooks: with the eye as origin, X to the right, Y up and
 * Z along the view, a point comes to (f X / Z, f Y / Z). (Hartley and Zisserman, Multiple View Geometry, 2nd edition,
 * section 6.1, from memory.) Here f is in mm of paper, and paper counts y downwards.
 */

import { facingVector, radians, type Vec2, type Vec3 } from '../../geometry/frame.ts';
import type { Plane } from './plane.ts';
import { dot, scaled, sum, unit } from './vectors.ts';
import type { View } from './view.ts';

export interface Camera {
  readonly eye: Vec3;
  /** Unit vectors, square to each other: along the view, to its right (level), and up in the picture. */
  readonly ahead: Vec3;
  readonly right: Vec3;
  readonly up: Vec3;
  /** Mm of paper for a tangent of one. */
  readonly focal: number;
  /** Where the middle of the view lies on the paper. */
  readonly middle: Vec2;
  readonly width: number;
  readonly height: number;
}

/** The view on paper of a size in mm: its field whole and as large as it fits, with more round it where paper is left. */
export function cameraOf({ eye, facing, pitch, field }: View, width: number, height: number): Camera {
  const level = facingVector(facing);
  const [c, s] = [Math.cos(radians(pitch)), Math.sin(radians(pitch))];
  const focal = Math.min(width / (field.right - field.left), height / (field.top - field.bottom));
  return {
    eye,
    ahead: { x: level.x * c, y: level.y * c, z: -s },
    right: { x: level.y, y: -level.x, z: 0 },
    up: { x: level.x * s, y: level.y * s, z: c },
    focal,
    middle: {
      x: width / 2 - (focal * (field.left + field.right)) / 2,
      y: height / 2 + (focal * (field.bottom + field.top)) / 2,
    },
    width,
    height,
  };
}

/** How far before the eye a point lies, along the view: what it is divided by. */
export function depthOf({ eye, ahead }: Camera, { x, y, z }: Vec3): number {
  return (x - eye.x) * ahead.x + (y - eye.y) * ahead.y + (z - eye.z) * ahead.z;
}

/** Where a point before the eye comes to lie on the paper, mm. */
export function project(camera: Camera, point: Vec3): Vec2 {
  const { eye, right, up, focal, middle } = camera;
  const shrunk = focal / depthOf(camera, point);
  const [x, y, z] = [point.x - eye.x, point.y - eye.y, point.z - eye.z];
  return {
    x: middle.x + (x * right.x + y * right.y + z * right.z) * shrunk,
    y: middle.y - (x * up.x + y * up.y + z * up.z) * shrunk,
  };
}

/** Mm of paper for a millimetre that lies square to the view at this point; 0 beside and behind the eye. */
export function scaleAt(camera: Camera, point: Vec3): number {
  const depth = depthOf(camera, point);
  return depth > NEAR ? camera.focal / depth : 0;
}

/** Where the level of the eyes lies on the paper: the same height all across, for the camera is never rolled. */
export function horizonOf({ focal, middle, ahead, up }: Camera): number {
  return middle.y + (focal * ahead.z) / up.z;
}

/** Nothing nearer than this is drawn: what is so near is out of focus, and a pinhole would blow it up without end. */
const NEAR = 60;

/** Outlines are cut off this far outside the paper, so that no cut shows. */
const BLEED = 4;

/** The five planes that what can be seen lies before: near, left, right, below, above. */
export function frustumOf(camera: Camera): Plane[] {
  const { eye, ahead, right, up, focal, middle, width, height } = camera;
  const through = (arrow: Vec3): Plane => {
    const normal = unit(arrow);
    return { ...normal, d: dot(normal, eye) };
  };
  const near = { ...ahead, d: dot(ahead, eye) + NEAR };
  const left = (-BLEED - middle.x) / focal;
  const end = (width + BLEED - middle.x) / focal;
  const top = (middle.y + BLEED) / focal;
  const bottom = (middle.y - height - BLEED) / focal;
  return [
    near,
    through(sum(right, scaled(ahead, -left))),
    through(sum(scaled(right, -1), scaled(ahead, end))),
    through(sum(up, scaled(ahead, -bottom))),
    through(sum(scaled(up, -1), scaled(ahead, top))),
  ];
}
