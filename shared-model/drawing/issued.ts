/** Days on a print: of its issue and of the concert. */

import type { Units } from '../document/measures.ts';
import { dayIn, type DayLength } from '../document/regions.ts';
import { language } from '../words/catalogue.ts';

/** "2026-03-07", of the clock and calendar of whoever prints. */
export function dayOf(now: Date): string {
  const [year, month, day] = [now.getFullYear(), now.getMonth() + 1, now.getDate()];
  return `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
}

/**
 * A day as those who get the print write it, by its language and the units of the concert; words that are not a day
 * ("in the spring") as they are.
 */
export function dayOnPrint(words: string, units: Units, length: DayLength): string {
  const region = units === 'imperial' ? 'en-US' : 'en-GB';
  return dayIn(language() === 'de' ? 'de-DE' : region, words, length);
}
