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
