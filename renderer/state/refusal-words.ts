/** Refusals in the units that are shown: commands speak of lengths in the millimetres of the file. */

import { formatLength, type Units } from '#model/document/measures.ts';

/** "stand 3, lip: 9000 is not allowed; give a length from 100 to 2500 mm." Staves are in millimetres everywhere. */
const LENGTH_REFUSED =
  /(?<!staffSize): (-?[\d.]+) is not allowed; give a length from (-?[\d.]+) to (-?[\d.]+) mm/;

/** "Viola would be more than 50000 mm from the platform". */
const TOO_FAR = /more than (\d+) mm from the platform/;

/** The limits become "about" so much, for in feet and inches they are no round figures. */
export function refusalWords(reason: string, units: Units): string {
  if (units === 'metric') return reason;
  const inUnits = (length: string): string => formatLength(Number(length), units);
  return reason
    .replace(TOO_FAR, (_, limit: string) => `more than about ${inUnits(limit)} from the platform`)
    .replace(
      LENGTH_REFUSED,
      (_, given: string, least: string, most: string) =>
        `: ${inUnits(given)} is not allowed; give a length from about ${inUnits(least)} to about ${inUnits(most)}`,
    );
}
