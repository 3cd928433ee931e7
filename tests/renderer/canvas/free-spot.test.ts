/** Where things go that are set down without pointing. */

import fc from 'fast-check';
import { depthInPolygon } from '#model/geometry/polygon.ts';
import { describe, expect, it } from 'vitest';
import { freeSpot, wayForCopies } from '../../../renderer/canvas/free-spot.ts';

const PLATFORM = [
  { x: -3000, y: 0 },
  { x: 3000, y: 0 },
  { x: 3000, y: 4000 },
  { x: -3000, y: 4000 },
];
const apart = (a: { x: number; y: number }, b: { x: number; y: number }): number =>
  Math.hypot(a.x - b.x, a.y - b.y);

it('is where it was wanted when nothing is there', () => {
  expect(freeSpot({ x: 100, y: 1500 }, [{ x: 1200, y: 1500 }], PLATFORM)).toEqual({ x: 100, y: 1500 });
});

it('is beside what stands there, one after the other, on the platform', () => {
  const there: { x: number; y: number }[] = [];
  for (let i = 0; i < 12; i++) {
    const spot = freeSpot({ x: 2400, y: 800 }, there, PLATFORM);
    for (const other of there) expect(apart(spot, other)).toBeGreaterThanOrEqual(900);
    expect(Math.abs(spot.x)).toBeLessThan(3000);
    expect(spot.y).toBeGreaterThan(0);
    there.push(spot);
  }
});

it('is where it was wanted when the platform is full', () => {
  const full = Array.from({ length: 400 }, (_, i) => ({
    x: -3000 + (i % 20) * 300,
    y: Math.floor(i / 20) * 200,
  }));
  expect(freeSpot({ x: 0, y: 2000 }, full, PLATFORM)).toEqual({ x: 0, y: 2000 });
});

describe('copies', () => {
  const added = (spot: { x: number; y: number }, way: { x: number; y: number }) => ({
    x: spot.x + way.x,
    y: spot.y + way.y,
  });
  const spot = fc.record({
    x: fc.integer({ min: -2900, max: 2900 }),
    y: fc.integer({ min: 100, max: 3900 }),
  });
  const spots = (most: number) => fc.array(spot, { maxLength: most });
  const reach = fc.integer({ min: -900, max: 900 });
  const near = fc.array(fc.record({ x: reach, y: reach }), { maxLength: 3 });
  const isOn = (at: { x: number; y: number }): boolean => depthInPolygon(at, PLATFORM) > 0;

  it('of what stands on the platform stand on it, wherever that is and however full it is', () => {
    fc.assert(
      fc.property(spot, near, spots(40), (first, further, others) => {
        const originals = [first, ...further.map((by) => added(first, by)).filter(isOn)];
        const way = wayForCopies(originals, [...originals, ...others], PLATFORM);
        const nearest = Math.min(...originals.map((spot) => depthInPolygon(spot, PLATFORM)), 300);
        for (const spot of originals)
          expect(depthInPolygon(added(spot, way), PLATFORM)).toBeGreaterThanOrEqual(nearest);
        for (const spot of originals)
          for (const other of originals) expect(apart(added(spot, way), other)).toBeGreaterThanOrEqual(300);
      }),
    );
  });

  it('of one thing in the downstage corner go to the nearest room, and stay as they stand to each other', () => {
    const corner = { x: 2700, y: 300 };
    const alone = added(corner, wayForCopies([corner], [corner], PLATFORM));
    expect(apart(alone, corner)).toBe(900);
    expect(depthInPolygon(alone, PLATFORM)).toBe(300);
    const stand = { x: 2700, y: 900 };
    const way = wayForCopies([corner, stand], [corner, stand], PLATFORM);
    for (const spot of [corner, stand])
      for (const other of [corner, stand]) expect(apart(added(spot, way), other)).toBeGreaterThanOrEqual(900);
  });

  it('of what stands beyond the platform need not come onto it', () => {
    const place = { x: 0, y: 6000 };
    const way = wayForCopies([place], [place], PLATFORM);
    expect(apart(added(place, way), place)).toBe(900);
  });
});
