/** How far the arrow keys move things: a round figure in the units that are shown. */

import type { Units } from '#model/document/measures.ts';

const INCH = 25.4;

export interface Steps {
  readonly fine: number;
  /** With Shift. */
  readonly coarse: number;
}

export const STEPS: Readonly<Record<Units, Steps>> = {
  metric: { fine: 10, coarse: 100 },
  imperial: { fine: INCH / 2, coarse: 6 * INCH },
};
