/** Times as places in bars as performed. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Music } from '#model/document/music.ts';
import { placeAt, timeAt } from '#model/score/music/places.ts';
import { performanceOf } from '#model/score/music/performance.ts';
import { MUSIC } from '../../helpers/build.ts';
import '../../helpers/seed.ts';

/** Bars 1 2 1 2 3 4, of 4 s each. */
const repeated: Music = {
  ...MUSIC,
  order: [
    [0, 1],
    [0, 3],
  ],
};

describe('a place', () => {
  it('counts bars as performed, repeats each time, and shares of a bar by time', () => {
    const performance = performanceOf(repeated);
    expect(placeAt(performance, 0)).toBe(0);
    expect(placeAt(performance, 4)).toBe(1);
    expect(placeAt(performance, 21)).toBe(5.25);
    expect(timeAt(performance, 5.25)).toBe(21);
  });

  it('goes along with a tempo that is typed over', () => {
    const slower = performanceOf({
      ...repeated,
      tempos: [{ bar: 0, at: 0, quartersPerMinute: 30, source: 'typed' }],
    });
    expect(timeAt(slower, placeAt(performanceOf(repeated), 21))).toBe(42);
  });

  it('beyond the end of music that has become shorter is its end', () => {
    const whole = performanceOf(repeated);
    const shorter = performanceOf(MUSIC);
    expect(timeAt(shorter, placeAt(whole, 21))).toBe(16);
    expect(timeAt(shorter, Infinity)).toBe(16);
    expect(placeAt(whole, 24)).toBe(6);
    expect(placeAt(whole, 1e9)).toBe(6);
    expect(timeAt(whole, 6)).toBe(24);
  });

  it('is within the music before its beginning, in no bars at all, and in bars without length', () => {
    const whole = performanceOf(repeated);
    expect([placeAt(whole, -3), timeAt(whole, -3), placeAt(whole, NaN)]).toEqual([0, 0, 0]);
    const nothing = performanceOf({ ...MUSIC, bars: [], order: [] });
    expect([placeAt(nothing, 5), timeAt(nothing, 5)]).toEqual([0, 0]);
    const empty = performanceOf({ ...MUSIC, bars: MUSIC.bars.map((bar) => ({ ...bar, ticks: 0 })) });
    expect([placeAt(empty, 5), timeAt(empty, 2.5)]).toEqual([4, 0]);
  });

  it('and its time are the same moment, and later places are not earlier times', () => {
    const bars = fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 1, maxLength: 12 });
    const shares = fc.tuple(
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
    );
    fc.assert(
      fc.property(bars, shares, (ticks, [a, b]) => {
        const performance = performanceOf({
          ...MUSIC,
          bars: ticks.map((length, index) => ({ number: `${index}`, ticks: length })),
          order: [[0, ticks.length - 1]],
        });
        const time = a * performance.seconds;
        expect(timeAt(performance, placeAt(performance, time))).toBeCloseTo(time, 9);
        const [early, late] = [Math.min(a, b), Math.max(a, b)].map((share) => share * performance.seconds);
        expect(placeAt(performance, early ?? 0)).toBeLessThanOrEqual(placeAt(performance, late ?? 0));
      }),
    );
  });
});
