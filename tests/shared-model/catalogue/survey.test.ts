/** The committed figures against the survey itself, where it lies beside the checkout. */

import { describe, expect, it } from 'vitest';
import type { Population } from '#model/document/records.ts';
import { ARM_LENGTH_ENDS, statureAt } from '#model/catalogue/percentiles.ts';
import { ON_STATURE, type Measure } from '#model/catalogue/survey.ts';
import {
  deviation,
  fitLine,
  inGroup,
  mean,
  percentile,
  readSurvey,
  sayIfMissing,
  surveyIsThere,
  weightedPercentile,
  weightsOf,
  type Survey,
} from './survey-file.ts';
import { SUMMARY } from './survey-summary.ts';

const POPULATIONS: readonly Population[] = ['female', 'male', 'pooled'];

const EMPTY: Survey = { sex: [], column: () => [] };

sayIfMissing();

describe.runIf(surveyIsThere)('the survey file', () => {
  const survey = surveyIsThere ? readSurvey() : EMPTY;

  // Source: ANSUR II, see survey-summary.ts.
  it.each(SUMMARY)('$measure of $group gives the published summary', ({ measure, group, figures }) => {
    const values = inGroup(survey, survey.column(measure), group);
    const found = [values.length, mean(values), deviation(values)];
    for (const p of [0.05, 0.25, 0.5, 0.75, 0.95]) found.push(percentile(values, p));
    // The summary prints one decimal.
    figures.forEach((figure, index) => expect(Math.abs((found[index] ?? NaN) - figure)).toBeLessThan(0.0501));
  });

  // Source: share of ANSUR II heads, sitting height - sitting eye height, that a clearance of 120 mm passes.
  it.each([
    ['female', 0.9194],
    ['male', 0.7822],
    ['pooled', 0.8508],
  ] as const)('a clearance of 120 mm passes over the heads of %s', (population, expected) => {
    const [whole, eye] = [survey.column('sittingheight'), survey.column('eyeheightsitting')];
    const weights = weightsOf(survey, population);
    const share = weights.reduce(
      (sum, weight, i) => sum + ((whole[i] ?? NaN) - (eye[i] ?? NaN) <= 120 ? weight : 0),
      0,
    );
    expect(Math.abs(share - expected)).toBeLessThan(0.0001);
  });

  it.each(Object.keys(ON_STATURE) as Measure[])('%s on stature is the least-squares line', (measure) => {
    const values = derived(survey, measure);
    for (const population of POPULATIONS) {
      const line = fitLine(survey.column('stature'), values, weightsOf(survey, population));
      const committed = ON_STATURE[measure][population];
      expect(committed.slope).toBeCloseTo(line.slope, 6);
      expect(committed.intercept).toBeCloseTo(line.intercept, 3);
      expect(Math.abs(committed.residual - line.residual)).toBeLessThan(0.0051);
    }
  });

  it('has the committed percentiles of stature', () => {
    const stature = survey.column('stature');
    const weights = weightsOf(survey, 'pooled');
    const [women, men] = [inGroup(survey, stature, 'F'), inGroup(survey, stature, 'M')];
    for (let p = 1; p <= 99; p++) {
      expect(statureAt('female', p)).toBeCloseTo(percentile(women, p / 100), 2);
      expect(statureAt('male', p)).toBeCloseTo(percentile(men, p / 100), 2);
      expect(statureAt('pooled', p)).toBe(weightedPercentile(stature, weights, p / 100));
    }
  });

  it('has the committed ends of arm length', () => {
    const arms = derived(survey, 'armLength');
    const ends = (values: number[]) => [percentile(values, 0.05), percentile(values, 0.95)];
    const [women, men] = [ends(inGroup(survey, arms, 'F')), ends(inGroup(survey, arms, 'M'))];
    const weights = weightsOf(survey, 'pooled');
    const both = [weightedPercentile(arms, weights, 0.05), weightedPercentile(arms, weights, 0.95)];
    const found = { female: women, male: men, pooled: both };
    for (const population of POPULATIONS) {
      ARM_LENGTH_ENDS[population].forEach((end, index) =>
        expect(Math.abs(end - (found[population][index] ?? NaN))).toBeLessThan(0.0501),
      );
    }
  });
});

/** The derived measures by their definitions in shared-model/catalogue/survey.ts. */
function derived(survey: Survey, measure: Measure): number[] {
  const column = (name: string) => survey.column(name);
  const combine = (names: readonly string[], of: (values: number[]) => number): number[] => {
    const columns = names.map(column);
    return survey.sex.map((_, row) => of(columns.map((values) => values[row] ?? NaN)));
  };
  const plain = (name: string) => combine([name], ([value]) => value ?? NaN);
  const aboveSeat = (name: string) =>
    combine([name, 'stature', 'sittingheight'], ([h = NaN, s = NaN, sit = NaN]) => h - (s - sit));
  const measures: Record<Measure, () => number[]> = {
    standingEyeHeight: () =>
      combine(
        ['stature', 'sittingheight', 'eyeheightsitting'],
        ([s = NaN, sit = NaN, eye = NaN]) => s - (sit - eye),
      ),
    shoulderHeight: () => plain('acromialheight'),
    waistHeight: () => plain('waistheightomphalion'),
    sittingHeight: () => plain('sittingheight'),
    sittingEyeHeight: () => plain('eyeheightsitting'),
    sittingShoulderHeight: () => aboveSeat('acromialheight'),
    sittingWaistHeight: () => aboveSeat('waistheightomphalion'),
    shoulderBreadth: () => plain('bideltoidbreadth'),
    biacromialBreadth: () => plain('biacromialbreadth'),
    elbowBreadth: () => plain('forearmforearmbreadth'),
    armLength: () =>
      combine(['span', 'biacromialbreadth'], ([span = NaN, breadth = NaN]) => (span - breadth) / 2),
    thumbtipReach: () => plain('thumbtipreach'),
    headBreadth: () => plain('headbreadth'),
    headLength: () => plain('headlength'),
  };
  return measures[measure]();
}
