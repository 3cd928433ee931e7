/** The survey's columns, when the data lie beside the checkout, and what statistics the tests want of them. */

import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const FILE = fileURLToPath(new URL('../../../../shared/data/ansur2-columns.csv', import.meta.url));

export const surveyIsThere = existsSync(FILE);

/** Says so in the test's output when the survey is missing: those tests do not run then. */
export function sayIfMissing(): void {
  if (!surveyIsThere) console.warn('NOT RUN: ansur2-columns.csv does not lie beside this checkout.');
}

export interface Survey {
  readonly sex: readonly string[];
  readonly column: (name: string) => number[];
}

export function readSurvey(): Survey {
  const [head = '', ...lines] = readFileSync(FILE, 'utf8').trim().split(/\r?\n/);
  const names = head.split(',');
  const rows = lines.map((line) => line.split(','));
  return {
    sex: rows.map((row) => row[0] ?? ''),
    column: (name) => rows.map((row) => Number(row[names.indexOf(name)])),
  };
}

export type Group = 'F' | 'M' | 'pooled';

export function inGroup(survey: Survey, values: readonly number[], group: Group): number[] {
  return values.filter((_, index) => group === 'pooled' || survey.sex[index] === group);
}

export function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

export function deviation(values: readonly number[]): number {
  const middle = mean(values);
  return Math.sqrt(values.reduce((sum, value) => sum + (value - middle) ** 2, 0) / (values.length - 1));
}

/** Linear interpolation, h = (n - 1) p + 1. */
export function percentile(values: readonly number[], p: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  const place = (sorted.length - 1) * p;
  const [low, high] = [sorted[Math.floor(place)] ?? NaN, sorted[Math.ceil(place)] ?? NaN];
  return low + (high - low) * (place - Math.floor(place));
}

/** Weights that sum to 1: one sex alone, or both with the sexes weighted equally. */
export function weightsOf(survey: Survey, population: 'female' | 'male' | 'pooled'): number[] {
  const women = survey.sex.filter((sex) => sex === 'F').length;
  const men = survey.sex.length - women;
  const share = { female: [1, 0], male: [0, 1], pooled: [0.5, 0.5] }[population];
  return survey.sex.map((sex) => (sex === 'F' ? (share[0] ?? 0) / women : (share[1] ?? 0) / men));
}

/** The least value that at least the share p of the weight does not exceed. */
export function weightedPercentile(values: readonly number[], weights: readonly number[], p: number): number {
  const order = values.map((_, index) => index).sort((a, b) => (values[a] ?? 0) - (values[b] ?? 0));
  let sum = 0;
  for (const index of order) {
    sum += weights[index] ?? 0;
    if (sum >= p - 1e-12) return values[index] ?? NaN;
  }
  return NaN;
}

/** Weighted least squares y = intercept + slope x. */
export function fitLine(x: readonly number[], y: readonly number[], weights: readonly number[]) {
  const average = (of: (index: number) => number) =>
    weights.reduce((sum, weight, index) => sum + weight * of(index), 0);
  const at = (values: readonly number[], index: number) => values[index] ?? NaN;
  const [mx, my] = [average((i) => at(x, i)), average((i) => at(y, i))];
  const slope = average((i) => (at(x, i) - mx) * (at(y, i) - my)) / average((i) => (at(x, i) - mx) ** 2);
  const intercept = my - slope * mx;
  const residual = Math.sqrt(average((i) => (at(y, i) - intercept - slope * at(x, i)) ** 2));
  return { slope, intercept, residual };
}
