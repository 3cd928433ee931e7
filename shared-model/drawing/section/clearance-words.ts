/** Clearances as they are printed. */

import { clearanceLevel } from '../../checks/sightlines/rake-clearance.ts';
import type { Units } from '../../document/measures.ts';
import type { Millimetres } from '../../document/records.ts';
import { fixed } from '../../words/numbers.ts';

/** "72", "−79", "2.8": no figure is rounded up into a better band. */
export function clearanceWords(clearance: Millimetres, units: Units): string {
  const step = units === 'metric' ? 1 : 2.54;
  const nearest = Math.round(clearance / step);
  const count =
    clearanceLevel(nearest * step) > clearanceLevel(clearance) ? Math.floor(clearance / step) : nearest;
  const words = units === 'metric' ? String(Math.abs(count)) : fixed(Math.abs(count) / 10, 1);
  return count < 0 ? `−${words}` : words;
}
