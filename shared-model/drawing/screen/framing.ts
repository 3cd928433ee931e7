/**
 * Which part of the stage a view on a screen shows, and how large. The window goes by it, and so does whoever draws ahead
 * what the window will show first. Pixels are those of the page; lengths of the stage are mm, y upstage.
 */

import type { Vec2 } from '../../geometry/frame.ts';
import type { Box } from '../primitives.ts';

export interface Camera {
  /** The spot of the stage in the middle of the view. */
  readonly centre: Vec2;
  /** Screen pixels a millimetre of the stage. */
  readonly scale: number;
}

export interface ViewSize {
  readonly width: number;
  readonly height: number;
}

/** Room to leave round what is shown, in pixels. */
export interface Margins {
  readonly top: number;
  readonly bottom: number;
  readonly sides: number;
}

export const LEAST_SCALE = 0.002;
export const GREATEST_SCALE = 4;

/** Pixels a millimetre on a screen of the CSS reference density, 96 to the inch. */
export const PIXELS_PER_MILLIMETRE = 96 / 25.4;

/** Of a view's height and of its width, the most that margins may take: what is shown matters more than its surroundings. */
const MOST_MARGIN = { down: 0.4, across: 0.3 };

/** The words, figures and edge marks of the drawing stand outside the platform. */
export const WITH_WORDS: Margins = { top: 76, bottom: 72, sides: 98 };

export function clampScale(scale: number): number {
  return Math.min(GREATEST_SCALE, Math.max(LEAST_SCALE, scale));
}

/** The margins, in a small view smaller in proportion. */
export function capped({ top, bottom, sides }: Margins, view: ViewSize): Margins {
  const down = Math.min(1, (view.height * MOST_MARGIN.down) / (top + bottom));
  const across = Math.min(1, (view.width * MOST_MARGIN.across) / (2 * sides));
  return { top: top * down, bottom: bottom * down, sides: sides * across };
}

/** The camera that shows all of `extent` inside the margins. */
export function fitted(extent: Box, view: ViewSize, { top, bottom, sides }: Margins): Camera {
  const across = Math.max(1, view.width - 2 * sides) / Math.max(1, extent.width);
  const down = Math.max(1, view.height - top - bottom) / Math.max(1, extent.height);
  const scale = clampScale(Math.min(across, down));
  return {
    scale,
    centre: {
      x: extent.x + extent.width / 2,
      y: extent.y + extent.height / 2 + (top - bottom) / 2 / scale,
    },
  };
}

/** Where on the screen a spot of the stage lies. */
export function toScreen(camera: Camera, view: ViewSize, spot: Vec2): Vec2 {
  return {
    x: (spot.x - camera.centre.x) * camera.scale + view.width / 2,
    y: (camera.centre.y - spot.y) * camera.scale + view.height / 2,
  };
}

export function visibleExtent(camera: Camera, view: ViewSize): Box {
  const width = view.width / camera.scale;
  const height = view.height / camera.scale;
  return { x: camera.centre.x - width / 2, y: camera.centre.y - height / 2, width, height };
}

/** What is seen, in mm on the paper of a drawing whose y runs down and whose origin is that of the stage. */
export function frameOnPaper({ x, y, width, height }: Box, paperScale: number): Box {
  return {
    x: x / paperScale,
    y: -(y + height) / paperScale,
    width: width / paperScale,
    height: height / paperScale,
  };
}

/** Steps of the drawing's scale: letters are between these and a fifth larger or smaller than on paper. */
const STEP = 1.25;

/** Letters on a screen are read from farther away than on a sheet in the hand. */
const ENLARGED = 1.12;

/** The scale to draw at, for a camera that shows `scale` pixels a millimetre. */
export function paperScaleFor(scale: number): number {
  const exact = (PIXELS_PER_MILLIMETRE * ENLARGED) / scale;
  return STEP ** Math.round(Math.log(exact) / Math.log(STEP));
}
