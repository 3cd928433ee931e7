/** What a place that is no seat is for. */

import type { Place } from '../../document/records.ts';
import { t } from '../../words/say.ts';

const USE_WORDS: Readonly<Record<Place['use'], () => string>> = {
  standing: () => t`standing`,
  wheelchair: () => t`wheelchair`,
  camera: () => t`camera`,
};

export function useWords({ use }: Place): string {
  return USE_WORDS[use]();
}

/** "Balcony rail: standing" */
export function placeDescription(place: Place): string {
  return `${place.name || t`Place`}: ${useWords(place)}`;
}
