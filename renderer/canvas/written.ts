/** Where something is written on the plan. */

import { grownBox, textBoxes } from '#model/drawing/bounds.ts';
import type { MeasureText, Primitive } from '#model/drawing/primitives.ts';
import type { Extent } from './camera.ts';

/** Round a text, for what is drawn about it: the bubble of a mark, the plate of a line. In mm on paper. */
const ROUND_WORDS = 0.8;

/** Boxes round all texts of a drawing about the stage's origin, in mm of the stage. */
export function writtenIn(
  drawn: readonly Primitive[],
  paperScale: number,
  measure: MeasureText,
): readonly Extent[] {
  return textBoxes(drawn, measure).map((text) => {
    const { x, y, width, height } = grownBox(text, ROUND_WORDS);
    // On paper y runs down, on the stage up.
    return {
      x: x * paperScale,
      y: -(y + height) * paperScale,
      width: width * paperScale,
      height: height * paperScale,
    };
  });
}
