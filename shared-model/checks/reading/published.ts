/** Every constant of the reading check with its source, in one place. */

import type { Degrees, Millimetres } from '../../document/records.ts';

/**
 * Greatest angle between the line of sight and a page's normal: a display is never less than 45° to the line of sight.
 * Source: NUREG-0700 rev 3, 11.3.1, citing MIL-STD-1472G. Written for displays; no standard speaks of music.
 */
export const GREATEST_ANGLE: Degrees = 45;

/** From here on one looks at the page's edge or its back. */
export const EDGE_ON: Degrees = 90;

/**
 * Between the edge of a page and the lines on it. Source: MOLA guidelines, 1993 edition: an image of 8 x 11 in on
 * paper of 9.5 x 12.5 in, so 0.75 in on every side. A house style may be narrower (10 to 15 mm have been published).
 */
export const MARGIN: Millimetres = 0.75 * 25.4;

/** A staff has four spaces. */
export const SPACES_OF_STAFF = 4;

/** Printed staff sizes, bottom to top line. Source: MOLA, Guidelines for Music Preparation, 2017 edition, p. 5. */
export const STAFF = {
  /** Unacceptable below. */
  least: 7.0,
  /** Most readable for all instruments; from `least` up to here a wind player at his own stand may do. */
  good: 7.5,
  /** To be avoided above. */
  most: 8.5,
} as const;

/**
 * Least apparent height of lettering, minutes of arc. Sources: ISO 9241-3 and NUREG-0700 rev 2, 1.3.1-4. Holds for
 * the words and numbers of a part; no source gives a least angle for a staff.
 */
export const LEAST_LETTERING = 16;

/** Details on the height of a letter: strokes and gaps, as of the letters of eye charts (ISO 8596, Snellen). From memory. */
const DETAILS_OF_LETTER = 5;

/**
 * Least apparent height of a staff space, minutes of arc: 3.2, that of the details of the least lettering, some three
 * times what an eye of 20/20 tells apart (1 minute). That a staff space is such a detail is this tool's own step, and
 * so is the caution: no source gives a least angle for a staff. One of `STAFF.good` falls under it from 2.0 m on.
 */
export const LEAST_SPACE = LEAST_LETTERING / DETAILS_OF_LETTER;
