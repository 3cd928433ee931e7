import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  followed,
  isWhole,
  pixelOf,
  shifted,
  stretchFor,
  timeOf,
  turnedTo,
  wholeOf,
  zoomed,
  type PaintedStretch,
  type TimeWindow,
} from '../../../../renderer/canvas/strip/time-window.ts';

const WIDTH = 800;
const length = fc.integer({ min: 1, max: 7200 });
const share = fc.double({ min: 0, max: 1, noNaN: true });

/** Somewhere in a performance, by zooming and shifting. */
const windows = fc.tuple(length, share, share, fc.double({ min: 0.01, max: 3, noNaN: true }));

function windowOf([seconds, at, by, factor]: [number, number, number, number]): TimeWindow {
  return shifted(zoomed(wholeOf(seconds), seconds, at * seconds, factor), seconds, (by - 0.5) * seconds);
}

describe('a window of time', () => {
  it('never shows what lies before the beginning or behind the end', () => {
    fc.assert(
      fc.property(windows, (made) => {
        const { from, seconds } = windowOf(made);
        expect(from).toBeGreaterThanOrEqual(0);
        expect(from + seconds).toBeLessThanOrEqual(wholeOf(made[0]).seconds + 1e-9);
      }),
    );
  });

  it('finds the moment under a pixel again', () => {
    fc.assert(
      fc.property(windows, share, (made, at) => {
        const window = windowOf(made);
        expect(pixelOf(window, WIDTH, timeOf(window, WIDTH, at * WIDTH))).toBeCloseTo(at * WIDTH, 6);
      }),
    );
  });

  it('keeps the moment under the pointer where it is when it is enlarged', () => {
    const before: TimeWindow = { from: 100, seconds: 200 };
    const after = zoomed(before, 600, 150, 0.5);
    expect(after.seconds).toBe(100);
    expect(pixelOf(after, WIDTH, 150)).toBeCloseTo(pixelOf(before, WIDTH, 150), 9);
  });

  it('shows all of it in the end, and not less than four seconds', () => {
    expect(isWhole(zoomed({ from: 10, seconds: 20 }, 60, 12, 100), 60)).toBe(true);
    expect(zoomed({ from: 10, seconds: 20 }, 60, 12, 0.001).seconds).toBe(4);
  });

  it('turns on when the moment runs out of it, and shows what comes after', () => {
    const window: TimeWindow = { from: 0, seconds: 20 };
    expect(turnedTo(window, 100, 19)).toBe(window);
    const next = turnedTo(window, 100, 19.5);
    expect(next.from).toBeGreaterThan(15);
    expect(next.from).toBeLessThan(19.5);
    expect(turnedTo({ from: 50, seconds: 20 }, 100, 10).from).toBeLessThan(10);
  });

  it('runs along with the moment once that is in the middle, and leaps when it is elsewhere', () => {
    const window: TimeWindow = { from: 0, seconds: 20 };
    expect(followed(window, 100, 9)).toBe(window);
    expect(followed(window, 100, 11)).toEqual({ from: 1, seconds: 20 });
    expect(followed(window, 100, 60).from).toBeCloseTo(58.4, 9);
    expect(followed({ from: 80, seconds: 20 }, 100, 99)).toEqual({ from: 80, seconds: 20 });
  });
});

describe('what is painted at once', () => {
  it('holds all that is shown at the same size, and nothing beyond the music', () => {
    fc.assert(
      fc.property(
        windows,
        fc.array(fc.double({ min: -2, max: 2, noNaN: true }), { maxLength: 20 }),
        (made, pushes) => {
          const [seconds] = made;
          let shown = windowOf(made);
          let stretch: PaintedStretch | null = null;
          for (const push of [0, ...pushes]) {
            shown = shifted(shown, seconds, push * shown.seconds);
            stretch = stretchFor(shown, WIDTH, seconds, stretch);
            const { window, width } = stretch;
            const end = window.from + window.seconds;
            expect(width / window.seconds).toBeCloseTo(WIDTH / shown.seconds, 6);
            expect(window.from).toBeLessThanOrEqual(shown.from + 1e-6);
            expect(end).toBeGreaterThanOrEqual(shown.from + shown.seconds - 1e-6);
            expect(window.from).toBeGreaterThanOrEqual(0);
            expect(end).toBeLessThanOrEqual(wholeOf(seconds).seconds + 1e-6);
            expect(width).toBeLessThanOrEqual(2 * WIDTH + 1e-6);
          }
        },
      ),
    );
  });

  it('stays while what is shown is pushed along within it, and is painted anew at another size', () => {
    const shown = { from: 100, seconds: 60 };
    const first = stretchFor(shown, WIDTH, 3600, null);
    expect(first.window).toEqual({ from: 70, seconds: 120 });
    expect(stretchFor({ from: 130, seconds: 60 }, WIDTH, 3600, first)).toBe(first);
    expect(stretchFor({ from: 70, seconds: 60 }, WIDTH, 3600, first)).toBe(first);
    expect(stretchFor({ from: 131, seconds: 60 }, WIDTH, 3600, first).window.from).toBe(101);
    expect(stretchFor({ from: 100, seconds: 50 }, WIDTH, 3600, first)).not.toBe(first);
    expect(stretchFor(shown, WIDTH / 2, 3600, first)).not.toBe(first);
  });
});
