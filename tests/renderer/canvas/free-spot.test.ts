/** Where things go that are set down without pointing. */

import { expect, it } from 'vitest';
import { freeSpot } from '../../../renderer/canvas/free-spot.ts';

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
