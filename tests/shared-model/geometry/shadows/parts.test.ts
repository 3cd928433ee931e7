/** Parts of a window, held against the sweep that they come from. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hullColumns } from '#model/geometry/shadows/hull-columns.ts';
import { commonArea, createParts, partsOfShadow, type Parts } from '#model/geometry/shadows/parts.ts';
import {
  addShadow,
  createOutline,
  createShadows,
  EVERYTHING,
  type Shadows,
} from '#model/geometry/shadows/shadows.ts';
import { uncoveredShare } from '#model/geometry/shadows/uncovered.ts';

type Corners = readonly (readonly [u: number, v: number])[];

/** Null when one of them covers the whole window. */
function shadowsOf(hulls: readonly Corners[]): Shadows | null {
  const shadows = createShadows();
  for (const corners of hulls) {
    const outline = createOutline();
    corners.forEach(([u, v], i) => {
      outline.u[i] = u;
      outline.lo[i] = outline.hi[i] = v;
    });
    outline.size = corners.length;
    hullColumns(outline);
    if (addShadow(shadows, outline) === EVERYTHING) return null;
  }
  return shadows;
}

function openParts(shadows: Shadows): { parts: Parts; area: number } {
  const parts = createParts();
  return { parts, area: uncoveredShare(shadows, parts) };
}

const whole = openParts(createShadows()).parts;
const all = (parts: Parts, others: Parts): number => commonArea(parts, 0, parts.count, others);

/** Anywhere, on a coarse grid (so that edges coincide), or as near to one another as rounding. */
const place = fc.oneof(
  fc.double({ min: -0.5, max: 1.5, noNaN: true }),
  fc.integer({ min: -2, max: 6 }).map((step) => step / 4),
  fc.integer({ min: -3, max: 3 }).map((step) => 0.5 + step * 1e-13),
);
const hull = fc.array(fc.tuple(place, place), { minLength: 3, maxLength: 7 });
const hulls = fc.array(hull, { minLength: 1, maxLength: 8 });

describe('the uncovered parts of a window', () => {
  test('of nothing are the whole', () => {
    expect(all(whole, whole)).toBe(1);
  });

  test('have the area that the sweep has summed', () => {
    fc.assert(
      fc.property(hulls, (given) => {
        const shadows = shadowsOf(given);
        if (!shadows) return;
        const { parts, area } = openParts(shadows);
        expect(Math.abs(all(parts, whole) - area)).toBeLessThan(1e-12);
      }),
      { numRuns: 2000 },
    );
  });

  test('that two sets of shadows leave both are what all together leave', () => {
    fc.assert(
      fc.property(hulls, hulls, (some, others) => {
        const [a, b, both] = [shadowsOf(some), shadowsOf(others), shadowsOf([...some, ...others])];
        if (!a || !b || !both) return;
        const common = all(openParts(a).parts, openParts(b).parts);
        // Far less than share-steps.ts takes rounding to be: 2^-38 is 3.6e-12.
        expect(Math.abs(common - uncoveredShare(both))).toBeLessThan(2e-12);
      }),
      { numRuns: 2000 },
    );
  });

  test('are as much smaller for one more shadow as that has in common with them', () => {
    fc.assert(
      fc.property(hulls, hull, (given, more) => {
        const [before, one, after] = [shadowsOf(given), shadowsOf([more]), shadowsOf([...given, more])];
        if (!before || !one || !after || one.count === 0) return;
        const { parts, area } = openParts(before);
        const cover = createParts();
        partsOfShadow(one, cover);
        expect(Math.abs(area - all(parts, cover) - uncoveredShare(after))).toBeLessThan(2e-12);
      }),
      { numRuns: 2000 },
    );
  });
});
