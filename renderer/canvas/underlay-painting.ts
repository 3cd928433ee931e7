/** Paints underlays in screen pixels: pictures as they are, drawings in hairlines, both as strong as they are to be. */

import type { Underlay, UnderlayLines } from '#model/document/records.ts';
import { radians } from '#model/geometry/frame.ts';
import { boundsOf } from '#model/geometry/polygon.ts';
import { lineBoxes } from '#model/underlay/nearest.ts';
import { stageToUnderlay, underlayToStage } from '#model/underlay/place.ts';
import { toScreen, toStage } from './camera.ts';
import type { Look } from './stretching.ts';
import { bitmapOf } from './underlay-pictures.ts';

type Pen = CanvasRenderingContext2D;

/** Smaller than this on the screen, pixels, a line is a speck that only greys the plan. */
const SPECK = 0.6;
/** So many lines are stroked at once: one endless path takes longer than many short ones. */
const AT_ONCE = 300;

/** `arrived` is called when a picture has been unpacked that is not painted now. */
export function paintUnderlays(
  pen: Pen,
  underlays: readonly Underlay[],
  look: Look,
  arrived: () => void,
): void {
  for (const underlay of underlays) {
    pen.save();
    pen.globalAlpha = underlay.opacity;
    if (underlay.content.type === 'picture') paintPicture(pen, { underlay, look }, arrived);
    else paintLines(pen, { underlay, look }, underlay.content);
    pen.restore();
  }
}

interface Looked {
  readonly underlay: Underlay;
  readonly look: Look;
}

function paintPicture(pen: Pen, { underlay, look }: Looked, arrived: () => void): void {
  const { content, scale, turn } = underlay;
  if (content.type !== 'picture') return;
  const bitmap = bitmapOf(content, arrived);
  if (!bitmap) return;
  const at = toScreen(look.camera, look.view, underlay);
  const enlarged = scale * look.camera.scale;
  pen.translate(at.x, at.y);
  pen.rotate(-radians(turn));
  pen.imageSmoothingQuality = enlarged < 0.5 ? 'medium' : 'low';
  pen.drawImage(bitmap, 0, -content.height * enlarged, content.width * enlarged, content.height * enlarged);
}

/** Only what is in the view, and no specks. Straight from the numbers: no object of the browser's holds them once more. */
function paintLines(pen: Pen, { underlay, look }: Looked, content: UnderlayLines): void {
  const { camera, view } = look;
  const scale = underlay.scale * camera.scale;
  const seen = seenBox({ underlay, look });
  const boxes = lineBoxes(content);
  const [origin, ex] = [
    { x: 0, y: 0 },
    { x: 1, y: 0 },
  ].map((own) => toScreen(camera, view, underlayToStage(underlay, own)));
  if (!origin || !ex) return;
  // Upwards in the drawing is a quarter turn to the left of its x, and y runs down on the screen.
  const [ax, ay] = [ex.x - origin.x, ex.y - origin.y];
  pen.strokeStyle = '#000';
  pen.lineWidth = 1;
  pen.lineJoin = 'bevel';
  pen.beginPath();
  let waiting = 0;
  for (const [index, numbers] of content.lines.entries()) {
    const at = index * 4;
    const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = [boxes[at], boxes[at + 1], boxes[at + 2], boxes[at + 3]];
    if (x1 < seen.minX || x0 > seen.maxX || y1 < seen.minY || y0 > seen.maxY) continue;
    if (Math.max(x1 - x0, y1 - y0) * scale < SPECK) continue;
    for (let n = 0; n + 1 < numbers.length; n += 2) {
      const [u, v] = [numbers[n] ?? 0, numbers[n + 1] ?? 0];
      const [x, y] = [origin.x + u * ax + v * ay, origin.y + u * ay - v * ax];
      if (n === 0) pen.moveTo(x, y);
      else pen.lineTo(x, y);
    }
    waiting += 1;
    if (waiting < AT_ONCE) continue;
    pen.stroke();
    pen.beginPath();
    waiting = 0;
  }
  pen.stroke();
}

/** What of the drawing is in the view, in its own units. */
function seenBox({ underlay, look: { camera, view } }: Looked) {
  const corners = [
    { x: 0, y: 0 },
    { x: view.width, y: 0 },
    { x: view.width, y: view.height },
    { x: 0, y: view.height },
  ].map((pixel) => stageToUnderlay(underlay, toStage(camera, view, pixel)));
  return boundsOf(corners);
}
