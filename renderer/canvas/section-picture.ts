/** The section of the house for the screen: the primitives that go on paper, at the scale that fills a pane. */

import type { Box, Primitive } from '#model/drawing/primitives.ts';
import {
  originIn,
  sectionAt,
  sectionBox,
  sectionSource,
  type SectionRequest,
  type SectionSource,
} from '#model/drawing/section.ts';
import type { Vec2 } from '#model/geometry/frame.ts';
import { PIXELS_PER_MILLIMETRE, type ViewSize } from './camera.ts';
import { WHOLE, type SectionLook, type ShownSection } from './section-look.ts';

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

export interface SectionPicture extends ShownSection {
  /** How it is looked at, kept to what there is to see. */
  readonly look: SectionLook;
  readonly children: readonly Primitive[];
}

type Fit = ShownSection['fit'];

export interface SectionPane {
  readonly size: ViewSize;
  readonly look: SectionLook;
  /** As large as this, or for null as large as the pane allows. */
  readonly fit: Fit | null;
}

/** Null: there is nothing to draw, or no room for it. Letters stay as large as they are, however close one looks. */
export function sectionPicture(request: SectionRequest, pane: SectionPane): SectionPicture | null {
  const source = sectionSource(request);
  const fit = source && (pane.fit ?? fitFor(source, pane.size));
  if (!source || !fit) return null;
  const { pagePixels } = fit;
  const area = areaOf(pane.size, pagePixels);
  const scale = fit.scale / pane.look.zoom;
  const close = pane.look.centre && closePlacement(source, { scale, centre: pane.look.centre, area });
  const origin = close?.origin ?? originIn(source, scale, area);
  if (!origin) return null;
  return {
    fit,
    scale,
    pagePixels,
    origin,
    look: close ? { zoom: pane.look.zoom, centre: close.centre } : WHOLE,
    children: sectionAt(source, { scale, origin, area: close?.area ?? area }),
  };
}

interface Close {
  readonly scale: number;
  readonly centre: Vec2;
  readonly area: Box;
}

/** Round the drawing, so that labels go beside it as in the whole, mm of paper. */
const ROUND = 24;

/** Some of the drawing stays in the middle of the pane. */
function closePlacement(source: SectionSource, { scale, centre: wanted, area }: Close) {
  const box = sectionBox(source, scale);
  if (!box) return null;
  const within = (value: number, low: number, length: number): number =>
    Math.min(low + length, Math.max(low, value));
  // The page's y runs down, the plane's up.
  const onPage = {
    x: within(wanted.x / scale, box.x, box.width),
    y: within(-wanted.y / scale, box.y, box.height),
  };
  const origin = { x: area.x + area.width / 2 - onPage.x, y: area.y + area.height / 2 - onPage.y };
  const isThere = onPage.x === wanted.x / scale && onPage.y === -wanted.y / scale;
  return {
    origin,
    centre: isThere ? wanted : { x: onPage.x * scale, y: -onPage.y * scale },
    area: {
      x: origin.x + box.x - ROUND,
      y: origin.y + box.y - ROUND,
      width: box.width + 2 * ROUND,
      height: box.height + 2 * ROUND,
    },
  };
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
