/** Row over row: published examples, and the sight check itself where the geometry is the arbiter. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cValue, riserForC } from '#model/checks/sightlines/c-value.ts';
import { visibleShares } from '#model/checks/sightlines/visible-shares.ts';
import { capsule, seatAt, targetOf } from '../../../helpers/scenes.ts';

describe('published examples', () => {
  // NRICH "Arsenal Collection: Stadium Sightline", University of Cambridge, no. 8823: inputs; answers are arithmetic.
  const arsenal = { distance: 30_000, height: 10_000, rowDepth: 1000 };

  test('NRICH 8823: no clearance needs a step of 333.33 mm, 150 mm one of 488.333 mm', () => {
    expect(riserForC(arsenal, 0)).toBeCloseTo(333.333, 3);
    expect(Math.abs(riserForC(arsenal, 150) - 488.333)).toBeLessThan(0.001);
    expect(cValue(arsenal, riserForC(arsenal, 150))).toBeCloseTo(150, 9);
  });

  // NRICH 7484 "Stadium Sightline": row-1 eye 1.2 m, focus 10 m before it on the ground, rows 0.8 m, clearance 0.2 m.
  test('NRICH 7484: eyes of forty rows', () => {
    const { eyes, risers } = rows({ eye: 1.2, distance: 10, rowDepth: 0.8, clearance: 0.2, count: 40 });
    const published = new Map([
      [2, 1.512],
      [3, 1.838815],
      [4, 2.179423],
      [5, 2.532934],
      [10, 4.469511],
      [20, 9.00166],
      [30, 14.17973],
      [40, 19.844454],
    ]);
    for (const [row, eye] of published) expect(Math.abs((eyes[row - 1] ?? NaN) - eye)).toBeLessThan(1e-5);
    expect(risers[0]).toBeCloseTo(0.312, 6);
    expect(risers.at(-1)).toBeCloseTo(0.585329, 6);
    expect(risers.every((riser, i) => i === 0 || riser > (risers[i - 1] ?? Infinity))).toBe(true);
  });

  test('a flat floor before a platform: D 5000, R 520, T 900, N 0', () => {
    expect(Math.abs(cValue({ distance: 5000, height: 520, rowDepth: 900 }, 0) - -79.322)).toBeLessThan(0.001);
  });

  // Exact arithmetic on the same formula: every other row is 2 N over 2 T.
  test.each([
    [6000, 2000, 300, 800, 29.412, 52.632],
    [12_000, 3000, 350, 800, 140.625, 264.706],
    [5000, 520, 0, 900, -79.322, -137.647],
    [5000, -180, 0, 900, 27.458, 47.647],
    [8000, 620, 150, 900, 72.135, 131.02],
    [8000, 620, 300, 900, 206.966, 375.918],
  ])('D %d, R %d, N %d, T %d', (distance, height, riser, rowDepth, oneRow, twoRows) => {
    expect(cValue({ distance, height, rowDepth }, riser)).toBeCloseTo(oneRow, 3);
    expect(cValue({ distance, height, rowDepth: 2 * rowDepth }, 2 * riser)).toBeCloseTo(twoRows, 3);
  });
});

describe('laws', () => {
  const pairs = fc.record({
    distance: fc.double({ min: 1000, max: 60_000, noNaN: true }),
    height: fc.double({ min: -2000, max: 20_000, noNaN: true }),
    rowDepth: fc.double({ min: 500, max: 2000, noNaN: true }),
  });

  test('the step for a clearance gives that clearance', () => {
    fc.assert(
      fc.property(pairs, fc.double({ min: -200, max: 300, noNaN: true }), (pair, clearance) => {
        expect(Math.abs(cValue(pair, riserForC(pair, clearance)) - clearance)).toBeLessThan(1e-9);
      }),
    );
  });

  test('row after row equals the closed form e_n = d_n (e_1 / d_1 + C sum of 1 / d_k)', () => {
    const stands = fc.record({
      eye: fc.double({ min: 0.5, max: 3, noNaN: true }),
      distance: fc.double({ min: 3, max: 40, noNaN: true }),
      rowDepth: fc.double({ min: 0.6, max: 1.2, noNaN: true }),
      clearance: fc.double({ min: 0, max: 0.3, noNaN: true }),
    });
    fc.assert(
      fc.property(stands, ({ eye, distance, rowDepth, clearance }) => {
        const { eyes } = rows({ eye, distance, rowDepth, clearance, count: 30 });
        let sum = 0;
        eyes.forEach((height, n) => {
          const d = distance + n * rowDepth;
          expect(Math.abs(height - d * (eye / distance + clearance * sum))).toBeLessThan(1e-9);
          sum += 1 / d;
        });
      }),
    );
  });
});

interface Stand {
  readonly eye: number;
  readonly distance: number;
  readonly rowDepth: number;
  readonly clearance: number;
  readonly count: number;
}

/** Eye heights above the focus and the steps between them, each row over the one before. */
function rows({ eye, distance, rowDepth, clearance, count }: Stand): { eyes: number[]; risers: number[] } {
  const eyes = [eye];
  const risers: number[] = [];
  for (let n = 0; n + 1 < count; n++) {
    const height = eyes[n] ?? NaN;
    const riser = riserForC({ distance: distance + n * rowDepth, height, rowDepth }, clearance);
    risers.push(riser);
    eyes.push(height + riser);
  }
  return { eyes, risers };
}

/**
 * The sight check is the arbiter: a rear eye 900 mm behind and 250 mm above a front eye at the origin, a focus 8 m
 * before it and 620 mm below, shown as a window of 2 x 2 mm about the focus.
 */
describe('the classical clearance and the sight check', () => {
  const pair = { distance: 8000, height: 620, rowDepth: 900 };
  const riser = 250;
  const clearance = cValue(pair, riser);
  const focus = targetOf({ y: pair.distance, z0: -pair.height - 1, z1: -pair.height + 1, width: 2 });

  /** What the rear eye sees past a head of this breadth, whose top is so far above the front eye. */
  function seenPast(head: { breadth: number; top: number; aside: number }): number {
    const r = head.breadth / 2;
    const body = capsule({ x: head.aside, y: 0, z0: -600, z1: head.top - r, r });
    const scene = { seats: [seatAt(0, -pair.rowDepth, riser)], targets: [focus], occluders: [body] };
    return visibleShares(scene)[0] ?? NaN;
  }

  test('over a head in line the focus is seen exactly when C is at least its height above the eye, h = 112 mm', () => {
    // ANSUR II: the median eye-to-crown height is 111 to 112 mm.
    const h = 112;
    // The line of sight passes a round head lower than its top: over a slender one, C decides to the millimetre.
    for (const [step, visible] of [
      [-2, 0],
      [2, 1],
    ] as const) {
      const needed = riserForC(pair, h + step);
      const body = capsule({ x: 0, y: 0, z0: -600, z1: h - 0.5, r: 0.5 });
      const scene = { seats: [seatAt(0, -pair.rowDepth, needed)], targets: [focus], occluders: [body] };
      const slot = { ...focus, width: 0.5 };
      expect(visibleShares({ ...scene, targets: [slot] })[0]).toBeCloseTo(visible, 9);
    }
    expect(clearance).toBeCloseTo(162.022, 3);
    expect(seenPast({ breadth: 152, top: clearance - 12, aside: 0 })).toBe(1);
    expect(seenPast({ breadth: 152, top: clearance + 12, aside: 0 })).toBe(0);
  });

  test('beside a head 152 mm broad (ANSUR II): 77 mm off the line it is clear, 75 mm off it hides', () => {
    // The line runs straight to the focus, so at the head it has no offset of its own; the window adds 0.1 mm there.
    const top = clearance + 300;
    expect(seenPast({ breadth: 152, top, aside: 77 })).toBe(1);
    expect(seenPast({ breadth: 152, top, aside: -77 })).toBe(1);
    expect(seenPast({ breadth: 152, top, aside: 75 })).toBe(0);
    expect(seenPast({ breadth: 152, top, aside: -75 })).toBe(0);
  });
});
