/** The section of the house for the screen: the primitives that go on paper, at the scale that fills a pane. */

import type { Box, Primitive } from '#model/drawing/primitives.ts';
import {
  sectionBox,
  sectionIn,
  sectionSource,
  type SectionRequest,
  type SectionSource,
} from '#model/drawing/section.ts';
import { PIXELS_PER_MILLIMETRE, type ViewSize } from './camera.ts';

/**
 * Screen pixels a millimetre of the drawing's paper: letters on a screen are read from farther away than on a sheet in
 * the hand, so they are a little larger; where a pane is small, they are smaller rather than no drawing at all.
 */
const PAGE_PIXELS = [1.12, 1, 0.88].map((enlarged) => PIXELS_PER_MILLIMETRE * enlarged);

const NOT_MUCH_SMALLER = 0.8;

/** In millimetres of the drawing's paper, so that nothing touches the pane's edge. */
const MARGIN = 2;

/** Letters do not shrink with the scale, so the first guess may be too large: it is made smaller in such steps. */
const STEP = 1.06;
const MOST_STEPS = 40;

export interface SectionPicture {
  /** The ratio's denominator, of the drawing's paper. */
  readonly scale: number;
  /** Screen pixels a millimetre of that paper. */
  readonly pagePixels: number;
  readonly children: readonly Primitive[];
}

/** What a picture before this one was fitted to. */
export type Fit = Pick<SectionPicture, 'scale' | 'pagePixels'>;

/** As `fit` says, or for null as large as the pane allows. Null: there is nothing to draw, or no room for it. */
export function sectionPicture(
  request: SectionRequest,
  pane: ViewSize,
  fit: Fit | null,
): SectionPicture | null {
  const source = sectionSource(request);
  const chosen = source && (fit ?? fitFor(source, pane));
  if (!source || !chosen) return null;
  const { scale, pagePixels } = chosen;
  return { scale, pagePixels, children: sectionIn(source, scale, areaOf(pane, pagePixels)) };
}

/** The largest letters with which the house is drawn not much smaller than with the smallest. */
function fitFor(source: SectionSource, pane: ViewSize): Fit | null {
  const fits = PAGE_PIXELS.flatMap((pagePixels): Fit[] => {
    const scale = largestFitting((candidate) => sectionBox(source, candidate), areaOf(pane, pagePixels));
    return scale === null ? [] : [{ scale, pagePixels }];
  });
  const drawn = ({ scale, pagePixels }: Fit): number => pagePixels / scale;
  const largest = fits.reduce((most, fit) => Math.max(most, drawn(fit)), 0);
  return fits.find((fit) => drawn(fit) >= largest * NOT_MUCH_SMALLER) ?? null;
}

function areaOf(pane: ViewSize, pagePixels: number): Box {
  return {
    x: MARGIN,
    y: MARGIN,
    width: pane.width / pagePixels - 2 * MARGIN,
    height: pane.height / pagePixels - 2 * MARGIN,
  };
}

interface Size {
  readonly width: number;
  readonly height: number;
}

/** The least denominator, to within a step, at which the box is no larger than the room; null when there is none. */
export function largestFitting(boxAt: (scale: number) => Size | null, room: Size): number | null {
  const overfull = (scale: number): number | null => {
    const box = boxAt(scale);
    return box && Math.max(box.width / room.width, box.height / room.height);
  };
  let scale = 100 * (overfull(100) ?? Infinity);
  if (!Number.isFinite(scale) || scale <= 0) return null;
  for (let step = 0; step < MOST_STEPS; step++) {
    if ((overfull(scale) ?? Infinity) <= 1) return scale;
    scale *= STEP;
  }
  return null;
}
