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
  roundingWords,
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

/** Half a millimetre, and 1/32 in. */
const ROUNDING: Readonly<Record<Units, number>> = { metric: 0.5, imperial: 25.4 / 32 };

/** Nothing that no tape has: no tenths of a millimetre, nothing finer than sixteenths. */
function expectReadable(words: readonly string[], units: Units): void {
  const readable = units === 'metric' ? /^[A-F] \d+$/ : /^[A-F] \d+'-\d+(?: \d+\/(2|4|8|16))?"$/;
  for (const word of words) expect(word).toMatch(readable);
}

describe('taped', () => {
  it.each(['metric', 'imperial'] as const)(
    'any mark on a platform is set as near as whole figures allow, %s',
    (units) => {
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
          const words = tapeWords(tapes, units);
          expectReadable(words, units);
          const set = setFrom(words, points, units);
          // Beside what rounding both circles may do, the second order of it.
          expect(Math.hypot(set.x - mark.x, set.y - mark.y)).toBeLessThan(tapes.off * 1.05);
          [0, 1].forEach((index) => {
            const from = tapes.base[index]!;
            const exact = Math.hypot(from.x - mark.x, from.y - mark.y);
            expect(Math.abs(lengthIn(words[index]!.slice(2), units) - exact)).toBeLessThan(
              ROUNDING[units] + 1e-6,
            );
          });
        }),
      );
    },
  );

  it('begins at the front corners wherever the tapes cross steeply there', () => {
    const bases = basesOf(cornerPoints(PLATFORM));
    const letters = (mark: Point): string =>
      taped(mark, bases, 'metric')
        ?.base.map(({ letter }) => letter)
        .join('') ?? '';
    expect(letters({ x: 0, y: 3000 })).toBe('AB');
    expect(letters({ x: -735, y: 2600 })).toBe('AB');
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

describe('roundingWords', () => {
  it('says what was rounded, and by how much that moves a mark at the most', () => {
    // Tapes at right angles: the mark moves by the rounding times the root of two (0.707, 1.12 mm).
    const base: Base = [
      { letter: 'A', x: -1000, y: 0 },
      { letter: 'B', x: 1000, y: 0 },
    ];
    const words = (units: Units): string => {
      const tapes = taped({ x: 0, y: 1000 }, [base], units);
      return tapes ? roundingWords([tapes], units) : '';
    };
    expect(words('metric')).toMatch(/whole millimetres.* 0\.8 mm\.$/);
    expect(words('imperial')).toMatch(/nearest 1\/16 in.* 1\/16 in\.$/);
  });
});

describe('floorBase', () => {
  it.each(['metric', 'imperial'] as const)(
    'sets every mark as near as whole figures allow, before them all, %s',
    (units) => {
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
            expect(Math.hypot(set.x - mark.x, set.y - mark.y)).toBeLessThan(tapes.off * 1.05);
            // Where it is more, the tapes run nearly alike; the sheet says how much it is.
            expect(tapes.off).toBeLessThan(12 * ROUNDING[units]);
          }
        }),
      );
    },
  );
});
