import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roomFor } from '#model/arrange/room-for.ts';
import { placesOf, SHAPES, type Place } from '#model/arrange/shapes.ts';
import { facingTowards, type Vec2 } from '#model/geometry/frame.ts';
import { depthInPolygon } from '#model/geometry/polygon.ts';

const WIDTHS = [1200, 1200, 1100, 1150];
const at = (places: readonly Place[], index: number): Place => {
  const place = places[index];
  if (!place) throw new Error(`no place ${index}`);
  return place;
};
const apart = (a: Vec2, b: Vec2): number => Math.hypot(a.x - b.x, a.y - b.y);

describe('shapes', () => {
  const someone = fc.integer({ min: 900, max: 1800 });

  it('have a place for everybody, about the centre line, nobody within reach of his neighbour', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...SHAPES),
        fc.array(someone, { minLength: 1, maxLength: 12 }),
        fc.boolean(),
        (shape, widths, shared) => {
          const places = placesOf({ shape, widths, shared });
          expect(places).toHaveLength(widths.length);
          for (const [index, place] of places.entries())
            for (const other of places.slice(index + 1)) expect(apart(place, other)).toBeGreaterThan(650);
          for (const { y } of places) expect(y).toBeGreaterThan(-1e-6);
        },
      ),
    );
  });

  it('are the same from both sides when all want the same room', () => {
    for (const shape of SHAPES) {
      const places = placesOf({ shape, widths: [1000, 1000, 1000, 1000], shared: false });
      const mirrored = places.map(({ x, y, facing }) => ({ x: -x, y, facing: -facing }));
      for (const one of mirrored)
        expect(
          places.some((other) => apart(one, other) < 1e-6 && Math.abs(one.facing - other.facing) < 1e-6),
          shape,
        ).toBe(true);
    }
  });

  it('begin at stage right', () => {
    for (const shape of SHAPES) {
      const places = placesOf({ shape, widths: WIDTHS, shared: false });
      expect(at(places, 0).x, shape).toBeLessThan(at(places, 1).x);
    }
  });

  it('a row looks at the house, a horseshoe at its own middle, an arc in between', () => {
    expect(placesOf({ shape: 'row', widths: WIDTHS, shared: false }).map(({ facing }) => facing)).toEqual([
      0, 0, 0, 0,
    ]);
    const horseshoe = placesOf({ shape: 'horseshoe', widths: WIDTHS, shared: false });
    const arc = placesOf({ shape: 'arc', widths: WIDTHS, shared: false });
    // All four lines of sight of a horseshoe meet in one point.
    const [first, last] = [at(horseshoe, 0), at(horseshoe, 3)];
    expect(first.y).toBeCloseTo(last.y, 6);
    expect(Math.abs(first.page)).toBeGreaterThan(90);
    // Nobody turns his back on the house for it.
    expect(Math.abs(first.facing)).toBe(90);
    expect(at(arc, 0).facing).toBeGreaterThan(20);
    expect(at(arc, 0).facing).toBeLessThan(60);
  });

  it('a pair looks straight at each other, nearer over one stand than over two', () => {
    const own = placesOf({ shape: 'pairs', widths: WIDTHS, shared: false });
    expect(at(own, 0).facing).toBe(facingTowards(at(own, 0), at(own, 1)));
    expect(at(own, 1).facing).toBe(facingTowards(at(own, 1), at(own, 0)));
    const shared = placesOf({ shape: 'pairs', widths: WIDTHS, shared: true });
    expect(apart(at(shared, 0), at(shared, 1))).toBeLessThan(apart(at(own, 0), at(own, 1)));
  });
});

describe('room for a group', () => {
  const outline = [
    { x: -4000, y: 0 },
    { x: 4000, y: 0 },
    { x: 4000, y: 5000 },
    { x: -4000, y: 5000 },
  ];
  const group = [
    { x: -800, y: 0, radius: 400 },
    { x: 800, y: 0, radius: 400 },
  ];

  it('is on the centre line, as near to the house as the edge allows', () => {
    const shift = roomFor({ footprints: group, outline, taken: [], fromEdge: 600 });
    expect(shift).toEqual({ x: 0, y: 1000 });
  });

  it('is beside what stands there', () => {
    const taken = [{ x: 0, y: 1000 }];
    const shift = roomFor({ footprints: group, outline, taken, fromEdge: 600 });
    if (!shift) throw new Error('no room');
    for (const { x, y, radius } of group)
      expect(apart({ x: x + shift.x, y: y + shift.y }, { x: 0, y: 1000 })).toBeGreaterThanOrEqual(
        radius + 500,
      );
  });

  it('comes nearer to the edges when there is no other', () => {
    const narrow = outline.map(({ x, y }) => ({ x, y: Math.min(y, 900) }));
    const shift = roomFor({ footprints: group, outline: narrow, taken: [], fromEdge: 600 });
    if (!shift) throw new Error('no room');
    expect(depthInPolygon({ x: group[0]?.x ?? 0, y: shift.y }, narrow)).toBeGreaterThanOrEqual(400);
  });

  it('is not on a platform that is too small', () => {
    const small = outline.map(({ x, y }) => ({ x: x / 4, y }));
    expect(roomFor({ footprints: group, outline: small, taken: [], fromEdge: 600 })).toBeNull();
  });
});
