/**
 * ADA/ABA 403.5.1: clear width 36 in (915 mm), which may drop to 32 in (815 mm) for at most 24 in (610 mm), such stretches
 * separated by at least 48 in (1220 mm). The millimetres are those the standard prints beside the inches.
 */

import { describe, expect, test } from 'vitest';
import {
  CLEAR_WIDTH,
  narrowStretches,
  PINCH_APART,
  PINCH_LENGTH,
  PINCH_WIDTH,
  pinchVerdict,
  type NarrowStretch,
} from '#model/checks/room/pinch-points.ts';

const stretch = (from: number, length: number, width: number): NarrowStretch => ({
  from,
  to: from + length,
  width,
});
const widths = (...all: number[]) => all.map((width, index) => ({ at: index * 100, width }));

describe('36 in are 914.4 mm, the standard prints 915, and here the printed millimetres count', () => {
  test.each([
    [915, 0],
    [914.5, 1],
    [914, 1],
  ])('%d mm: %i narrow stretches', (width, count) => {
    expect(narrowStretches(widths(1000, width, 1000))).toHaveLength(count);
  });
});

describe('pinch points', () => {
  test.each([
    [914, 600, 'pinch'],
    [815, 600, 'pinch'],
    [815, 610, 'pinch'],
    [814, 600, 'narrow'],
    [850, 620, 'narrow'],
  ])('%i mm wide for %i mm: %s', (width, length, verdict) => {
    expect(pinchVerdict([stretch(1000, length, width)])).toBe(verdict);
  });

  test.each([
    [1220, 'pinch'],
    [1200, 'narrow'],
  ])('two of them %i mm apart: %s', (apart, verdict) => {
    expect(pinchVerdict([stretch(0, 500, 850), stretch(500 + apart, 500, 850)])).toBe(verdict);
  });

  test('a route without one is clear', () => {
    expect(pinchVerdict([])).toBe('clear');
  });

  test('inches and millimetres of the standard agree to its rounding', () => {
    const inches = [36, 32, 24, 48].map((inch) => inch * 25.4);
    [CLEAR_WIDTH, PINCH_WIDTH, PINCH_LENGTH, PINCH_APART].forEach((printed, index) =>
      expect(Math.abs(printed - (inches[index] ?? 0))).toBeLessThan(2.5),
    );
  });
});

test('narrow stretches run from the first narrow station to the last, with the least width', () => {
  expect(narrowStretches(widths(900, 800, 1000, 1000, 850, 820, 830))).toEqual([
    { from: 0, to: 100, width: 800 },
    { from: 400, to: 600, width: 820 },
  ]);
});
