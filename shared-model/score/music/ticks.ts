/** A common measure for all lengths of a score. */

import { leastMultiple, type Fraction } from '../fraction.ts';

/** Finer than any notation; ticks of hours of music stay far below what numbers hold exactly. */
const FINEST = 2 ** 24;
/** For divisions without a common measure: thirds, fifths, sevenths and 1024th notes still come out exactly. */
const FALLBACK = 2 ** 8 * 3 ** 2 * 5 * 7;

export interface Ticks {
  readonly perQuarter: number;
  /** Some edges had to be rounded. */
  readonly rounded: boolean;
}

export function ticksFor(values: Iterable<Fraction>): Ticks {
  let perQuarter = 1;
  for (const { d } of values) {
    if (perQuarter % d === 0) continue;
    perQuarter = leastMultiple(perQuarter, d);
    if (perQuarter > FINEST) return { perQuarter: FALLBACK, rounded: true };
  }
  return { perQuarter, rounded: false };
}

/** Exact unless the ticks are rounded. */
export function inTicks({ n, d }: Fraction, { perQuarter }: Ticks): number {
  return Math.round((n * perQuarter) / d);
}
