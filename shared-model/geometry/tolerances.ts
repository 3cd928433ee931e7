/**
 * Every tolerance of the geometry, in one home. Lengths are millimetres.
 *
 * Coordinates are at most some 1e6 mm, where doubles resolve about 1e-10 mm and a cross product of two edges is
 * good to about 1e-4 mm2. The tolerances lie well above that and well below anything that can be set on a stage.
 */

/** Two outlines nearer than this touch; outlines that enter each other by less do not overlap. */
export const TOUCHING = 0.01;

/** Two points nearer than this are one point. */
export const SAME_POINT = 1e-6;

/** A polygon with less area than this (mm2) has none. */
export const NO_AREA = 1e-6;

/** What is nearer to the eye than this, measured along the view, throws no shadow. Keeps 1 / depth finite. */
export const NEAR_EYE = 1e-3;

/**
 * A round body that reaches past the window's plane by less than this counts as in front of it. Bodies placed on
 * round numbers often just touch that plane; without the margin, rounding would choose between two outlines.
 */
export const PAST_WINDOW = 1e-6;

/** Two heights in a window of height 1 that differ by less than this are equal. */
export const SAME_HEIGHT = 1e-12;

/** Across a window of width 1, what is nearer than this is at one place, and a sweep moves on by at least this. */
export const LEAST_STEP = 1e-13;
