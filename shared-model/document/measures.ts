/** Lengths and positions in the words of the trade, metric or imperial. */

import { atMost, fixed } from '../words/numbers.ts';
import { t } from '../words/say.ts';
import type { Concert, Millimetres, Point } from './records.ts';

export type Units = Concert['units'];

export const INCH = 25.4;

/** "820 mm" or `2'-8 1/4"`; under a foot `7/8"`. */
export function formatLength(length: Millimetres, units: Units): string {
  if (units === 'metric') return `${Math.round(length)} mm`;
  const eighths = countOf(length, 8, units);
  return Math.abs(eighths) < 12 * 8 ? inchesAlone(eighths, 8) : feetAndInches(length);
}

/**
 * Lengths that are compared: all to the same part of a millimetre or an inch, the coarsest in which no two different
 * ones read alike. So what is less than its limit never reads as the limit.
 */
export function formatApart<const L extends readonly Millimetres[]>(
  lengths: L,
  units: Units,
): { readonly [K in keyof L]: string } {
  const parts = units === 'metric' ? METRIC_PARTS : INCH_PARTS;
  const finest = parts.at(-1) ?? 1;
  const different = new Set(lengths).size;
  const part = parts.find(
    (each) => new Set(lengths.map((one) => countOf(one, each, units))).size === different,
  );
  const counts = part ? lengths.map((one) => countOf(one, part, units)) : forcedApart(lengths, finest, units);
  const told = counts.map((count) => formatCompared(count, part ?? finest, units));
  return told as readonly string[] as { readonly [K in keyof L]: string };
}

/** Parts of a millimetre and of an inch, from the usual one on. */
const METRIC_PARTS = [1, 10, 100];
const INCH_PARTS = [4, 8, 16, 32, 64];

function countOf(length: Millimetres, part: number, units: Units): number {
  return Math.round((units === 'metric' ? length : length / INCH) * part);
}

/** What even the finest part does not tell apart reads as one such part more, from the least length on. */
function forcedApart(lengths: readonly Millimetres[], part: number, units: Units): number[] {
  const counts = new Map<Millimetres, number>();
  let last = -Infinity;
  for (const length of [...new Set(lengths)].sort((a, b) => a - b)) {
    last = Math.max(countOf(length, part, units), last + 1);
    counts.set(length, last);
  }
  return lengths.map((length) => counts.get(length) ?? NaN);
}

/** The same without the unit in metric, for tables whose heading names it. */
export function formatBare(length: Millimetres, units: Units): string {
  return units === 'metric' ? String(Math.round(length) || 0) : feetAndInches(length);
}

/** As `formatBare`, to a finer part of a millimetre or an inch: 10 for tenths of a millimetre, 32 for thirty-seconds of an inch. */
export function formatFine(length: Millimetres, units: Units, part: number): string {
  const count = countOf(length, part, units);
  if (units === 'imperial') return formatParts(count, part, units);
  return part === 1 ? String(count || 0) : fixed(count / part, 1);
}

/** "820 SL, 1450 US": from the centre line towards stage left or right, from the front edge up- or downstage. */
export function formatPosition(point: Point, units: Units): string {
  return `${formatAcross(point.x, units)}, ${formatDepth(point.y, units)}`;
}

export function formatAcross(x: Millimetres, units: Units): string {
  if (isZero(x, units)) return t`on centre`;
  const length = formatBare(Math.abs(x), units);
  return x > 0 ? t`${length} SL` : t`${length} SR`;
}

export function formatDepth(y: Millimetres, units: Units): string {
  if (isZero(y, units)) return t`at edge`;
  const length = formatBare(Math.abs(y), units);
  return y > 0 ? t`${length} US` : t`${length} DS`;
}

/** "straight at the house", "20° towards SR", "upstage"; to so many digits of a degree. */
export function formatFacing(facing: number, digits = 0): string {
  const parts = 10 ** digits;
  const turn = Math.round((((facing % 360) + 540) % 360) * parts) / parts - 180;
  if (turn === 0) return t`straight at the house`;
  if (Math.abs(turn) === 180) return t`upstage`;
  const degrees = atMost(Math.abs(turn), digits);
  return turn > 0 ? t`${degrees}° towards SL` : t`${degrees}° towards SR`;
}

function isZero(length: Millimetres, units: Units): boolean {
  return Math.abs(length) < (units === 'metric' ? 0.5 : INCH / 8);
}

/** To the nearest quarter of an inch. */
function feetAndInches(length: Millimetres): string {
  return formatParts(countOf(length, 4, 'imperial'), 4, 'imperial');
}

/** So many parts of a millimetre or of an inch in words. */
function formatParts(count: number, part: number, units: Units): string {
  if (units === 'metric') return `${atMost(count / part, 2)} mm`;
  const parts = Math.abs(count);
  const feet = Math.floor(parts / (12 * part));
  const inches = Math.floor((parts % (12 * part)) / part);
  return `${count < 0 ? '-' : ''}${feet}'-${inches}${fraction(parts % part, part)}"`;
}

/** In sentences small lengths have no feet. */
function formatCompared(count: number, part: number, units: Units): string {
  const isSmall = units === 'imperial' && Math.abs(count) < 12 * part;
  return isSmall ? inchesAlone(count, part) : formatParts(count, part, units);
}

/** `10 1/4"`, `7/8"`, `0"`. */
function inchesAlone(count: number, part: number): string {
  const parts = Math.abs(count);
  const inches = Math.floor(parts / part);
  const rest = fraction(parts % part, part);
  return `${count < 0 ? '-' : ''}${inches === 0 && rest !== '' ? rest.trimStart() : `${inches}${rest}`}"`;
}

/** " 3/4" for 6 of 8 parts; nothing for none. */
function fraction(count: number, part: number): string {
  if (count === 0) return '';
  return count % 2 === 0 ? fraction(count / 2, part / 2) : ` ${count}/${part}`;
}
