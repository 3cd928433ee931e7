/** Refused lengths, shares and times as the window tells them: in the units that are typed there. */

import * as v from 'valibot';
import { formatLength, type Units } from '../document/measures.ts';
import type { Kind, Millimetres } from '../document/records.ts';
import { atMost } from '../words/numbers.ts';
import { t } from '../words/say.ts';
import { toldAs, type Complaint } from './complaint.ts';
import { fieldTree, patternOf } from './field-tree.ts';
import type { Measure } from './fields.ts';

/** The complaint with what to tell a person, where the schema says what its field measures and a number was refused. */
export function measureTold(kind: Kind, complaint: Complaint, { input }: v.BaseIssue<unknown>): Complaint {
  const measure = measureOf(kind, complaint.field);
  if (!measure || typeof input !== 'number' || !Number.isFinite(input)) return complaint;
  return { ...complaint, ...toldAs((units) => TOLD[measure.of](input, measure, units)) };
}

function measureOf(kind: Kind, path: string): Measure | null {
  for (const schema of fieldTree(kind).get(patternOf(path)) ?? []) {
    const { measure } = v.getMetadata(schema as Parameters<typeof v.getMetadata>[0]);
    if (measure) return measure as Measure;
  }
  return null;
}

const TOLD: Readonly<Record<Measure['of'], (given: number, range: Measure, units: Units) => string>> = {
  length: (given, { least, most }, units) =>
    units === 'metric'
      ? refused(millimetres(given), lengthFrom(millimetres(least), millimetres(most)))
      : refused(formatLength(given, units), aboutFrom(formatLength(least, units), formatLength(most, units))),
  share: (given, { least, most }) =>
    refused(percent(given), shareFrom(atMost(100 * least, 0), percent(most))),
  seconds: (given, { most }) => refused(atMost(given, 2), secondsUpTo(atMost(most, 0))),
};

function refused(given: string, advice: string): string {
  return t`: ${given} is not allowed; ${advice}`;
}

function lengthFrom(least: string, most: string): string {
  return t`give a length from ${least} to ${most}`;
}

/** In feet and inches the limits are no round figures. */
function aboutFrom(least: string, most: string): string {
  return t`give a length from about ${least} to about ${most}`;
}

function shareFrom(least: string, most: string): string {
  return t`give a share from ${least} to ${most}`;
}

function secondsUpTo(most: string): string {
  return t`give a time from 0 to ${most} seconds, or nothing when it is not known`;
}

function millimetres(length: Millimetres): string {
  return `${atMost(length, 2)} mm`;
}

function percent(share: number): string {
  return `${atMost(100 * share, 2)} %`;
}
