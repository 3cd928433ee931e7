import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chain, mapPath, mapPoint, shift, turnAbout } from '#model/drawing/affine.ts';
import { bounds } from '#model/drawing/bounds.ts';
import {
  arc,
  circle,
  ellipse,
  hatching,
  line,
  polygon,
  rectangle,
  roundedRectangle,
  slice,
} from '#model/drawing/outline.ts';
import type { PathItem } from '#model/drawing/primitives.ts';
import { polygonArea } from '#model/geometry/polygon.ts';

/** Corners of a path, cubics cut into many chords. */
function flattened(path: readonly PathItem[], steps = 64): { x: number; y: number }[] {
  const points: { x: number; y: number }[] = [];
  let [px, py] = [0, 0];
  for (const item of path) {
    if (item[0] === 'Z') continue;
    if (item[0] === 'C') {
      const [, x1, y1, x2, y2, x, y] = item;
      for (let step = 1; step <= steps; step++) {
        const t = step / steps;
        const u = 1 - t;
        const mix = (a: number, b: number, c: number, d: number) =>
          u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * d;
        points.push({ x: mix(px, x1, x2, x), y: mix(py, y1, y2, y) });
      }
      [px, py] = [x, y];
    } else {
      [px, py] = [item[1], item[2]];
      points.push({ x: px, y: py });
    }
  }
  return points;
}

const NO_TEXT = () => 0;

describe('round outlines', () => {
  it('stay within 0.03 % of the radius of a true circle', () => {
    // Four cubics with the usual handles are off by at most 0.000273 of the radius (from memory).
    for (const { x, y } of flattened(circle({ x: 3, y: -2 }, 10))) {
      expect(Math.hypot(x - 3, y + 2)).toBeGreaterThan(10 * 0.9999);
      expect(Math.hypot(x - 3, y + 2)).toBeLessThan(10 * 1.0003);
    }
  });

  it('have the area of the formulas', () => {
    expect(polygonArea(flattened(ellipse({ x: 0, y: 0 }, 4, 2)))).toBeCloseTo(Math.PI * 8, 1);
    expect(polygonArea(flattened(slice({ x: 0, y: 0 }, 2, -90, 180)))).toBeCloseTo(0.75 * Math.PI * 4, 2);
    const box = { x: 1, y: 1, width: 10, height: 6 };
    expect(polygonArea(flattened(roundedRectangle(box, 2)))).toBeCloseTo(60 - (4 - Math.PI) * 4, 2);
  });

  it('of a slice keep to its quarter of the page', () => {
    const points = flattened(arc({ x: 0, y: 0 }, 1, 0, 90));
    for (const { x, y } of points) expect(Math.min(x, y)).toBeGreaterThan(-1e-9);
  });
});

describe('maps', () => {
  const angle = fc.double({ min: -360, max: 360, noNaN: true });
  const coordinate = fc.double({ min: -1000, max: 1000, noNaN: true });

  it('turn and turn back', () => {
    fc.assert(
      fc.property(angle, coordinate, coordinate, (degrees, x, y) => {
        const there = chain(turnAbout(degrees, { x: 5, y: 7 }), shift(x, y));
        const back = chain(shift(-x, -y), turnAbout(-degrees, { x: 5, y: 7 }));
        const point = mapPoint(chain(there, back), { x, y });
        expect(point.x).toBeCloseTo(x, 6);
        expect(point.y).toBeCloseTo(y, 6);
      }),
    );
  });

  it('keep the area of what is turned and shifted', () => {
    const shape = roundedRectangle({ x: 0, y: 0, width: 8, height: 3 }, 1);
    const map = chain(turnAbout(33), shift(100, -40));
    expect(polygonArea(flattened(mapPath(map, shape)))).toBeCloseTo(polygonArea(flattened(shape)), 8);
  });
});

describe('bounds', () => {
  it('of a curve are those of the curve, not of its handles', () => {
    const box = bounds([{ kind: 'path', path: circle({ x: 10, y: 20 }, 5), fill: '#000000' }], NO_TEXT);
    expect(box?.x).toBeCloseTo(5, 2);
    expect(box?.y).toBeCloseTo(15, 2);
    expect(box?.width).toBeCloseTo(10, 2);
    expect(box?.height).toBeCloseTo(10, 2);
  });

  it('take in half the line, and a text turned upright', () => {
    const stroked = bounds(
      [
        {
          kind: 'path',
          path: line({ x: 0, y: 0 }, { x: 10, y: 0 }),
          stroke: { colour: '#000000', width: 2 },
        },
      ],
      NO_TEXT,
    );
    expect(stroked).toEqual({ x: -1, y: -1, width: 12, height: 2 });
    const text = {
      kind: 'text',
      text: 'abc',
      x: 0,
      y: 0,
      size: 10,
      weight: 'regular',
      anchor: 'start',
      colour: '#000000',
      turn: 90,
    } as const;
    const turned = bounds([text], () => 30);
    expect(turned?.height).toBeCloseTo(30, 9);
    expect(turned?.width).toBeCloseTo(10.4, 9);
  });

  it('of a clipped group end at the clip, and of nothing are null', () => {
    const child = {
      kind: 'path',
      path: rectangle({ x: 0, y: 0, width: 100, height: 100 }),
      fill: '#000000',
    } as const;
    const clip = { x: 10, y: 10, width: 20, height: 30 };
    expect(bounds([{ kind: 'group', children: [child], clip }], NO_TEXT)).toEqual(clip);
    expect(bounds([], NO_TEXT)).toBeNull();
  });

  it('hold every point of a random cubic', () => {
    const number = fc.double({ min: -50, max: 50, noNaN: true });
    fc.assert(
      fc.property(fc.array(number, { minLength: 8, maxLength: 8 }), (n) => {
        const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = n;
        const path: PathItem[] = [
          ['M', a, b],
          ['C', c, d, e, f, g, h],
        ];
        const box = bounds([{ kind: 'path', path, fill: '#000000' }], NO_TEXT);
        for (const { x, y } of flattened(path)) {
          expect(x).toBeGreaterThanOrEqual((box?.x ?? 0) - 1e-9);
          expect(x).toBeLessThanOrEqual((box?.x ?? 0) + (box?.width ?? 0) + 1e-9);
          expect(y).toBeGreaterThanOrEqual((box?.y ?? 0) - 1e-9);
          expect(y).toBeLessThanOrEqual((box?.y ?? 0) + (box?.height ?? 0) + 1e-9);
        }
      }),
    );
  });
});

describe('hatching', () => {
  it('keeps inside a polygon that is not convex', () => {
    const notched = [
      { x: 0, y: 0 },
      { x: 10, y: 0 },
      { x: 10, y: 10 },
      { x: 5, y: 2 },
      { x: 0, y: 10 },
    ];
    const path = hatching(notched, 1, 0);
    expect(path.length).toBeGreaterThan(10);
    // Above the notch every level is cut in two: the stretches leave the notch free.
    for (let index = 0; index < path.length; index += 2) {
      const [from, to] = [path[index], path[index + 1]];
      if (from?.[0] !== 'M' || to?.[0] !== 'L') throw new Error('hatching is pairs of points');
      const middle = (from[1] + to[1]) / 2;
      if (from[2] > 3) expect(Math.abs(middle - 5)).toBeGreaterThan(0.5);
    }
    expect(polygon(notched)).toHaveLength(6);
  });
});
