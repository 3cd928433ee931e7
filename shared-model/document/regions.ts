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

/** Empty when the tag names none: a language alone is spoken in many. */
function regionOf(tag: string): string {
  try {
    return new Intl.Locale(tag).region ?? '';
  } catch {
    return '';
  }
}
