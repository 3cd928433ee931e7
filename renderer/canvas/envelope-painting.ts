/** The rings of a reach: by the arm alone a whole line, with a lean a broken one, each with paper on either side. */

import type { Vec2 } from '#model/geometry/frame.ts';
import type { Envelope } from './envelopes.ts';

interface Look {
  readonly toScreen: (spot: Vec2) => Vec2;
  readonly inks: { readonly paper: string; readonly faint: string };
}

export function paintEnvelopes(
  pen: CanvasRenderingContext2D,
  rings: readonly Envelope[],
  { toScreen, inks }: Look,
): void {
  for (const { outline, leaning } of rings) {
    const ring = outline.map(toScreen);
    pen.beginPath();
    ring.forEach(({ x, y }, index) => (index === 0 ? pen.moveTo(x, y) : pen.lineTo(x, y)));
    pen.closePath();
    stroke(pen, inks.paper, { width: 4, dash: [] });
    stroke(pen, inks.faint, { width: 1.5, dash: leaning ? [5, 4] : [] });
  }
  pen.setLineDash([]);
}

function stroke(
  pen: CanvasRenderingContext2D,
  colour: string,
  { width, dash }: { readonly width: number; readonly dash: number[] },
): void {
  pen.setLineDash(dash);
  pen.strokeStyle = colour;
  pen.lineWidth = width;
  pen.stroke();
}
