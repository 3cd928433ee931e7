/** Paints the plan that the shell has drawn, as the window will paint it. */

import type { FirstPicture } from '#contract/contract.ts';
import { cameraAtFirst } from '#model/drawing/screen/first-camera.ts';
import { toScreen, type ViewSize } from '#model/drawing/screen/framing.ts';
import { paint } from '../canvas/painter.ts';

/** Fills the canvas, which is on the page already: it sets figures as the page does. */
export function paintPicture(canvas: HTMLCanvasElement, picture: FirstPicture, view: ViewSize): void {
  // As the window's own canvases are sized, whole pixels shown over a fraction more, so that nothing shifts.
  canvas.width = view.width * devicePixelRatio;
  canvas.height = view.height * devicePixelRatio;
  canvas.style.width = `${view.width}px`;
  canvas.style.height = `${view.height}px`;
  const pen = canvas.getContext('2d');
  if (!pen) throw new Error('this browser has no canvas');
  const camera = cameraAtFirst(picture, view);
  const origin = toScreen(camera, view, { x: 0, y: 0 });
  const enlarged = camera.scale * picture.paperScale * devicePixelRatio;
  pen.setTransform(enlarged, 0, 0, enlarged, origin.x * devicePixelRatio, origin.y * devicePixelRatio);
  paint(pen, picture.primitives);
}
