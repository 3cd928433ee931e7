/** Sizes of lines and letters on paper, in mm. One home: nothing else in the drawings names a weight or a size. */

/** Line widths of ISO 128-2 (from memory): steps of the square root of two. */
export const WEIGHT = {
  hair: 0.13,
  thin: 0.18,
  fine: 0.25,
  medium: 0.35,
  bold: 0.5,
  heavy: 0.7,
} as const;

/** Font sizes. None is under 7 pt (2.47 mm), so that a plot held at arm's length can still be read. */
export const TEXT = {
  /** Notes on the drawing, title-block captions: 7.4 pt. */
  small: 2.6,
  /** Labels, tables and running text: 8.8 pt. */
  body: 3.1,
  /** Words that orient: HOUSE, STAGE LEFT: 9.6 pt. */
  strong: 3.4,
  /** Headings: 12.5 pt. */
  heading: 4.4,
  /** The title of a sheet: 17 pt. */
  title: 6,
} as const;

/** Room above and below the baseline that a line of text takes up, in font sizes. */
export const ASCENT = 0.8;
export const DESCENT = 0.24;

/** Height of capitals and figures above the baseline, in font sizes: for centring text in bubbles. */
export const CAP_HEIGHT = 0.67;

/** From one baseline to the next, in font sizes. */
export const LEADING = 1.36;

/** Dash patterns, on and off in mm. */
export const DASH = {
  /** Chain line, for the centre line. */
  chain: [6, 1.2, 1, 1.2],
  dashed: [2, 1],
  short: [1, 0.8],
  dotted: [0.3, 0.9],
} as const satisfies Record<string, readonly number[]>;
