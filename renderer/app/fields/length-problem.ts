/** Why a typed length was not taken. */

import type { Units } from '#model/document/measures.ts';
import type { Axis, LengthReading } from '../../state/length-input.ts';
import { text } from '../text.ts';

type Refused = Extract<LengthReading, { readonly ok: false }>;

/** What may mean two things is told with both of them. `axis`: of a coordinate, the sides that it can have. */
export function lengthProblem(reading: Refused, units: Units, axis?: Axis): string {
  const words = text.properties;
  if (reading.problem === 'ambiguous') return words.twoReadings(...reading.readings);
  if (reading.problem === 'wrongSide' && axis) return words.wrongSide(axis.positive, axis.negative);
  return words.notALength[units];
}
