/**
 * About how much of the window the plan will have, before anything is laid out: by this the shell chooses how large to
 * write. Where the plan comes to lie is measured on the page itself.
 */

import type { PictureAsked } from '#contract/contract.ts';
import type { ViewSize } from '#model/drawing/screen/framing.ts';

/** Pixels: the bar, the tabs, the line with the view's tools, and the strip under it. */
const ABOVE_AND_BELOW = 48 + 36 + 29 + 111;
/** Both columns, as shares of the window between a least and a greatest width. */
const COLUMNS = [
  { least: 208, share: 0.17, most: 264 },
  { least: 288, share: 0.24, most: 348 },
] as const;

export function roomIn({ width, height }: ViewSize): Pick<PictureAsked, 'view' | 'taken'> {
  const columns = COLUMNS.map(({ least, share, most }) => Math.min(most, Math.max(least, share * width)));
  const left = columns.reduce((rest, column) => rest - column, width);
  return {
    view: { width: Math.max(0, left), height: Math.max(0, height - ABOVE_AND_BELOW) },
    taken: { steps: 44, line: 37 },
  };
}
