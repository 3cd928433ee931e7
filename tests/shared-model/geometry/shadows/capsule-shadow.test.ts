/**
 * The closed form for a whole capsule against the slower one that finds each column by itself: two ways to the same
 * outline that share no formula.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { wholeCapsuleShadow, type SeenCapsule } from '#model/geometry/shadows/capsule-shadow.ts';
import { cutCapsuleShadow } from '#model/geometry/shadows/cut-capsule-shadow.ts';
import { addShadow, createOutline, createShadows, EVERYTHING } from '#model/geometry/shadows/shadows.ts';
import { uncoveredShare } from '#model/geometry/shadows/uncovered.ts';
import { createView, lookAt, standAt, type View } from '#model/geometry/shadows/view.ts';

const WINDOW = { x: 0, y: 10_000, z0: 1000, z1: 2000, width: 500 };

function viewFrom(height: number): View {
  const view = createView();
  standAt(view, 0, 0, height);
  lookAt(view, WINDOW);
  return view;
}

function hiddenBy(outlineOf: typeof wholeCapsuleShadow, view: View, seen: SeenCapsule): number {
  const [outline, shadows] = [createOutline(), createShadows()];
  outlineOf(view, seen, outline);
  return addShadow(shadows, outline) === EVERYTHING ? 1 : 1 - uncoveredShare(shadows);
}

describe('a capsule between the eye and the window', () => {
  test('the closed form agrees with the columns', () => {
    const capsules = fc.record({
      across: fc.double({ min: -400, max: 400, noNaN: true }),
      depth: fc.double({ min: 700, max: 9500, noNaN: true }),
      bottom: fc.double({ min: -1500, max: 1000, noNaN: true }),
      length: fc.double({ min: 0, max: 1500, noNaN: true }),
      r: fc.double({ min: 20, max: 450, noNaN: true }),
      height: fc.double({ min: 0, max: 5000, noNaN: true }),
    });
    fc.assert(
      fc.property(capsules, ({ across, depth, bottom, length, r, height }) => {
        // Somewhere about the line from the eye to the window's middle, so that most of them hide something.
        const middle = ((1500 - height) * depth) / 10_000;
        const low = middle + bottom / 2;
        const seen = { across: (across * depth) / 10_000, depth, low, high: low + length, r };
        const view = viewFrom(height);
        const closed = hiddenBy(wholeCapsuleShadow, view, seen);
        const columns = hiddenBy(cutCapsuleShadow, view, seen);
        expect(Math.abs(closed - columns)).toBeLessThan(1e-3);
      }),
      { numRuns: 3000 },
    );
  });

  test('an ellipse that lies in the window has its exact area', () => {
    // A ball: its outline from the eye is a cone of half angle asin(r / distance), cut by the window's plane.
    const [across, depth, up, r] = [60, 5000, 60, 60];
    const view = viewFrom(1500);
    const squared = across ** 2 + depth ** 2 + up ** 2;
    // Area of the section of a circular cone by a plane: pi d^2 r^2 sqrt(|C|^2 - r^2) / (depth^2 - r^2)^(3/2).
    const area =
      (Math.PI * 10_000 ** 2 * r ** 2 * Math.sqrt(squared - r ** 2)) / (depth ** 2 - r ** 2) ** 1.5;
    const seen = { across, depth, low: up, high: up, r };
    expect(hiddenBy(wholeCapsuleShadow, view, seen)).toBeCloseTo(area / 500_000, 12);
    expect(hiddenBy(cutCapsuleShadow, view, seen) / (area / 500_000)).toBeGreaterThan(1 - 2e-3);
  });
});
