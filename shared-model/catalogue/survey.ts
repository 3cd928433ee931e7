/**
 * What stature says about the rest of a body: straight lines fitted to the survey.
 *
 * Source: ANSUR II (see sources.ts), 1986 women and 4082 men, barefoot, erect. Least squares on stature; `pooled`
 * weighs the sexes equally. `residual` is the standard deviation of what stature does not explain. Derived measures:
 * arm = (span - biacromial breadth) / 2, so from the shoulder joint and not from the wall behind the back; heights
 * above the seat = standing height - (stature - sitting height); eye to crown = sitting height - sitting eye height.
 * tests/shared-model/catalogue/survey.test.ts fits them again where the survey lies beside the checkout.
 */

import type { Millimetres, Population } from '../document/records.ts';

export interface Line {
  readonly slope: number;
  readonly intercept: Millimetres;
  readonly residual: Millimetres;
}

export const ON_STATURE = {
  standingEyeHeight: {
    female: { slope: 0.954425, intercept: -34.722, residual: 7.61 },
    male: { slope: 0.962439, intercept: -47.8117, residual: 8.61 },
    pooled: { slope: 0.960346, intercept: -44.2499, residual: 8.13 },
  },
  shoulderHeight: {
    female: { slope: 0.879321, intercept: -96.8549, residual: 13.65 },
    male: { slope: 0.892614, intercept: -126.885, residual: 16.16 },
    pooled: { slope: 0.857853, intercept: -63.8661, residual: 15.21 },
  },
  waistHeight: {
    female: { slope: 0.708171, intercept: -173.0892, residual: 20.86 },
    male: { slope: 0.691175, intercept: -157.3659, residual: 21.8 },
    pooled: { slope: 0.65032, intercept: -82.2475, residual: 21.85 },
  },
  sittingHeight: {
    female: { slope: 0.393495, intercept: 215.8304, residual: 21.31 },
    male: { slope: 0.405699, intercept: 205.7954, residual: 22.38 },
    pooled: { slope: 0.439756, intercept: 143.2389, residual: 22.18 },
  },
  sittingEyeHeight: {
    female: { slope: 0.34792, intercept: 181.1084, residual: 20.59 },
    male: { slope: 0.368138, intercept: 157.9837, residual: 21.51 },
    pooled: { slope: 0.400102, intercept: 98.989, residual: 21.43 },
  },
  sittingShoulderHeight: {
    female: { slope: 0.272815, intercept: 118.9755, residual: 21.63 },
    male: { slope: 0.298313, intercept: 78.9104, residual: 23.07 },
    pooled: { slope: 0.297609, intercept: 79.3728, residual: 22.4 },
  },
  sittingWaistHeight: {
    female: { slope: 0.101666, intercept: 42.7412, residual: 19.54 },
    male: { slope: 0.096874, intercept: 48.4295, residual: 20.08 },
    pooled: { slope: 0.090076, intercept: 60.9914, residual: 19.83 },
  },
  shoulderBreadth: {
    female: { slope: 0.160384, intercept: 189.1431, residual: 26.77 },
    male: { slope: 0.148388, intercept: 249.8233, residual: 30.87 },
    pooled: { slope: 0.3061, intercept: -37.6517, residual: 32.36 },
  },
  biacromialBreadth: {
    female: { slope: 0.161214, intercept: 102.8161, residual: 15.09 },
    male: { slope: 0.148637, intercept: 154.6372, residual: 16.23 },
    pooled: { slope: 0.269598, intercept: -65.7404, residual: 19.16 },
  },
  elbowBreadth: {
    female: { slope: 0.188774, intercept: 187.4149, residual: 39.17 },
    male: { slope: 0.157526, intercept: 303.2785, residual: 49.76 },
    pooled: { slope: 0.409574, intercept: -155.7617, residual: 50.24 },
  },
  armLength: {
    female: { slope: 0.448686, intercept: -83.2039, residual: 21.83 },
    male: { slope: 0.433795, intercept: -62.5983, residual: 22.25 },
    pooled: { slope: 0.423703, intercept: -43.6963, residual: 22.11 },
  },
  thumbtipReach: {
    female: { slope: 0.446817, intercept: 16.3752, residual: 31.69 },
    male: { slope: 0.440377, intercept: 38.5283, residual: 31.56 },
    pooled: { slope: 0.485831, intercept: -44.2273, residual: 31.89 },
  },
  headBreadth: {
    female: { slope: 0.012637, intercept: 127.1897, residual: 5.13 },
    male: { slope: 0.006056, intercept: 143.6943, residual: 5.52 },
    pooled: { slope: 0.029428, intercept: 101.2468, residual: 5.67 },
  },
  headLength: {
    female: { slope: 0.041527, intercept: 122.1945, residual: 6.95 },
    male: { slope: 0.037822, intercept: 133.0804, residual: 6.53 },
    pooled: { slope: 0.056981, intercept: 98.2301, residual: 6.95 },
  },
} as const satisfies Record<string, Readonly<Record<Population, Line>>>;

export type Measure = keyof typeof ON_STATURE;

/** The mean of a measure among people of this stature, mm. */
export function predict(measure: Measure, population: Population, stature: Millimetres): Millimetres {
  const { slope, intercept } = ON_STATURE[measure][population];
  return slope * stature + intercept;
}
