/** Refusals in the units that are shown. */

import type { Units } from '../document/measures.ts';
import type { Refusal } from './command.ts';

/** One sentence for people. */
export function refusalWords({ reason, imperial = reason }: Refusal, units: Units): string {
  return units === 'imperial' ? imperial : reason;
}
