import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bodies, type Body } from '#model/catalogue/people.ts';
import { statureAt } from '#model/catalogue/percentiles.ts';
import { ON_STATURE, predict } from '#model/catalogue/survey.ts';
import type { BodySize, Person, Population } from '#model/document/records.ts';
import { PERSON } from '../../helpers/build.ts';

const POPULATIONS: readonly Population[] = ['female', 'male', 'pooled'];

const barefoot = (population: Population, size: BodySize): Person => ({
  ...PERSON,
  population,
  size,
  shoes: 0,
});
const tall = (stature: number): BodySize => ({ by: 'stature', stature });
const bodyOf = (population: Population, size: BodySize, chair: number | null = null): Body =>
  bodies(barefoot(population, size), chair).small;

const NUMBERS = [
  'stature',
  'crown',
  'eyeHeight',
  'shoulderHeight',
  'waistHeight',
  'shoulderBreadth',
  'biacromialBreadth',
  'elbowBreadth',
  'armLength',
  'headBreadth',
  'headLength',
] as const satisfies readonly (keyof Body)[];

describe('published values', () => {
  // Source: NATICK/TR-15/007 as transcribed: stature F P5 1525, M P95 1870.
  it('gives the official percentiles of stature', () => {
    expect(Math.abs(statureAt('female', 5) - 1525)).toBeLessThanOrEqual(1);
    expect(Math.abs(statureAt('male', 95) - 1870)).toBeLessThanOrEqual(1);
  });

  // Source: ANSUR II regressions computed independently of this project, sexes weighted equally.
  it('predicts from a stature of 1700 mm', () => {
    const body = bodyOf('pooled', tall(1700));
    expect(body.eyeHeight).toBeCloseTo(1588.34, 1);
    expect(body.shoulderHeight).toBeCloseTo(1394.48, 1);
    expect(Math.abs(predict('thumbtipReach', 'pooled', 1700) - 781.7)).toBeLessThan(0.1);
  });

  // Sources: ANSUR II seated eye F 1135.9, M 1234.3 above the floor, with the official popliteal heights
  // F 388.2 and M 429.8 (TR-15/007 p. 175) as the seat; 1120 and 1220 from Ramsey & Sleeper 1970, as quoted.
  it.each([
    ['female', 1628.47, 388.2, 1135.9, 1120],
    ['male', 1756.21, 429.8, 1234.3, 1220],
  ] as const)(
    'seats the mean %s with eyes at the handbook height',
    (population, stature, seat, mean, handbook) => {
      const { eyeHeight } = bodyOf(population, tall(stature), seat);
      expect(Math.abs(eyeHeight - mean)).toBeLessThan(0.1);
      expect(Math.abs(eyeHeight - handbook)).toBeLessThan(25);
    },
  );

  // Sources: NUREG-0700 rev 3 table 11.4, functional reach 5th F 677 and 95th M 886 mm; ANSUR II thumb-tip
  // reach F P5 674 = mean 744.0 - 1.645 x 42.8 within its rounding, M P95 886. Here: what the regression and its
  // residual give for somebody of mean stature, spread by the whole variation of the measure.
  it.each([
    ['female', 1628.47, 64.18, -1.645, 677],
    ['male', 1756.21, 68.54, 1.645, 886],
  ] as const)('agrees with the published functional reach of %s', (population, mean, sd, z, published) => {
    const middle = predict('thumbtipReach', population, mean);
    const slope = predict('thumbtipReach', population, mean + 1) - middle;
    const spread = Math.hypot(slope * sd, ON_STATURE.thumbtipReach[population].residual);
    expect(Math.abs(middle + z * spread - published)).toBeLessThan(5);
  });

  // Source: ANSUR II regression, (span - biacromial breadth) / 2 on stature, sexes weighted equally.
  it('gives an arm of 634.2 mm at a stature of 1600 mm', () => {
    expect(Math.abs(bodyOf('pooled', tall(1600)).armLength - 634.2)).toBeLessThan(0.1);
  });

  // Source: ANSUR II regression as above, for thumb-tip reach from the wall behind the back.
  it('gives a thumb-tip reach of 733.1 mm at a stature of 1600 mm', () => {
    expect(Math.abs(predict('thumbtipReach', 'pooled', 1600) - 733.1)).toBeLessThan(0.1);
  });

  // Source: ANSUR II derived, arm length P5 50:50 601 mm, F P5 590.6 mm.
  it('takes the short arm of the survey for anyone', () => {
    expect(bodies(barefoot('pooled', { by: 'anyone' }), null).small.armLength).toBe(601);
    expect(bodies(barefoot('female', { by: 'anyone' }), null).small.armLength).toBe(590.6);
  });

  // Source: ANSUR II derived, 50:50: mean 1581.0, P5 1442, P95 1727 standing eye height.
  it('spans anyone from the small to the tall eye', () => {
    const { small, tall: big } = bodies(barefoot('pooled', { by: 'anyone' }), null);
    expect(Math.abs(small.eyeHeight - 1442)).toBeLessThan(3);
    expect(Math.abs(big.eyeHeight - 1727)).toBeLessThan(3);
  });
});

describe('laws', () => {
  const population = fc.constantFrom(...POPULATIONS);
  const chair = fc.option(fc.double({ min: 350, max: 850, noNaN: true }), { nil: null });
  const stature = fc.double({ min: 1300, max: 2150, noNaN: true });

  // Whoever is taller is larger in every measure of the survey (ANSUR II).
  it('grows in every measure with stature', () => {
    fc.assert(
      fc.property(
        population,
        chair,
        stature,
        fc.double({ min: 0.5, max: 300, noNaN: true }),
        (who, seat, low, more) => {
          const [small, big] = [bodyOf(who, tall(low), seat), bodyOf(who, tall(low + more), seat)];
          for (const key of NUMBERS) expect(big[key]).toBeGreaterThan(small[key]);
        },
      ),
    );
  });

  // By the meaning of a percentile.
  it('never lets a lower percentile be larger', () => {
    const percentile = fc.double({ min: 1, max: 99, noNaN: true });
    fc.assert(
      fc.property(population, chair, percentile, percentile, (who, seat, a, b) => {
        const at = (p: number) => bodyOf(who, { by: 'percentile', percentile: p }, seat);
        const [low, high] = [at(Math.min(a, b)), at(Math.max(a, b))];
        for (const key of NUMBERS) expect(high[key]).toBeGreaterThanOrEqual(low[key]);
      }),
    );
  });

  it('keeps the small end of anyone at or below P50, and the tall end above', () => {
    for (const who of POPULATIONS) {
      const middle = bodyOf(who, { by: 'percentile', percentile: 50 });
      const ends = bodies(barefoot(who, { by: 'anyone' }), null);
      for (const key of NUMBERS) {
        expect(ends.small[key]).toBeLessThan(middle[key]);
        expect(ends.tall[key]).toBeGreaterThan(middle[key]);
      }
    }
  });

  it('keeps crown over eyes over shoulders over waist', () => {
    fc.assert(
      fc.property(population, chair, stature, (who, seat, height) => {
        const body = bodyOf(who, tall(height), seat);
        const heights = [body.crown, body.eyeHeight, body.shoulderHeight, body.waistHeight];
        expect(heights).toEqual([...heights].sort((a, b) => b - a));
      }),
    );
  });
});

describe('shoes, seats and measurements', () => {
  const person: Person = { ...barefoot('pooled', tall(1700)), shoes: 25 };

  it('adds shoes to heights when standing only', () => {
    const { small } = bodies(person, null);
    expect(small.crown).toBe(1725);
    expect(small.eyeHeight).toBeCloseTo(1588.34 + 25, 1);
    expect(bodies(person, 450).small).toEqual(bodies({ ...person, shoes: 0 }, 450).small);
  });

  it('raises a seated player with his seat', () => {
    const [low, high] = [bodies(person, 430).small, bodies(person, 630).small];
    expect(high.eyeHeight - low.eyeHeight).toBeCloseTo(200, 9);
    expect(high.shoulderHeight - low.shoulderHeight).toBeCloseTo(200, 9);
  });

  it('lets measured values replace the prediction, and moves the crown with the eyes', () => {
    const measured = { eyeHeight: 1500, shoulderHeight: 1300, armLength: 700 };
    const [{ small }, plain] = [bodies({ ...person, measured }, null), bodies(person, null).small];
    expect([small.eyeHeight, small.shoulderHeight, small.armLength]).toEqual([1500, 1300, 700]);
    expect(small.armResidual).toBe(0);
    expect(small.crown - small.eyeHeight).toBeCloseTo(plain.crown - plain.eyeHeight, 9);
  });

  it('keeps a measured arm when anyone may play', () => {
    const anyone: Person = {
      ...PERSON,
      size: { by: 'anyone' },
      measured: { ...PERSON.measured, armLength: 640 },
    };
    const { small, tall: big } = bodies(anyone, null);
    expect([small.armLength, big.armLength]).toEqual([640, 640]);
  });
});
