/** Planes of faces, cutting faces, and convex pieces of outlines. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { circle } from '#model/catalogue/shapes.ts';
import { grandOutline } from '#model/catalogue/pianos/case.ts';
import { cutFace, partBefore, sideOf, ACROSS, BEFORE, BEHIND, WITHIN } from '#model/drawing/view/clip.ts';
import { convexPieces } from '#model/drawing/view/convex-pieces.ts';
import { BARE, OUTLINE, type Face, type Ink } from '#model/drawing/view/face.ts';
import { planeOf, type Plane } from '#model/drawing/view/plane.ts';
import { polygonArea } from '#model/geometry/polygon.ts';
import { turn } from '#model/geometry/segments.ts';
import type { Vec2 } from '#model/geometry/frame.ts';

/** A face over a ring x, y, z, ... with all its edges drawn. */
function faceOver(corners: readonly number[], fill: string | null = '#808080'): Face {
  const plane = planeOf(corners) ?? { x: 0, y: 0, z: 1, d: 0 };
  const ink = Array.from({ length: corners.length / 3 }, (): Ink => OUTLINE);
  return {
    solid: 0,
    body: 0,
    plane,
    rings: [{ corners, ink: fill === null ? null : ink }],
    fill,
    stroke: null,
    layer: 0,
  };
}

const SQUARE = [0, 0, 0, 10, 0, 0, 10, 10, 0, 0, 10, 0];
const AT_X = (x: number): Plane => ({ x: 1, y: 0, z: 0, d: x });

describe('the plane of a ring', () => {
  test('looks to whoever sees the corners run anticlockwise', () => {
    expect(planeOf(SQUARE)).toMatchObject({ x: 0, y: 0, z: 1, d: 0 });
  });

  test('takes no harm from corners on one line, and there is none without an area', () => {
    expect(planeOf([0, 0, 5, 5, 0, 5, 10, 0, 5, 10, 10, 5])).toMatchObject({ x: 0, y: 0, z: 1, d: 5 });
    expect(planeOf([0, 0, 0, 1, 1, 1, 2, 2, 2])).toBeNull();
    expect(planeOf([])).toBeNull();
  });
});

describe('cutting', () => {
  const areaOf = (face: Face | null): number =>
    (face?.rings ?? []).reduce((sum, { corners }) => {
      const ring = Array.from({ length: corners.length / 3 }, (_, i) => ({
        x: corners[3 * i] ?? 0,
        y: corners[3 * i + 1] ?? 0,
      }));
      return sum + polygonArea(ring);
    }, 0);

  test('both parts make the whole', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 9.9, noNaN: true }),
        fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }),
        (through, angle) => {
          const [c, s] = [Math.cos(angle), Math.sin(angle)];
          const plane = { x: c, y: s, z: 0, d: c * through + s * through };
          const { before, behind } = cutFace(faceOver(SQUARE), plane);
          expect(areaOf(before) + areaOf(behind)).toBeCloseTo(100, 9);
        },
      ),
    );
  });

  test('the edge along the cut is not drawn, the others are', () => {
    const part = partBefore(faceOver(SQUARE), AT_X(4));
    const ring = part?.rings[0];
    expect(areaOf(part)).toBeCloseTo(60, 12);
    expect(ring?.ink?.filter((ink) => ink === BARE)).toHaveLength(1);
    const cut = ring?.ink?.indexOf(BARE) ?? -1;
    expect([ring?.corners[3 * cut], ring?.corners[(3 * cut + 3) % 12]]).toEqual([4, 4]);
  });

  test('what is not cut stays the same face, and what is behind goes', () => {
    const face = faceOver(SQUARE);
    expect(partBefore(face, AT_X(-1))).toBe(face);
    expect(partBefore(face, AT_X(11))).toBeNull();
    expect([AT_X(-1), AT_X(11), AT_X(5)].map((plane) => sideOf(face, plane))).toEqual([
      BEFORE,
      BEHIND,
      ACROSS,
    ]);
    expect(sideOf(face, { x: 0, y: 0, z: 1, d: 0.005 })).toBe(WITHIN);
  });

  test('a line that goes to and fro is cut into its pieces', () => {
    const zigzag = faceOver([0, 0, 0, 10, 1, 0, 0, 2, 0, 10, 3, 0], null);
    const part = partBefore(zigzag, AT_X(5));
    expect(part?.rings.map(({ corners }) => corners)).toEqual([
      [5, 0.5, 0, 10, 1, 0, 5, 1.5, 0],
      [5, 2.5, 0, 10, 3, 0],
    ]);
  });
});

describe('convex pieces', () => {
  const piecesOf = (outline: readonly Vec2[]) =>
    convexPieces(outline).map((piece) => piece.map((corner) => outline[corner] ?? { x: NaN, y: NaN }));

  function expectWhole(outline: readonly Vec2[]): void {
    const pieces = piecesOf(outline);
    const sum = pieces.reduce((area, piece) => area + polygonArea(piece), 0);
    expect(sum).toBeCloseTo(polygonArea(outline), 3);
    for (const piece of pieces) {
      piece.forEach((b, i) => {
        const [a, c] = [piece.at(i - 1), piece[(i + 1) % piece.length]];
        expect(a && c ? turn(a, b, c) : NaN).toBeGreaterThanOrEqual(-1e-6);
      });
    }
  }

  test('a convex outline is one piece', () => {
    expect(piecesOf(circle({ x: 3, y: 4 }, 100))).toHaveLength(1);
  });

  test('the case of a grand piano', () => expectWhole(grandOutline(2740, 1570)));

  test('stars with any rays', () => {
    const rays = fc.array(fc.double({ min: 50, max: 2000, noNaN: true }), { minLength: 3, maxLength: 14 });
    fc.assert(
      fc.property(rays, (lengths) => {
        const star = lengths.map((length, i) => {
          const angle = (2 * Math.PI * i) / lengths.length;
          return { x: length * Math.cos(angle), y: length * Math.sin(angle) };
        });
        expectWhole(star);
      }),
    );
  });
});
