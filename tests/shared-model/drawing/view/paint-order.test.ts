/**
 * The painting order against brute force: along random lines from the eye, the face painted last is the one that the
 * line meets first, worked out from the uncut faces one by one (line and plane, then inside the polygon).
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Face } from '#model/drawing/view/face.ts';
import { paintOrderOfSolids } from '#model/drawing/view/lumps.ts';
import { paintOrder } from '#model/drawing/view/paint-order.ts';
import { heightOver, planeOf } from '#model/drawing/view/plane.ts';
import type { Vec3 } from '#model/geometry/frame.ts';
import { diceOf, type Dice } from '../../../oracles/seeded.ts';

const EYE: Vec3 = { x: 0, y: -8000, z: 1200 };

/** A face that looks to the eye, numbered in `body`. */
function faceOf(corners: readonly number[], { solid = 0, body = 0 } = {}): Face | null {
  const plane = planeOf(corners);
  if (!plane || Math.abs(heightOver(plane, EYE)) < 1) return null;
  const turned = heightOver(plane, EYE) < 0;
  const ring = turned ? reversed(corners) : corners;
  const seen = planeOf(ring);
  return (
    seen && {
      solid,
      body,
      plane: seen,
      rings: [{ corners: ring, ink: null }],
      fill: '#000000',
      stroke: null,
      layer: 0,
    }
  );
}

function reversed(corners: readonly number[]): number[] {
  return Array.from({ length: corners.length / 3 }, (_, i) =>
    corners.slice(-3 * i - 3, corners.length - 3 * i),
  ).flat();
}

/** A regular polygon of 3 to 7 corners, tilted any way; now and then upright or level, as on a stage. */
function randomCorners(dice: Dice): number[] {
  const middle = { x: dice.between(-2500, 2500), y: dice.between(-2500, 2500), z: dice.between(0, 2500) };
  const bearing = dice.between(0, 2 * Math.PI);
  const tilt = dice.pick([0, Math.PI / 2, dice.between(0, Math.PI)]);
  const u = { x: Math.cos(bearing), y: Math.sin(bearing), z: 0 };
  const v = { x: -u.y * Math.cos(tilt), y: u.x * Math.cos(tilt), z: Math.sin(tilt) };
  const [count, radius] = [dice.whole(3, 7), dice.between(100, 1500)];
  return Array.from({ length: count }, (_, i) => {
    const angle = (2 * Math.PI * i) / count;
    const [c, s] = [radius * Math.cos(angle), radius * Math.sin(angle)];
    return [middle.x + c * u.x + s * v.x, middle.y + c * u.y + s * v.y, middle.z + c * u.z + s * v.z];
  }).flat();
}

interface Hit {
  readonly body: number;
  readonly distance: number;
  /** How far inside the polygon, mm; negative outside. */
  readonly inside: number;
}

/** Where a line from the eye meets a face's plane. */
function meet({ plane, rings, body }: Face, towards: Vec3): Hit | null {
  const steep = plane.x * towards.x + plane.y * towards.y + plane.z * towards.z;
  const distance = -heightOver(plane, EYE) / steep;
  if (!(distance > 0)) return null;
  const at = {
    x: EYE.x + distance * towards.x,
    y: EYE.y + distance * towards.y,
    z: EYE.z + distance * towards.z,
  };
  return { body, distance, inside: depthInside(rings[0]?.corners ?? [], plane, at) };
}

/** Distance to the nearest edge of a convex ring that runs anticlockwise seen against its normal. */
function depthInside(corners: readonly number[], normal: Vec3, at: Vec3): number {
  let least = Infinity;
  const corner = (i: number) => {
    const k = (3 * i) % corners.length;
    return { x: corners[k] ?? 0, y: corners[k + 1] ?? 0, z: corners[k + 2] ?? 0 };
  };
  for (let i = 0; i < corners.length / 3; i++) {
    const [a, b] = [corner(i), corner(i + 1)];
    const [ex, ey, ez] = [b.x - a.x, b.y - a.y, b.z - a.z];
    const length = Math.hypot(ex, ey, ez);
    if (length < 1e-9) continue;
    // Inwards: normal x edge.
    const [ix, iy, iz] = [
      normal.y * ez - normal.z * ey,
      normal.z * ex - normal.x * ez,
      normal.x * ey - normal.y * ex,
    ];
    least = Math.min(least, ((at.x - a.x) * ix + (at.y - a.y) * iy + (at.z - a.z) * iz) / length);
  }
  return least;
}

/** What is nearer than this to an edge, or to another face, is left to chance. */
const UNSURE = 0.2;

/** The body that a line meets first; null: none, undefined: too close to call. */
function nearestBody(faces: readonly Face[], towards: Vec3): number | null | undefined {
  const hits = faces.flatMap((face) => meet(face, towards) ?? []).filter(({ inside }) => inside > -UNSURE);
  hits.sort((a, b) => a.distance - b.distance);
  const [first, second] = hits;
  if (hits.some(({ inside }) => Math.abs(inside) < UNSURE)) return undefined;
  if (!first) return null;
  return second && second.distance - first.distance < UNSURE ? undefined : first.body;
}

function lastPainted(painted: readonly Face[], towards: Vec3): number | null {
  const last = painted.findLast((face) => (meet(face, towards)?.inside ?? -1) > 0);
  return last ? last.body : null;
}

function countDisagreements(
  faces: readonly Face[],
  painted: readonly Face[],
  dice: Dice,
): { asked: number; wrong: number } {
  let [asked, wrong] = [0, 0];
  for (let ray = 0; ray < 60; ray++) {
    const towards = { x: dice.between(-0.45, 0.45), y: 1, z: dice.between(-0.25, 0.3) };
    const nearest = nearestBody(faces, towards);
    if (nearest === undefined) continue;
    asked++;
    if (lastPainted(painted, towards) !== nearest) wrong++;
  }
  return { asked, wrong };
}

const seeds = fc.integer({ min: 1, max: 1_000_000 });

describe('the face painted last is the nearest one', () => {
  test('random polygons that pass through one another', () => {
    let asked = 0;
    fc.assert(
      fc.property(seeds, fc.integer({ min: 2, max: 40 }), (seed, count) => {
        const dice = diceOf(seed);
        const faces = Array.from({ length: count }, (_, body) =>
          faceOf(randomCorners(dice), { body }),
        ).filter((face) => face !== null);
        const result = countDisagreements(faces, paintOrder(faces, EYE), dice);
        asked += result.asked;
        expect(result.wrong).toBe(0);
      }),
      { numRuns: 150 },
    );
    expect(asked).toBeGreaterThan(4000);
  });

  test('random boxes, sorted as solids first', () => {
    fc.assert(
      fc.property(seeds, fc.integer({ min: 2, max: 25 }), (seed, count) => {
        const dice = diceOf(seed);
        const faces = Array.from({ length: count }, (_, solid) => boxFaces(dice, solid)).flat();
        expect(countDisagreements(faces, paintOrderOfSolids(faces, EYE), dice).wrong).toBe(0);
      }),
      { numRuns: 150 },
    );
  });

  test('three boards in a ring, each before the next: no order without a cut', () => {
    // Seen from the eye: a triangle of overlapping boards, one end of each nearer than the other.
    const board = (turn: number, body: number): Face | null => {
      const [c, s] = [Math.cos(turn), Math.sin(turn)];
      const at = (along: number, across: number): number[] => [
        c * along - s * (across + 500),
        along * 0.4,
        1200 + s * along + c * (across + 500),
      ];
      return faceOf([at(-1200, -150), at(1200, -150), at(1200, 150), at(-1200, 150)].flat(), { body });
    };
    const faces = [0, 1, 2].map((i) => board((2 * Math.PI * i) / 3, i)).filter((face) => face !== null);
    const painted = paintOrder(faces, EYE);
    expect(faces).toHaveLength(3);
    expect(painted.length).toBeGreaterThan(3);
    expect(countDisagreements(faces, painted, diceOf(7)).wrong).toBe(0);
  });
});

/** The faces of a box that look to the eye; two boxes may pass through one another. */
function boxFaces(dice: Dice, solid: number): Face[] {
  const [x, y, z] = [dice.between(-2500, 2500), dice.between(-2500, 2500), dice.between(0, 1500)];
  const [w, d, h] = [dice.between(50, 900), dice.between(50, 900), dice.between(50, 900)];
  const yaw = dice.between(0, Math.PI);
  const corner = (dx: number, dy: number, dz: number): number[] => [
    x + Math.cos(yaw) * dx * w - Math.sin(yaw) * dy * d,
    y + Math.sin(yaw) * dx * w + Math.cos(yaw) * dy * d,
    z + dz * h,
  ];
  const sides: (readonly (readonly [number, number, number])[])[] = [
    [
      [-1, -1, -1],
      [1, -1, -1],
      [1, -1, 1],
      [-1, -1, 1],
    ],
    [
      [1, -1, -1],
      [1, 1, -1],
      [1, 1, 1],
      [1, -1, 1],
    ],
    [
      [1, 1, -1],
      [-1, 1, -1],
      [-1, 1, 1],
      [1, 1, 1],
    ],
    [
      [-1, 1, -1],
      [-1, -1, -1],
      [-1, -1, 1],
      [-1, 1, 1],
    ],
    [
      [-1, -1, 1],
      [1, -1, 1],
      [1, 1, 1],
      [-1, 1, 1],
    ],
    [
      [-1, 1, -1],
      [1, 1, -1],
      [1, -1, -1],
      [-1, -1, -1],
    ],
  ];
  return sides.flatMap((side) => {
    const corners = side.flatMap(([dx, dy, dz]) => corner(dx, dy, dz));
    const plane = planeOf(corners);
    if (!plane || heightOver(plane, EYE) < 1) return [];
    const rings = [{ corners, ink: null }];
    return [{ solid, body: solid, plane, rings, fill: '#000000', stroke: null, layer: 0 }];
  });
}

test('faces in one plane keep the order in which they are given', () => {
  const square = (size: number, body: number): Face | null =>
    faceOf([-size, 0, 1000, size, 0, 1000, size, 0, 1000 + size, -size, 0, 1000 + size], { body });
  const faces = [square(1000, 0), square(500, 1), square(200, 2)].filter((face) => face !== null);
  expect(paintOrder(faces, EYE).map(({ body }) => body)).toEqual([0, 1, 2]);
});

test('a plane between solids cuts none of them', () => {
  const dice = diceOf(11);
  const faces = Array.from({ length: 40 }, (_, solid) => boxFaces(dice, solid)).flat();
  const apart = faces.map((face) => ({
    ...face,
    rings: face.rings.map(({ corners, ink }) => ({
      corners: corners.map((value, i) => (i % 3 === 0 ? value + face.solid * 9000 : value)),
      ink,
    })),
  }));
  const moved = apart.map((face) => ({
    ...face,
    plane: planeOf(face.rings[0]?.corners ?? []) ?? face.plane,
  }));
  expect(paintOrderOfSolids(moved, EYE)).toHaveLength(moved.length);
});
