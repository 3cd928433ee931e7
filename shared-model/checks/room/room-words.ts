/** What sentences about ways out share. */

import { formatApart, formatLength, type Units } from '../../document/measures.ts';
import type { Finding } from '../finding.ts';
import { CLEAR_WIDTH, PINCH_LENGTH, PINCH_WIDTH } from './pinch-points.ts';

/** Whose word counts. Ends every sentence about something on which people can be hurt. */
export const WHO_DECIDES = 'Local codes, the venue and licensed practice decide.';

/** How narrow a way is, how wide it was to be, and the clear width that `pinchWords` name: no two read alike. */
export function narrowFigures(
  { measured, required }: Finding,
  units: Units,
): readonly [string, string, string] {
  return formatApart([measured, required, CLEAR_WIDTH], units);
}

/** What the standard says of short narrow places, where the way has no others. */
export function pinchWords(finding: Finding, units: Units): string {
  if (finding.detail['pinch'] !== 'pinch') return '';
  const [, , clear] = narrowFigures(finding, units);
  const [pinch, length] = [formatLength(PINCH_WIDTH, units), formatLength(PINCH_LENGTH, units)];
  return ` ADA/ABA 403.5.1 speaks of ${clear}, and of ${pinch} over at most ${length}.`;
}
