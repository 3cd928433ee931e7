/** What is usual where somebody is: read from a language tag with a region, such as "en-US". */

import type { Units } from './measures.ts';

/** Regions that measure in feet and inches. Unicode CLDR 48, supplemental data, measurementSystem "US". */
const IMPERIAL = ['LR', 'US'];

/** Regions that write on Letter. Unicode CLDR 48, supplemental data, paperSize "US-Letter". */
const LETTER = ['BZ', 'CA', 'CL', 'CO', 'CR', 'GT', 'MX', 'NI', 'PA', 'PH', 'PR', 'SV', 'US', 'VE'];

export function unitsIn(tag: string): Units {
  return IMPERIAL.includes(regionOf(tag)) ? 'imperial' : 'metric';
}

export function paperIn(tag: string): 'A4' | 'Letter' {
  return LETTER.includes(regionOf(tag)) ? 'Letter' : 'A4';
}

/** With the month as a word where there is room for it. */
export type DayLength = 'short' | 'long';

/**
 * "2026-11-26" as it is written in a region: "26.11.2026", "26/11/2026" or "26 November 2026", "Nov 26, 2026". What is not
 * such a day stays as it is.
 */
export function dayIn(tag: string, day: string, length: DayLength): string {
  const [, year, month, date] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(day.trim()) ?? [];
  if (year === undefined || month === undefined || date === undefined) return day;
  const at = Date.UTC(Number(year), Number(month) - 1, Number(date));
  const named = new Intl.DateTimeFormat('en-US', { timeZone: 'UTC' }).format(at);
  // The 31st of February would become a day in March.
  if (named !== [month, date, year].map(Number).join('/')) return day;
  return new Intl.DateTimeFormat(tag, { ...formOf(tag, length), timeZone: 'UTC' }).format(at);
}

const NUMERIC = { year: 'numeric', month: '2-digit', day: '2-digit' } as const;

/** Figures alone are read one way in Germany and Britain each, but Americans and Britons read them differently. */
function formOf(tag: string, length: DayLength): Intl.DateTimeFormatOptions {
  if (regionOf(tag) === 'US') return { year: 'numeric', month: 'short', day: 'numeric' };
  if (length === 'short' || regionOf(tag) === 'DE') return NUMERIC;
  return { year: 'numeric', month: 'long', day: 'numeric' };
}

/** Empty when the tag names none: a language alone is spoken in many. */
function regionOf(tag: string): string {
  try {
    return new Intl.Locale(tag).region ?? '';
  } catch {
    return '';
  }
}
