/** What of a solid is seen, and which of its edges are drawn. */

import { describe, expect, test } from 'vitest';
import { rectangle } from '#model/catalogue/shapes.ts';
import { CREASE, OUTLINE, type Face } from '#model/drawing/view/face.ts';
import { limb, prism, sheet, type Part, type Place } from '#model/drawing/view/mesh.ts';
import { heightOver } from '#model/drawing/view/plane.ts';
import { difference, dot, lengthOf } from '#model/drawing/view/vectors.ts';
import { seenFaces } from '#model/drawing/view/seen-faces.ts';
import type { Vec3 } from '#model/geometry/frame.ts';

const HERE: Place = (x, y, z) => ({ x, y, z });
const EYE: Vec3 = { x: 3000, y: -5000, z: 2500 };

function seen(part: Part, eye = EYE): Face[] {
  let bodies = 0;
  const light = { towards: { x: 0, y: 0, z: 1 }, shadow: '#000000' };
  return seenFaces({ subject: 'thing', parts: [part] }, 0, { eye, light, nextBody: () => bodies++ });
}

const edges = (faces: readonly Face[], ink: number): number =>
  faces.flatMap(({ rings }) => rings.flatMap((ring) => ring.ink ?? [])).filter((edge) => edge === ink).length;

const COLOURS = { top: '#ffffff', side: '#c0c0c0', bottom: '#808080' };
const CUBE = prism(rectangle(1000, 1000), [0, 1000], HERE, COLOURS);

describe('a cube', () => {
  test('from over a corner shows three faces, six edges of its outline and three creases', () => {
    const faces = seen(CUBE);
    expect(faces).toHaveLength(3);
    expect(edges(faces, OUTLINE)).toBe(6);
    // Each crease is an edge of both its faces.
    expect(edges(faces, CREASE)).toBe(6);
    for (const { plane } of faces) expect(heightOver(plane, EYE)).toBeGreaterThan(0);
  });

  test('from straight before it shows one face', () => {
    expect(seen(CUBE, { x: 0, y: -5000, z: 500 })).toHaveLength(1);
  });

  test('from below shows its underside, if it has one', () => {
    const below = { x: 0, y: 0, z: -3000 };
    expect(seen(CUBE, below)).toHaveLength(1);
    expect(
      seen(prism(rectangle(1000, 1000), [0, 1000], HERE, { top: '#ffffff', side: '#ffffff' }), below),
    ).toEqual([]);
  });

  test('its faces are one body, for they never hide one another', () => {
    expect(new Set(seen(CUBE).map(({ body }) => body)).size).toBe(1);
  });
});

test('an outline with a dent is no single body: its walls may hide one another', () => {
  const dented = prism(
    [
      { x: -500, y: -500 },
      { x: 500, y: -500 },
      { x: 500, y: 500 },
      { x: 0, y: 0 },
      { x: -500, y: 500 },
    ],
    [0, 800],
    HERE,
    COLOURS,
  );
  const faces = seen(dented);
  expect(new Set(faces.map(({ body }) => body)).size).toBe(faces.length);
});

test('a sheet shows the colour and the marks of the side it is seen from', () => {
  const corners = [HERE(-100, 0, 0), HERE(100, 0, 0), HERE(100, 0, 300), HERE(-100, 0, 300)];
  const marks = [{ rings: [[HERE(-50, 0, 50), HERE(50, 0, 50)]], stroke: { colour: '#000000', width: 0.1 } }];
  const page = sheet(corners, { fill: '#ffffff', back: '#404040', marks });
  const [front, lines] = seen(page, { x: 0, y: -2000, z: 100 });
  expect(lines?.fill).toBeNull();
  const behind = seen(page, { x: 0, y: 2000, z: 100 });
  expect(behind).toHaveLength(1);
  expect(behind[0]?.fill).not.toBe(front?.fill);
  expect(edges(behind, OUTLINE)).toBe(4);
});

test('a ball is seen as its rim: where lines from the eye touch it', () => {
  const [centre, eye] = [HERE(200, 0, 1500), HERE(0, -4000, 1700)];
  const [rim] = seen(limb(centre, centre, 100, '#ffffff'), eye);
  const corners = pointsOf(rim);
  expect(corners.length).toBeGreaterThan(10);
  const touching = Math.asin(100 / lengthOf(difference(centre, eye)));
  // The corners lie a little outside, so that the polygon has the circle's area: 0.6 % for 24 corners.
  for (const corner of corners) expect(angleBetween(corner, centre, eye) / touching).toBeCloseTo(1.006, 3);
});

test('a thick limb that points at the eye is seen round and whole', () => {
  const [near, far, eye] = [HERE(0, -400, 500), HERE(0, 0, 500), HERE(0, -4000, 500)];
  const [outline] = seen(limb(near, far, 80, '#ffffff'), eye);
  const touching = Math.asin(80 / 3600);
  const angles = pointsOf(outline).map((corner) => angleBetween(corner, near, eye));
  expect(Math.max(...angles) / touching).toBeCloseTo(1.006, 3);
  expect(Math.min(...angles) / touching).toBeGreaterThan(0.97);
});

test('an eye in a limb sees nothing of it', () => {
  expect(seen(limb(HERE(0, 0, 0), HERE(0, 0, 500), 80, '#ffffff'), HERE(0, 10, 20))).toEqual([]);
  expect(seen(limb(HERE(0, 0, 0), HERE(0, 0, 500), 80, '#ffffff'), HERE(0, 0, 250))).toEqual([]);
});

function pointsOf(face: Face | undefined): Vec3[] {
  const numbers = face?.rings[0]?.corners ?? [];
  return Array.from({ length: numbers.length / 3 }, (_, i) =>
    HERE(numbers[3 * i] ?? NaN, numbers[3 * i + 1] ?? NaN, numbers[3 * i + 2] ?? NaN),
  );
}

function angleBetween(a: Vec3, b: Vec3, eye: Vec3): number {
  const [u, v] = [difference(a, eye), difference(b, eye)];
  return Math.acos(dot(u, v) / (lengthOf(u) * lengthOf(v)));
}
