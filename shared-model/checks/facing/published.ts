/** Every constant of the facing check with its source. How far one turns with what is in ../reading/gaze.ts. */

import type { Degrees } from '../../document/records.ts';

/**
 * Half of the horizontal field of vision: a partner inside it is still noticed without turning. Source: CIE
 * International Lighting Vocabulary, nearly 190° with both eyes.
 */
export const HALF_FIELD: Degrees = 190 / 2;

/** Who faces so far from the house is in profile. From memory; the word says it. */
export const PROFILE: Degrees = 90;
