/** What a tool has marked, on the overlay: lines between points, a broken one to the next, each on a rim of paper. */

import type { Vec2 } from '#model/geometry/frame.ts';
import type { ToolMarks } from './gestures/tool.ts';
import { toScreen } from './camera.ts';
import type { OverlayFrame } from './overlay.ts';
import { paintSlip, strokeLine } from './overlay-strokes.ts';

type Pen = CanvasRenderingContext2D;

const POINT = 4;

export function paintTool(pen: Pen, marks: ToolMarks, frame: OverlayFrame): void {
  const { camera, view, inks } = frame;
  const points = marks.points.map((point) => toScreen(camera, view, point));
  const next = marks.next && toScreen(camera, view, marks.next);
  const last = points.at(-1);
  pen.setLineDash([]);
  if (marks.joined)
    points.forEach((point, index) => {
      const before = points[index - 1];
      if (before) paintEdge(pen, [before, point], frame);
    });
  if (marks.joined && last && next) {
    pen.setLineDash([6, 4]);
    paintEdge(pen, [last, next], frame);
    pen.setLineDash([]);
  }
  for (const point of points) paintPoint(pen, point, { fill: inks.ink, rim: inks.paper });
  if (next) paintPoint(pen, next, { fill: inks.paper, rim: inks.ink });
  if (next && marks.caption) paintSlip(pen, { x: next.x, y: next.y - 26 }, marks.caption, frame);
}

function paintEdge(pen: Pen, ends: readonly [Vec2, Vec2], { inks }: OverlayFrame): void {
  strokeLine(pen, ends, inks.paper, 4.5);
  strokeLine(pen, ends, inks.ink, 2);
}

function paintPoint(
  pen: Pen,
  { x, y }: Vec2,
  { fill, rim }: { readonly fill: string; readonly rim: string },
): void {
  pen.beginPath();
  pen.arc(x, y, POINT, 0, 2 * Math.PI);
  pen.fillStyle = fill;
  pen.fill();
  pen.strokeStyle = rim;
  pen.lineWidth = 1.5;
  pen.stroke();
}
