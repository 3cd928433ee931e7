import { describe, expect, it } from 'vitest';
import { pageOf, PAPERS } from '#model/drawing/papers.ts';
import {
  isKnownScale,
  ISO_SCALES,
  largestScale,
  offeredScales,
  scaleDesignation,
} from '#model/drawing/scales.ts';

/** ISO 5455:1979 section 5.1, recommended reductions. */
const ISO_5455 = [2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000];

describe('standard scales', () => {
  it('offers only ratios of ISO 5455 in metric', () => {
    for (const scale of offeredScales('metric')) expect(ISO_5455).toContain(scale);
    expect(offeredScales('metric')).toEqual(ISO_SCALES);
  });

  it('offers the scales of the architect\'s rule in imperial, from 1" to 1/16" to the foot', () => {
    // Twelve inches over 1, 3/4, 1/2, 3/8, 1/4, 3/16, 1/8, 3/32 and 1/16: arithmetic.
    const inches = [1, 3 / 4, 1 / 2, 3 / 8, 1 / 4, 3 / 16, 1 / 8, 3 / 32, 1 / 16];
    expect(offeredScales('imperial').slice(0, 9)).toEqual(inches.map((inch) => 12 / inch));
  });

  it('takes a metric ratio in imperial only when nothing else fits', () => {
    const imperial = offeredScales('imperial').filter((scale) => !ISO_SCALES.includes(scale));
    expect(offeredScales('imperial')).toEqual([...imperial, 500]);
    expect(largestScale('imperial', (scale) => scale >= 200)).toBe(240);
    for (const scale of imperial) expect(scaleDesignation(scale)).toMatch(/= 1'-0"|= [24]0'-0"/);
  });

  it('takes 1:25 only by number, and says that it is not of the standard', () => {
    expect(isKnownScale(25)).toBe(true);
    expect(offeredScales('metric')).not.toContain(25);
    expect(offeredScales('imperial')).not.toContain(25);
    expect(scaleDesignation(25)).toBe('SCALE 1:25 (not an ISO 5455 scale)');
    expect(isKnownScale(33)).toBe(false);
  });

  it('is designated as ISO 5455 section 3 wants it', () => {
    expect(scaleDesignation(50)).toBe('SCALE 1:50');
    expect(scaleDesignation(48)).toBe('SCALE 1:48 (1/4" = 1\'-0")');
  });

  it('picks the largest drawing that fits, or none', () => {
    expect(largestScale('metric', (scale) => 8400 / scale <= 200)).toBe(50);
    expect(largestScale('metric', () => false)).toBeNull();
  });
});

describe('papers', () => {
  const points = (millimetres: number) => (millimetres * 72) / 25.4;

  it.each([
    // ISO 216: A4 210 x 297 mm, A3 297 x 420 mm. Letter 8.5 x 11 in, Tabloid 11 x 17 in: ANSI Y14.1, from memory.
    ['A4', 595.276, 841.89],
    ['A3', 841.89, 1190.551],
    ['Letter', 612, 792],
    ['Tabloid', 792, 1224],
  ] as const)('%s has its published size', (name, width, height) => {
    const page = pageOf(name, 'portrait');
    expect(points(page.width)).toBeCloseTo(width, 3);
    expect(points(page.height)).toBeCloseTo(height, 3);
    const turned = pageOf(name, 'landscape');
    expect([turned.width, turned.height]).toEqual([page.height, page.width]);
  });

  it('each leave a frame inside their borders', () => {
    for (const { name } of PAPERS) {
      const { frame, width, height } = pageOf(name, 'landscape');
      expect(frame.x).toBe(20);
      expect(width - frame.x - frame.width).toBeCloseTo(10, 9);
      expect(height - frame.y - frame.height).toBeCloseTo(10, 9);
    }
  });
});
