/** A layer painted for one look, moved and stretched as a picture to another until it is painted anew. */

import type { Camera, ViewSize } from './camera.ts';

export interface Look {
  readonly camera: Camera;
  readonly view: ViewSize;
}

/** A picture of another size would not fill the view. */
export function canStretch(painted: Look | null, { view }: Look): boolean {
  return painted?.view.width === view.width && painted.view.height === view.height;
}

export function stretch({ style }: HTMLElement, { camera: from }: Look, { camera, view }: Look): void {
  const by = camera.scale / from.scale;
  const x = (from.centre.x - camera.centre.x) * camera.scale + (view.width / 2) * (1 - by);
  const y = (camera.centre.y - from.centre.y) * camera.scale + (view.height / 2) * (1 - by);
  style.transformOrigin = '0 0';
  style.transform = `matrix(${by}, 0, 0, ${by}, ${x}, ${y})`;
}
