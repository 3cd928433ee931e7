/** Bands of visible share. */

import type { SightBand } from '../report.ts';

/**
 * Lower bounds of the bands bad, reduced, acceptable, good, excellent, as shares.
 * Source: sightline study for the auditorium of the India International Convention and Expo Centre (published
 * consultancy study): under 25 %, 25-50, 50-75, 75-90, and "over 89.99 %", taken here as 90 % and more.
 */
export const BAND_FLOORS = [0, 0.25, 0.5, 0.75, 0.9] as const;

/** A share this near below a bound counts as the bound: rounding must not move a seat into the worse band. */
const ROUNDING = 1e-9;

export function bandOf(share: number): SightBand {
  let band: SightBand = 0;
  BAND_FLOORS.forEach((floor, index) => {
    if (share >= floor - ROUNDING) band = index as SightBand;
  });
  return band;
}
