/** Exact fractions: MusicXML counts in divisions of a quarter that differ from part to part, and a rest ends where the next note begins. */

import { Refusal } from './problem.ts';

/** In lowest terms, the denominator positive. */
export interface Fraction {
  readonly n: number;
  readonly d: number;
}

export const ZERO: Fraction = { n: 0, d: 1 };

/** Throws `Refusal` when the parts grow beyond what numbers hold exactly. */
export function fraction(n: number, d = 1): Fraction {
  if (!Number.isSafeInteger(n) || !Number.isSafeInteger(d)) throw new Refusal({ code: 'number.range' });
  const divisor = d === 1 ? 1 : greatestDivisor(Math.abs(n), Math.abs(d)) * Math.sign(d);
  return divisor === 1 ? { n, d } : { n: n / divisor, d: d / divisor };
}

export function plus(a: Fraction, b: Fraction): Fraction {
  return a.d === b.d ? fraction(a.n + b.n, a.d) : fraction(a.n * b.d + b.n * a.d, a.d * b.d);
}

export function minus(a: Fraction, b: Fraction): Fraction {
  return plus(a, { n: -b.n, d: b.d });
}

export function times(a: Fraction, b: Fraction): Fraction {
  return fraction(a.n * b.n, a.d * b.d);
}

/** `b` is not zero. */
export function over(a: Fraction, b: Fraction): Fraction {
  return times(a, b.n < 0 ? { n: -b.d, d: -b.n } : { n: b.d, d: b.n });
}

/** Negative: a comes first. */
export function compare(a: Fraction, b: Fraction): number {
  return a.d === b.d ? a.n - b.n : a.n * b.d - b.n * a.d;
}

export function later(a: Fraction, b: Fraction): Fraction {
  return compare(a, b) < 0 ? b : a;
}

/** "4" or "7/2". */
export function fractionText({ n, d }: Fraction): string {
  return d === 1 ? String(n) : `${n}/${d}`;
}

export function leastMultiple(a: number, b: number): number {
  return (a / greatestDivisor(a, b)) * b;
}

const DECIMAL = /^([+-]?)(\d{1,12})(?:\.(\d{0,9}))?$/;

/** A decimal number as XML Schema writes it; null for anything else. */
export function decimal(text: string): Fraction | null {
  const [match, sign, whole = '', part = ''] = DECIMAL.exec(text.trim()) ?? [];
  if (match === undefined) return null;
  const digits = part.replace(/0+$/, '');
  return fraction(Number(`${sign}${whole}${digits}`), 10 ** digits.length);
}

function greatestDivisor(a: number, b: number): number {
  let [x, y] = [a, b];
  while (y !== 0) [x, y] = [y, x % y];
  return x || 1;
}
