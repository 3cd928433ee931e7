/**
 * Shares are given in steps of 2^-30, about a thousand-millionth of a window. That is far more than what rounding does
 * to an area and far less than anything that can be seen; so two ways of computing one area give one and the same share,
 * unless the area lies so near to the middle between two steps that rounding might decide (`isBetweenSteps`).
 */

const STEPS = 2 ** 30;

/**
 * More than two ways of computing an area can differ. An area is a sum of up to some hundred products of heights and widths
 * up to 1, from heights that are kept below TALLEST; each is rounded to 2^-53 of its size, and heights that are equal within
 * SAME_HEIGHT (1e-12) may be taken in either order.
 */
const ROUNDING = 2 ** -38;

/** Shadows that reach farther above or below the window, in its heights, are too coarsely rounded for ROUNDING to hold. */
export const TALLEST = 16;

/** The share (0..1) for an uncovered area. */
export function shareOfArea(area: number): number {
  return Math.max(0, Math.round(area * STEPS)) / STEPS;
}

/** Whether another way of computing the same area might give the next step. */
export function isBetweenSteps(area: number): boolean {
  const steps = area * STEPS;
  return Math.abs(steps - Math.round(steps)) > 0.5 - ROUNDING * STEPS;
}
