/**
 * Where on the screen a spot of the stage lies. The audience is at the bottom: +x goes right, +y (upstage) goes up.
 * `scale` is screen pixels a millimetre of the stage.
 */

import type { Vec2 } from '#model/geometry/frame.ts';
import {
  clampScale,
  PIXELS_PER_MILLIMETRE,
  type Camera,
  type ViewSize,
} from '#model/drawing/screen/framing.ts';

export {
  capped,
  fitted,
  PIXELS_PER_MILLIMETRE,
  toScreen,
  visibleExtent,
} from '#model/drawing/screen/framing.ts';
export type { Camera, Margins, ViewSize } from '#model/drawing/screen/framing.ts';

/** A rectangle of the stage: `x`, `y` are its least coordinates. */
export interface Extent {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
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

/** The camera at which a centimetre of paper at scale 1:`ratio` is a centimetre of screen. */
export function atRatio(camera: Camera, ratio: number): Camera {
  return { ...camera, scale: clampScale(PIXELS_PER_MILLIMETRE / ratio) };
}

/** The denominator of the scale the screen shows now: about 50 for 1:50. */
export function ratioOf(camera: Camera): number {
  return PIXELS_PER_MILLIMETRE / camera.scale;
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

export function holds(extent: Extent, spot: Vec2): boolean {
  return (
    spot.x >= extent.x &&
    spot.y >= extent.y &&
    spot.x <= extent.x + extent.width &&
    spot.y <= extent.y + extent.height
  );
}
