/**
 * Marks by two tapes, set again from what is printed: the crossing of two circles by the usual formula (E. W. Weisstein,
 * "Circle-Circle Intersection", MathWorld), which shares nothing with what made the figures.
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Units } from '#model/document/measures.ts';
import type { Point } from '#model/document/records.ts';
import { floorBase } from '#model/drawing/pack/floor-base.ts';
import {
  basesOf,
  cornerPoints,
  taped,
  tapeWords,
  WITHIN,
  type Base,
  type FixedPoint,
} from '#model/drawing/pack/tapes.ts';
import '../../../helpers/seed.ts';
import { lengthIn, setByTapes } from './taped-marks.ts';

/** Where somebody puts the mark who has only the printed words. */
function setFrom(words: readonly [string, string], points: readonly FixedPoint[], units: Units): Point {
  const [first, second] = words.map((said) => {
    const from = points.find(({ letter }) => letter === said.charAt(0));
    if (!from) throw new Error(`no point for ${said}`);
    return { from, distance: lengthIn(said.slice(2), units) };
  });
  return setByTapes(first!, second!);
}

const PLATFORM = [
  { x: -4200, y: 0 },
  { x: 4200, y: 0 },
  { x: 4200, y: 3800 },
  { x: 3000, y: 5400 },
  { x: -3000, y: 5400 },
  { x: -4200, y: 3800 },
];

describe('taped', () => {
  it.each(['metric', 'imperial'] as const)('any mark on a platform is set within 1 mm, %s', (units) => {
    const side = fc.integer({ min: 2000, max: 20_000 });
    const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(side, side, share, share, (width, depth, across, up) => {
        const outline = [
          { x: -width / 2, y: 0 },
          { x: width / 2, y: 0 },
          { x: width / 2, y: depth },
          { x: -width / 2, y: depth },
        ];
        const points = cornerPoints(outline);
        const mark = { x: (across - 0.5) * width, y: up * depth };
        const tapes = taped(mark, basesOf(points), units);
        if (!tapes) throw new Error('a mark inside a platform has a base');
        const set = setFrom(tapeWords(tapes, units), points, units);
        expect(Math.hypot(set.x - mark.x, set.y - mark.y)).toBeLessThan(WITHIN);
      }),
    );
  });

  it('begins at the front corners wherever the tapes cross steeply there', () => {
    const bases = basesOf(cornerPoints(PLATFORM));
    const letters = (mark: Point): string =>
      taped(mark, bases, 'metric')
        ?.base.map(({ letter }) => letter)
        .join('') ?? '';
    expect(letters({ x: 0, y: 3000 })).toBe('AB');
    expect(letters({ x: -735, y: 1900 })).toBe('AB');
    // 100 mm from the line between them the tapes run nearly alike.
    expect(letters({ x: 0, y: 100 })).not.toBe('AB');
  });

  it('tells a mark that lies on the other side of its line', () => {
    const bases: Base[] = basesOf(cornerPoints(PLATFORM).slice(0, 2));
    expect(taped({ x: 0, y: -2000 }, bases, 'metric')?.beyond).toBe(true);
    expect(taped({ x: 0, y: 2000 }, bases, 'metric')?.beyond).toBe(false);
  });

  it('names corners round the platform, the front from stage right first', () => {
    expect(cornerPoints(PLATFORM)).toEqual([
      { letter: 'A', x: -4200, y: 0 },
      { letter: 'B', x: 4200, y: 0 },
      { letter: 'C', x: 3000, y: 5400 },
      { letter: 'D', x: -3000, y: 5400 },
    ]);
  });
});

describe('floorBase', () => {
  it.each(['metric', 'imperial'] as const)('sets every mark within 1 mm, before them all, %s', (units) => {
    const at = fc.record({
      x: fc.integer({ min: -3500, max: 3500 }),
      y: fc.integer({ min: 300, max: 6000 }),
    });
    fc.assert(
      fc.property(fc.array(at, { minLength: 1, maxLength: 12 }), (marks) => {
        const { base } = floorBase(marks, units);
        for (const mark of marks) {
          expect(mark.y).toBeGreaterThan(base[0].y);
          const tapes = taped(mark, [base], units);
          if (!tapes) throw new Error('no mark lies on the line');
          const set = setFrom(tapeWords(tapes, units), base, units);
          // From a short line a mark far to the side may need finer figures than any tape has.
          const most = tapes.part >= (units === 'metric' ? 10 : 64) ? 3 * WITHIN : WITHIN;
          expect(Math.hypot(set.x - mark.x, set.y - mark.y)).toBeLessThan(most);
        }
      }),
    );
  });
});
