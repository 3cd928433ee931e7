/** Sizes of a time strip in pixels. */

export const STRIP = {
  ruler: 34,
  lane: 30,
  /** Of a page within its lane. */
  pageTop: 8,
  pageBottom: 27,
  /** The line that says how long there is for a turn. */
  windowLine: 4,
  text: 12,
  smallText: 11,
  /** How near to a turn a click has to be. */
  near: 9,
} as const;
