/** What all that is painted above the drawing is made of: lines, discs, and words on a slip. In screen pixels. */

import type { Vec2 } from '#model/geometry/frame.ts';
import type { ViewSize } from './camera.ts';
import { DRAWING_FACE } from './painter.ts';

type Pen = CanvasRenderingContext2D;

export const TEXT_SIZE = 12;

export interface SlipInks {
  readonly ink: string;
  readonly paper: string;
}

/** Words on a slip of ink, centred on a spot, kept inside the view whatever they are about. */
export function paintSlip(
  pen: Pen,
  spot: Vec2,
  text: string,
  { inks, view }: { readonly inks: SlipInks; readonly view: ViewSize },
): void {
  pen.font = `600 ${TEXT_SIZE}px "${DRAWING_FACE}", sans-serif`;
  const width = pen.measureText(text).width + 12;
  const at = {
    x: Math.min(view.width - width / 2 - 4, Math.max(width / 2 + 4, spot.x)),
    y: Math.min(view.height - 14, Math.max(14, spot.y)),
  };
  pen.fillStyle = inks.ink;
  pen.fillRect(Math.round(at.x - width / 2), Math.round(at.y - 10), Math.round(width), 20);
  pen.fillStyle = inks.paper;
  writeAt(pen, text, { x: at.x, y: at.y + 0.5 }, { weight: 600 });
}

/** Centred on a spot. */
export function writeAt(
  pen: Pen,
  text: string,
  at: Vec2,
  { weight, size = TEXT_SIZE }: { readonly weight: number; readonly size?: number },
): void {
  pen.font = `${weight} ${size}px "${DRAWING_FACE}", sans-serif`;
  pen.textAlign = 'center';
  pen.textBaseline = 'middle';
  pen.fillText(text, at.x, at.y);
}

export function strokeLine(pen: Pen, [a, b]: readonly [Vec2, Vec2], colour: string, width: number): void {
  pen.beginPath();
  pen.moveTo(a.x, a.y);
  pen.lineTo(b.x, b.y);
  pen.strokeStyle = colour;
  pen.lineWidth = width;
  pen.stroke();
}
