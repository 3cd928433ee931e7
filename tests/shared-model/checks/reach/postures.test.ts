import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { armLimit, leanLimit, stoopLimit, type Arm } from '#model/checks/reach/postures.ts';
import { SHOULDER_PUSH } from '#model/checks/reach/published.ts';
import { predict } from '#model/catalogue/survey.ts';

const arm: fc.Arbitrary<Arm> = fc
  .record({
    length: fc.double({ min: 500, max: 850, noNaN: true }),
    waistHeight: fc.double({ min: 600, max: 1200, noNaN: true }),
    trunk: fc.double({ min: 250, max: 500, noNaN: true }),
  })
  .map(({ length, waistHeight, trunk }) => ({ length, waistHeight, shoulderHeight: waistHeight + trunk }));

const height = fc.double({ min: 0, max: 2400, noNaN: true });
const lean = fc.double({ min: 0, max: 60, noNaN: true });

describe('armLimit', () => {
  // Source: ANSUR II regression: stature 1600 mm, sexes weighted equally, arm 634.2 mm to the fingertip.
  it('reaches a corner 630 mm from the shoulder at a stature of 1600 mm, and not one at 640', () => {
    const length = predict('armLength', 'pooled', 1600);
    const limit = armLimit({ length, shoulderHeight: 1300, waistHeight: 950 }, 1300) ?? NaN;
    expect(limit).toBeGreaterThan(630);
    expect(limit).toBeLessThan(640);
  });

  // Worked by hand: a 3-4-5 triangle.
  it('shrinks with the difference in height', () => {
    const worked = { length: 500, shoulderHeight: 1400, waistHeight: 1000 };
    expect(armLimit(worked, 1000)).toBe(300);
    expect(armLimit(worked, 1800)).toBe(300);
    expect(armLimit(worked, 899)).toBeNull();
  });
});

describe('leanLimit', () => {
  // Source: NUREG-0700 rev 3 table 11.4: pushing the shoulder forward adds 56 to 58 mm to the reach.
  it('adds the push of the shoulder when the trunk stays upright', () => {
    const worked = { length: 600, shoulderHeight: 1400, waistHeight: 1000 };
    expect(leanLimit(worked, 1400, 0)).toBeCloseTo(600 + SHOULDER_PUSH, 9);
    expect(SHOULDER_PUSH).toBeGreaterThanOrEqual(54);
    expect(SHOULDER_PUSH).toBeLessThanOrEqual(60);
  });

  // Worked by hand: trunk 400 at 30° brings the shoulder 200 ahead and to 1346.41; the arm of 543 + 57 is level there.
  it('adds the lean of the trunk', () => {
    const worked = { length: 543, shoulderHeight: 1400, waistHeight: 1000 };
    expect(leanLimit(worked, 1000 + 400 * Math.cos(Math.PI / 6), 30)).toBeCloseTo(800, 6);
  });

  it('is the farthest point of every lean that is allowed, tried one by one', () => {
    fc.assert(
      fc.property(arm, height, lean, (who, at, most) => {
        const trunk = who.shoulderHeight - who.waistHeight;
        let farthest = -Infinity;
        for (let trial = 0; trial <= 4000; trial++) {
          const angle = (most * trial * Math.PI) / (4000 * 180);
          const drop = who.waistHeight + trunk * Math.cos(angle) - at;
          const squared = (who.length + SHOULDER_PUSH) ** 2 - drop ** 2;
          if (squared >= 0) farthest = Math.max(farthest, trunk * Math.sin(angle) + Math.sqrt(squared));
        }
        const limit = leanLimit(who, at, most);
        // Between two trials the reach may grow by a little, next to its end by the root of a little.
        if (limit === null) expect(farthest).toBe(-Infinity);
        else if (farthest > 0) expect(Math.abs(limit - farthest)).toBeLessThan(0.5);
        else expect(limit).toBeLessThan(25);
      }),
      { numRuns: 300 },
    );
  });

  it('never reaches less than the arm alone, nor less with more lean where it reaches', () => {
    fc.assert(
      fc.property(arm, height, lean, (who, at, most) => {
        const [alone, some, more] = [armLimit(who, at), leanLimit(who, at, most), leanLimit(who, at, 60)];
        const isBelowShoulder = at <= who.shoulderHeight;
        if (alone !== null && isBelowShoulder) expect(some ?? -1).toBeGreaterThanOrEqual(alone);
        if (some !== null && isBelowShoulder) expect(more ?? -1).toBeGreaterThanOrEqual(some - 1e-9);
      }),
    );
  });
});

describe('stoopLimit', () => {
  // Worked by hand: shoulders come down to 700; a peg at 450 lies 250 below them: sqrt(650² - 250²) = 600.
  it('gets to a peg that an upright arm does not', () => {
    const worked = { length: 650, shoulderHeight: 1400, waistHeight: 1000 };
    expect(armLimit(worked, 450)).toBeNull();
    expect(stoopLimit(worked, 450)).toBeCloseTo(600, 9);
    expect(stoopLimit(worked, 900)).toBe(650);
    expect(stoopLimit(worked, 1400)).toBe(650);
  });

  it('is no help above the shoulder', () => {
    fc.assert(
      fc.property(arm, height, (who, at) => {
        if (at >= who.shoulderHeight) expect(stoopLimit(who, at)).toBe(armLimit(who, at));
      }),
    );
  });
});

describe('scaling', () => {
  it('scales the limit of arm with the body', () => {
    fc.assert(
      fc.property(arm, height, fc.double({ min: 0.5, max: 2, noNaN: true }), (who, at, k) => {
        const larger = {
          length: who.length * k,
          shoulderHeight: who.shoulderHeight * k,
          waistHeight: who.waistHeight * k,
        };
        const [plain, scaled] = [armLimit(who, at), armLimit(larger, at * k)];
        if (plain !== null && plain > 1) expect((scaled ?? NaN) / (plain * k)).toBeCloseTo(1, 6);
      }),
    );
  });
});
