/**
 * Where on the screen a spot of the stage lies. The audience is at the bottom: +x goes right, +y (upstage) goes up.
 * `scale` is screen pixels a millimetre of the stage.
 */

import type { Vec2 } from '#model/geometry/frame.ts';

export interface Camera {
  /** The spot of the stage in the middle of the view. */
  readonly centre: Vec2;
  readonly scale: number;
}

export interface ViewSize {
  readonly width: number;
  readonly height: number;
}

/** A rectangle of the stage: `x`, `y` are its least coordinates. */
export interface Extent {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export const LEAST_SCALE = 0.002;
export const GREATEST_SCALE = 4;

/** Pixels a millimetre on a screen of the CSS reference density, 96 to the inch. */
export const PIXELS_PER_MILLIMETRE = 96 / 25.4;

export function toScreen(camera: Camera, view: ViewSize, spot: Vec2): Vec2 {
  return {
    x: (spot.x - camera.centre.x) * camera.scale + view.width / 2,
    y: (camera.centre.y - spot.y) * camera.scale + view.height / 2,
  };
}

export function toStage(camera: Camera, view: ViewSize, pixel: Vec2): Vec2 {
  return {
    x: camera.centre.x + (pixel.x - view.width / 2) / camera.scale,
    y: camera.centre.y - (pixel.y - view.height / 2) / camera.scale,
  };
}

export function panned(camera: Camera, byPixels: Vec2): Camera {
  return {
    ...camera,
    centre: {
      x: camera.centre.x - byPixels.x / camera.scale,
      y: camera.centre.y + byPixels.y / camera.scale,
    },
  };
}

/** Enlarges by `factor` so that the spot under `pixel` stays under it. */
export function zoomedAt(camera: Camera, view: ViewSize, pixel: Vec2, factor: number): Camera {
  const scale = clampScale(camera.scale * factor);
  const spot = toStage(camera, view, pixel);
  return {
    scale,
    centre: {
      x: spot.x - (pixel.x - view.width / 2) / scale,
      y: spot.y + (pixel.y - view.height / 2) / scale,
    },
  };
}

/** Room to leave round what is shown, in pixels. */
export interface Margins {
  readonly top: number;
  readonly bottom: number;
  readonly sides: number;
}

/** Of a view's height and of its width, the most that margins may take: what is shown matters more than its surroundings. */
const MOST_MARGIN = { down: 0.4, across: 0.3 };

/** The margins, in a small view smaller in proportion. */
export function capped({ top, bottom, sides }: Margins, view: ViewSize): Margins {
  const down = Math.min(1, (view.height * MOST_MARGIN.down) / (top + bottom));
  const across = Math.min(1, (view.width * MOST_MARGIN.across) / (2 * sides));
  return { top: top * down, bottom: bottom * down, sides: sides * across };
}

/** The camera that shows all of `extent` inside the margins. */
export function fitted(extent: Extent, view: ViewSize, { top, bottom, sides }: Margins): Camera {
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

/** The camera at which a centimetre of paper at scale 1:`ratio` is a centimetre of screen. */
export function atRatio(camera: Camera, ratio: number): Camera {
  return { ...camera, scale: clampScale(PIXELS_PER_MILLIMETRE / ratio) };
}

/** The denominator of the scale the screen shows now: about 50 for 1:50. */
export function ratioOf(camera: Camera): number {
  return PIXELS_PER_MILLIMETRE / camera.scale;
}

export function clampScale(scale: number): number {
  return Math.min(GREATEST_SCALE, Math.max(LEAST_SCALE, scale));
}

/** The smallest extent round all points; null when there are none. */
export function extentOf(points: Iterable<Vec2>): Extent | null {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points) {
    x0 = Math.min(x0, x);
    y0 = Math.min(y0, y);
    x1 = Math.max(x1, x);
    y1 = Math.max(y1, y);
  }
  return x0 > x1 ? null : { x: x0, y: y0, width: x1 - x0, height: y1 - y0 };
}

export function grown(extent: Extent, by: number): Extent {
  return {
    x: extent.x - by,
    y: extent.y - by,
    width: extent.width + 2 * by,
    height: extent.height + 2 * by,
  };
}

export function visibleExtent(camera: Camera, view: ViewSize): Extent {
  const width = view.width / camera.scale;
  const height = view.height / camera.scale;
  return { x: camera.centre.x - width / 2, y: camera.centre.y - height / 2, width, height };
}

export function holds(extent: Extent, spot: Vec2): boolean {
  return (
    spot.x >= extent.x &&
    spot.y >= extent.y &&
    spot.x <= extent.x + extent.width &&
    spot.y <= extent.y + extent.height
  );
}
