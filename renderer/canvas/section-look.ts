/** How closely the section is looked at, and where: over the fit of its pane, so that a fit of 1 is all of it. */

import type { Vec2 } from '#model/geometry/frame.ts';
import type { ViewSize } from './camera.ts';

export interface SectionLook {
  /** Times as large as it fits; at least 1. */
  readonly zoom: number;
  /** In the middle of the pane: mm along the cut, and up from the platform's floor. Null: all of it, as it fits. */
  readonly centre: Vec2 | null;
}

export const WHOLE: SectionLook = { zoom: 1, centre: null };

const CLOSEST = 16;

/** What a pane shows now. */
export interface ShownSection {
  /** The ratio's denominator, of the drawing's paper. */
  readonly scale: number;
  /** Screen pixels a millimetre of that paper. */
  readonly pagePixels: number;
  /** Of the upright plane's frame, on that paper. */
  readonly origin: Vec2;
  /** What the whole is shown at. */
  readonly fit: { readonly scale: number; readonly pagePixels: number };
}

/** A spot of the upright plane under a pixel of the pane. */
export function planeAt({ scale, pagePixels, origin }: ShownSection, pixel: Vec2): Vec2 {
  return {
    x: (pixel.x / pagePixels - origin.x) * scale,
    y: (origin.y - pixel.y / pagePixels) * scale,
  };
}

/** Larger by `factor`, so that what is under `pixel` stays there; no smaller than the whole. */
export function closer(
  look: SectionLook,
  shown: ShownSection,
  { pane, pixel, factor }: { readonly pane: ViewSize; readonly pixel: Vec2; readonly factor: number },
): SectionLook {
  const zoom = Math.min(CLOSEST, look.zoom * factor);
  if (zoom <= 1) return WHOLE;
  const spot = planeAt(shown, pixel);
  const perPixel = shown.fit.scale / zoom / shown.pagePixels;
  const centre = {
    x: spot.x + (pane.width / 2 - pixel.x) * perPixel,
    y: spot.y - (pane.height / 2 - pixel.y) * perPixel,
  };
  return { zoom, centre };
}

/** Drawn along with the hand; the whole stays where it is. */
export function shifted(
  { zoom, centre }: SectionLook,
  { scale, pagePixels }: ShownSection,
  by: Vec2,
): SectionLook {
  if (!centre) return WHOLE;
  const perPixel = scale / pagePixels;
  return { zoom, centre: { x: centre.x - by.x * perPixel, y: centre.y + by.y * perPixel } };
}

export function isSameLook(a: SectionLook, b: SectionLook): boolean {
  return a.zoom === b.zoom && a.centre?.x === b.centre?.x && a.centre?.y === b.centre?.y;
}
