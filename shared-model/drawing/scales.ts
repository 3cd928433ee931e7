/** Standard drawing scales: the only ones a plot is offered in. A scale is named by its denominator: 50 for 1:50. */

import type { Units } from '../document/measures.ts';
import { t } from '../words/say.ts';

/** Reductions recommended by ISO 5455:1979, as far as a stage needs them. */
export const ISO_SCALES: readonly number[] = [10, 20, 50, 100, 200, 500];

/**
 * The scales of the architect's and, beyond them, of the engineer's rule (draughting practice, as in check-values
 * section 6; the engineer's from memory), each by the name it is known by.
 */
const IMPERIAL_NAMES: ReadonlyMap<number, string> = new Map([
  [12, '1" = 1\'-0"'],
  [16, '3/4" = 1\'-0"'],
  [24, '1/2" = 1\'-0"'],
  [32, '3/8" = 1\'-0"'],
  [48, '1/4" = 1\'-0"'],
  [64, '3/16" = 1\'-0"'],
  [96, '1/8" = 1\'-0"'],
  [128, '3/32" = 1\'-0"'],
  [192, '1/16" = 1\'-0"'],
  [240, '1" = 20\'-0"'],
  [480, '1" = 40\'-0"'],
]);

export const IMPERIAL_SCALES: readonly number[] = [...IMPERIAL_NAMES.keys()];

/** Used in some metric countries but not recommended by ISO 5455; printed only when asked for by number. */
export const NON_ISO_SCALES: readonly number[] = [25, 250];

/** The scales offered in these units, largest drawing first. Imperial plans take a metric ratio only beyond all others. */
export function offeredScales(units: Units): readonly number[] {
  return units === 'metric' ? ISO_SCALES : [...IMPERIAL_SCALES, 500];
}

/** Whether a plot can be asked for in this scale at all. */
export function isKnownScale(scale: number): boolean {
  return [ISO_SCALES, IMPERIAL_SCALES, NON_ISO_SCALES].some((list) => list.includes(scale));
}

/** The largest offered drawing that `fits`; null when none does. */
export function largestScale(units: Units, fits: (scale: number) => boolean): number | null {
  return offeredScales(units).find(fits) ?? null;
}

/** As ISO 5455 wants it written on the sheet: "SCALE 1:50"; with a remark where it is not one of that standard's. */
export function scaleDesignation(scale: number): string {
  const name = IMPERIAL_NAMES.get(scale);
  if (name) return t`SCALE 1:${scale} (${name})`;
  return NON_ISO_SCALES.includes(scale) ? t`SCALE 1:${scale} (not an ISO 5455 scale)` : t`SCALE 1:${scale}`;
}
