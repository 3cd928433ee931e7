/**
 * What the screen shows above the drawing and the paper never does: selection, handles, guides, the marquee, the
 * remarks of the checks. Painted in screen pixels, so it keeps its size at every zoom.
 */

import type { Severity } from '#model/checks/finding.ts';
import type { Vec2 } from '#model/geometry/frame.ts';
import { signedArea, type Polygon } from '#model/geometry/polygon.ts';
import { toScreen, type Camera, type Extent, type ViewSize } from './camera.ts';
import { paintEnvelopes } from './envelope-painting.ts';
import type { Envelope } from './envelopes.ts';
import { paintSlip, strokeLine, TEXT_SIZE, writeAt } from './overlay-strokes.ts';
import { DRAWING_FACE } from './painter.ts';
import { hasSlipLeft, headSize, type Headed } from './pin-places.ts';
import { isSmallAt } from './pins.ts';
import type { ToolMarks } from './gestures/tool.ts';
import type { RunningMarks } from './running-marks.ts';
import { paintRunning } from './running-painting.ts';
import { paintTool } from './tool-painting.ts';

export interface OverlayInks {
  readonly ink: string;
  readonly paper: string;
  readonly faint: string;
  /** Remarks of the checks. */
  readonly pencil: string;
}

export interface TurnHandle {
  readonly item: Vec2;
  readonly at: Vec2;
}

export interface DrawnGuide {
  readonly axis: 'x' | 'y';
  readonly at: number;
  readonly words: string;
}

export interface Remark extends Headed {
  /** Of the pin's head, in pixels from its spot. */
  readonly head: Vec2;
}

export interface Overlay {
  readonly selected: readonly Polygon[];
  readonly hovered: Polygon | null;
  readonly turn: TurnHandle | null;
  /** Corners of the platform that can be dragged. */
  readonly corners: readonly Vec2[];
  readonly guides: readonly DrawnGuide[];
  readonly marquee: Extent | null;
  readonly remarks: readonly Remark[];
  /** Lines from a seat to the players, while it is looked into. */
  readonly sightlines: readonly { readonly from: Vec2; readonly to: Vec2; readonly seen: number }[];
  /** How far the chosen player's hands get. */
  readonly envelopes: readonly Envelope[];
  /** What the time strip has at its moment; null: it is not open. */
  readonly running: RunningMarks | null;
  /** A figure beside the pointer or the item, for instance the facing while it is turned. */
  readonly caption: { readonly at: Vec2; readonly words: string } | null;
  /** What a tool has marked; null: none is in hand. */
  readonly tool: ToolMarks | null;
}

/** Sizes in pixels. Handles are drawn smaller than the 24 px within which they are caught. */
export const SIZE = {
  handle: 6,
  corner: 5,
  halo: 4,
  line: 1.5,
} as const;

export interface OverlayFrame {
  readonly camera: Camera;
  readonly view: ViewSize;
  readonly inks: OverlayInks;
}

type Pen = CanvasRenderingContext2D;

export function paintOverlay(pen: Pen, overlay: Overlay, frame: OverlayFrame): void {
  pen.save();
  pen.lineJoin = 'round';
  pen.lineCap = 'round';
  for (const line of overlay.sightlines) paintSightline(pen, line, frame);
  paintReach(pen, overlay.envelopes, frame);
  for (const guide of overlay.guides) paintGuide(pen, guide, frame);
  if (overlay.hovered) paintRing(pen, overlay.hovered, frame, 1);
  for (const outline of overlay.selected) paintRing(pen, outline, frame, 2);
  if (overlay.running) paintRunning(pen, overlay.running, frame);
  for (const corner of overlay.corners) paintCorner(pen, corner, frame);
  if (overlay.turn) paintTurnHandle(pen, overlay.turn, frame);
  for (const remark of overlay.remarks) paintRemark(pen, remark, frame);
  if (overlay.marquee) paintMarquee(pen, overlay.marquee, frame);
  for (const guide of overlay.guides) paintGuideWords(pen, guide, frame);
  if (overlay.caption) paintCaption(pen, overlay.caption, frame);
  if (overlay.tool) paintTool(pen, overlay.tool, frame);
  pen.restore();
}

function paintReach(pen: Pen, rings: readonly Envelope[], { camera, view, inks }: OverlayFrame): void {
  paintEnvelopes(pen, rings, { toScreen: (spot) => toScreen(camera, view, spot), inks });
}

/** An ink line a little outside the outline, with paper on either side, seen on every ground. */
function paintRing(pen: Pen, outline: Polygon, { camera, view, inks }: OverlayFrame, width: number): void {
  const ring = outset(
    outline.map((corner) => toScreen(camera, view, corner)),
    SIZE.halo,
  );
  pen.beginPath();
  ring.forEach(({ x, y }, index) => (index === 0 ? pen.moveTo(x, y) : pen.lineTo(x, y)));
  pen.closePath();
  pen.setLineDash([]);
  pen.strokeStyle = inks.paper;
  pen.lineWidth = width + 3;
  pen.stroke();
  pen.strokeStyle = width > 1 ? inks.ink : inks.faint;
  pen.lineWidth = width;
  pen.stroke();
}

/** The outline moved outwards by so many pixels, corner by corner; good enough for the plump shapes of items. */
function outset(ring: readonly Vec2[], by: number): Vec2[] {
  const way = turnsClockwise(ring) ? 1 : -1;
  return ring.map((corner, index) => {
    const before = ring[(index + ring.length - 1) % ring.length] ?? corner;
    const after = ring[(index + 1) % ring.length] ?? corner;
    const [a, b] = [outward(before, corner, way), outward(corner, after, way)];
    const [x, y] = [a.x + b.x, a.y + b.y];
    const length = Math.hypot(x, y) || 1;
    // Sharp corners would run far out; they are cut at twice the distance.
    const reach = Math.min(2, 2 / Math.max(length, 1e-6)) * by;
    return { x: corner.x + (x / length) * reach, y: corner.y + (y / length) * reach };
  });
}

function outward(from: Vec2, to: Vec2, way: number): Vec2 {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  return { x: (way * (to.y - from.y)) / length, y: (way * (from.x - to.x)) / length };
}

/** On the screen, where y runs down. */
function turnsClockwise(ring: readonly Vec2[]): boolean {
  return signedArea(ring) > 0;
}

function paintTurnHandle(pen: Pen, { item, at }: TurnHandle, { camera, view, inks }: OverlayFrame): void {
  const from = toScreen(camera, view, item);
  const to = toScreen(camera, view, at);
  pen.setLineDash([]);
  strokeLine(pen, [from, to], inks.paper, 4);
  strokeLine(pen, [from, to], inks.ink, SIZE.line);
  disc(pen, to, SIZE.handle, inks.paper);
  pen.strokeStyle = inks.ink;
  pen.lineWidth = 2;
  pen.stroke();
}

function paintCorner(pen: Pen, corner: Vec2, { camera, view, inks }: OverlayFrame): void {
  const { x, y } = toScreen(camera, view, corner);
  pen.setLineDash([]);
  pen.fillStyle = inks.paper;
  pen.strokeStyle = inks.ink;
  pen.lineWidth = 2;
  pen.fillRect(x - SIZE.corner, y - SIZE.corner, 2 * SIZE.corner, 2 * SIZE.corner);
  pen.strokeRect(x - SIZE.corner, y - SIZE.corner, 2 * SIZE.corner, 2 * SIZE.corner);
}

function paintGuide(pen: Pen, guide: DrawnGuide, { camera, view, inks }: OverlayFrame): void {
  const { x, y } = toScreen(camera, view, { x: guide.at, y: guide.at });
  pen.setLineDash([5, 4]);
  if (guide.axis === 'x')
    strokeLine(
      pen,
      [
        { x, y: 0 },
        { x, y: view.height },
      ],
      inks.ink,
      1,
    );
  else
    strokeLine(
      pen,
      [
        { x: 0, y },
        { x: view.width, y },
      ],
      inks.ink,
      1,
    );
  pen.setLineDash([]);
}

function paintGuideWords(pen: Pen, guide: DrawnGuide, frame: OverlayFrame): void {
  const { x, y } = toScreen(frame.camera, frame.view, { x: guide.at, y: guide.at });
  if (guide.axis === 'x') paintSlip(pen, { x, y: 44 }, guide.words, frame);
  else paintSlip(pen, { x: frame.view.width - 150, y }, guide.words, frame);
}

function paintMarquee(pen: Pen, extent: Extent, { camera, view, inks }: OverlayFrame): void {
  const a = toScreen(camera, view, extent);
  const b = toScreen(camera, view, { x: extent.x + extent.width, y: extent.y + extent.height });
  pen.setLineDash([4, 3]);
  pen.strokeStyle = inks.ink;
  pen.lineWidth = 1;
  pen.strokeRect(Math.round(a.x) + 0.5, Math.round(b.y) + 0.5, Math.round(b.x - a.x), Math.round(a.y - b.y));
  pen.setLineDash([]);
}

/** A pin whose head says by its shape how grave it is: disc, triangle, ring. It stands beside what it is about. */
function paintRemark(pen: Pen, remark: Remark, { camera, view, inks }: OverlayFrame): void {
  const spot = toScreen(camera, view, remark.where);
  const isSmall = isSmallAt(camera.scale) && !remark.chosen;
  const size = headSize(remark, camera.scale);
  const at = { x: spot.x + remark.head.x, y: spot.y + remark.head.y };
  const colour = remark.severity === 'note' ? inks.faint : inks.pencil;
  pen.setLineDash([]);
  strokeLine(pen, [spot, at], inks.paper, 3.5);
  strokeLine(pen, [spot, at], colour, 1.5);
  disc(pen, spot, 2, colour);
  const side = hasSlipLeft(remark) ? -1 : 1;
  if (remark.more > 0 && !isSmall)
    paintMore(pen, { at: { ...at, x: at.x + side * size }, side }, remark.more, inks);
  // A triangle is narrow where the figures stand.
  const head = remark.severity === 'caution' && remark.number > 9 && !isSmall ? size * WIDER : size;
  paintHead(pen, { at, size: head, severity: remark.severity, colour }, inks);
  if (isSmall) return;
  const onHead = { fail: inks.paper, caution: inks.pencil, note: inks.ink }[remark.severity];
  pen.fillStyle = onHead;
  writeAt(
    pen,
    String(remark.number),
    { x: at.x, y: at.y + (remark.severity === 'caution' ? 2 : 0.5) },
    { weight: 700 },
  );
}

/** By so much a triangle round two figures is larger than round one. */
const WIDER = 1.25;

interface Slip {
  /** At the edge of the head. */
  readonly at: Vec2;
  /** To the right or to the left of it. */
  readonly side: 1 | -1;
}

/** "+2" on a slip of paper that comes out from under the head. */
function paintMore(pen: Pen, { at: { x, y }, side }: Slip, more: number, inks: OverlayInks): void {
  const label = `+${more}`;
  pen.font = `700 ${TEXT_SIZE - 1}px "${DRAWING_FACE}", sans-serif`;
  const width = pen.measureText(label).width + 7;
  pen.fillStyle = inks.paper;
  pen.strokeStyle = inks.pencil;
  pen.lineWidth = 1;
  pen.beginPath();
  const left = side > 0 ? x - 6 : x + 1 - width;
  pen.rect(Math.round(left) + 0.5, Math.round(y - 7) + 0.5, Math.round(width + 5), 14);
  pen.fill();
  pen.stroke();
  pen.fillStyle = inks.pencil;
  writeAt(pen, label, { x: x + (side * width) / 2, y: y + 1 }, { weight: 700 });
}

interface Head {
  readonly at: Vec2;
  readonly size: number;
  readonly severity: Severity;
  readonly colour: string;
}

function paintHead(pen: Pen, { at, size, severity, colour }: Head, inks: OverlayInks): void {
  if (severity === 'caution') triangle(pen, at, size);
  else circle(pen, at, size);
  pen.lineWidth = 4;
  pen.strokeStyle = inks.paper;
  pen.stroke();
  pen.fillStyle = severity === 'fail' ? inks.pencil : inks.paper;
  pen.fill();
  pen.lineWidth = 1.5;
  pen.strokeStyle = colour;
  pen.stroke();
}

function paintSightline(
  pen: Pen,
  { from, to, seen }: Overlay['sightlines'][number],
  { camera, view, inks }: OverlayFrame,
): void {
  pen.setLineDash(seen >= 0.9 ? [] : [3, 4]);
  const [a, b] = [toScreen(camera, view, from), toScreen(camera, view, to)];
  strokeLine(pen, [a, b], seen >= 0.9 ? inks.ink : inks.pencil, 1.25);
  pen.setLineDash([]);
}

/** Above what it is about, so that it covers neither that nor the pointer. */
function paintCaption(pen: Pen, { at, words }: NonNullable<Overlay['caption']>, frame: OverlayFrame): void {
  const { x, y } = toScreen(frame.camera, frame.view, at);
  paintSlip(pen, { x, y: y - 26 }, words, frame);
}

function disc(pen: Pen, at: Vec2, radius: number, colour: string): void {
  circle(pen, at, radius);
  pen.fillStyle = colour;
  pen.fill();
}

function circle(pen: Pen, at: Vec2, radius: number): void {
  pen.beginPath();
  pen.arc(at.x, at.y, radius, 0, 2 * Math.PI);
}

function triangle(pen: Pen, { x, y }: Vec2, size: number): void {
  pen.beginPath();
  pen.moveTo(x, y - size * 1.2);
  pen.lineTo(x + size * 1.15, y + size * 0.85);
  pen.lineTo(x - size * 1.15, y + size * 0.85);
  pen.closePath();
}
