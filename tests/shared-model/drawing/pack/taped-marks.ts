/** Setting a mark again from printed distances. */

import type { Units } from '#model/document/measures.ts';
import type { Point } from '#model/document/records.ts';

export interface Tape {
  readonly from: Point;
  readonly distance: number;
}

/** Where two circles meet, to the left of the line from the first point to the second. */
export function setByTapes(first: Tape, second: Tape): Point {
  const [dx, dy] = [second.from.x - first.from.x, second.from.y - first.from.y];
  const base = Math.hypot(dx, dy);
  const along = (base * base + first.distance ** 2 - second.distance ** 2) / (2 * base);
  const aside = Math.sqrt(Math.max(0, first.distance ** 2 - along * along));
  return {
    x: first.from.x + (dx * along - dy * aside) / base,
    y: first.from.y + (dy * along + dx * aside) / base,
  };
}

/** Millimetres of "4635", "6124.1", `15'-2 3/4"`. */
export function lengthIn(words: string, units: Units): number {
  if (units === 'metric') return Number(words);
  const [, feet, inches, numerator = '0', denominator = '1'] =
    /^(\d+)'-(\d+)(?: (\d+)\/(\d+))?"$/.exec(words) ?? [];
  return (Number(feet) * 12 + Number(inches) + Number(numerator) / Number(denominator)) * 25.4;
}
