import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heightSeenUnder, minutesOfArc } from '#model/checks/reading/visual-angle.ts';

describe('visual angle', () => {
  // Source: NUREG-0700 rev 2, 1.3.1-4: height = 6.283 D MA / 21600, the small-angle form of 2 D tan(MA / 2).
  it('gives the height that the published formula gives', () => {
    expect(heightSeenUnder(16, 700)).toBeCloseTo(3.258, 3);
    for (const distance of [500, 610, 700, 800, 914, 1000]) {
      for (const minutes of [16, 20, 24]) {
        const published = (6.283 * distance * minutes) / 21600;
        expect(Math.abs(heightSeenUnder(minutes, distance) - published)).toBeLessThan(1e-3);
      }
    }
  });

  // Exact arithmetic: visual angle 2 atan(h / 2d), for common distances of players from their pages.
  it.each([
    [500, 48.13, 12.03, 51.57, 12.89, 2.327, 2.909],
    [610, 39.45, 9.86, 42.27, 10.57, 2.839, 3.549],
    [700, 34.38, 8.59, 36.83, 9.21, 3.258, 4.072],
    [800, 30.08, 7.52, 32.23, 8.06, 3.723, 4.654],
    [914, 26.33, 6.58, 28.21, 7.05, 4.254, 5.317],
    [1000, 24.06, 6.02, 25.78, 6.45, 4.654, 5.818],
  ])('at %d mm is that of the table', (distance, seven, sevenSpace, large, largeSpace, at16, at20) => {
    const within = (value: number, expected: number, by: number): void =>
      expect(Math.abs(value - expected)).toBeLessThanOrEqual(by);
    within(minutesOfArc(7, distance), seven, 0.01);
    within(minutesOfArc(1.75, distance), sevenSpace, 0.01);
    within(minutesOfArc(7.5, distance), large, 0.01);
    within(minutesOfArc(1.875, distance), largeSpace, 0.01);
    within(heightSeenUnder(16, distance), at16, 0.001);
    within(heightSeenUnder(20, distance), at20, 0.001);
  });

  it('goes there and back', () => {
    const length = fc.double({ min: 0.5, max: 5000, noNaN: true });
    fc.assert(
      fc.property(length, length, (height, distance) => {
        const back = heightSeenUnder(minutesOfArc(height, distance), distance);
        expect(Math.abs(back - height)).toBeLessThan(1e-9 * Math.max(1, height));
      }),
    );
  });
});
