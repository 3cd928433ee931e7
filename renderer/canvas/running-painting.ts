/** Paints the moment of the time strip above the plan: pages large enough to read, whatever the scale of the plan. */

import type { Vec2 } from '#model/geometry/frame.ts';
import { toScreen } from './camera.ts';
import type { OverlayFrame } from './overlay.ts';
import { paintSlip, strokeLine, writeAt } from './overlay-strokes.ts';
import type { DeskMark, LeafMark, RunningMarks, WayMark } from './running-marks.ts';

/** A page is at least as large as this on the screen, however small its desk is, and its number not larger than that. */
const PAGE = { width: 17, depth: 20, text: 12, mostText: 22 } as const;

type Pen = CanvasRenderingContext2D;

export function paintRunning(pen: Pen, { desks, leaves, ways }: RunningMarks, frame: OverlayFrame): void {
  for (const desk of desks) paintDesk(pen, desk, frame);
  for (const leaf of leaves) paintLeaf(pen, leaf, frame);
  for (const way of ways) paintWay(pen, way, frame);
  pen.setLineDash([]);
}

/** A page on the screen: its middle, and from there to its right edge and to its foot. */
interface Card {
  readonly at: Vec2;
  readonly along: Vec2;
  readonly out: Vec2;
}

function paintDesk(pen: Pen, desk: DeskMark, frame: OverlayFrame): void {
  const width = Math.max(PAGE.width, desk.pageWidth * frame.camera.scale);
  const depth = Math.max(PAGE.depth, desk.depth * frame.camera.scale);
  const middle = toScreen(frame.camera, frame.view, desk.middle);
  // On the screen y runs down.
  const [along, out] = [onScreen(desk.along), onScreen(desk.out)];
  const down = desk.overRidge ? depth / 2 + 1 : 0;
  for (const [slot, page] of desk.pages.entries()) {
    const aside = (slot - (desk.pages.length - 1) / 2) * width;
    const at = { x: middle.x + along.x * aside + out.x * down, y: middle.y + along.y * aside + out.y * down };
    const card: Card = { at, along: times(along, width / 2 - 0.5), out: times(out, depth / 2) };
    const isOn = slot === desk.reading;
    paintPage(pen, { card, page, isOn, played: isOn && !desk.rests, moving: desk.moving }, frame);
  }
}

interface PageMark {
  readonly card: Card;
  readonly page: number | null;
  /** The reader is on this page. */
  readonly isOn: boolean;
  /** And plays from it. */
  readonly played: boolean;
  readonly moving: boolean;
}

/**
 * The page that the reader is on has a thick edge and a tab at its foot; while he plays from it, it is ink with the number
 * left out of it. A leaf in motion is a broken line.
 */
function paintPage(pen: Pen, { card, page, isOn, played, moving }: PageMark, { inks }: OverlayFrame): void {
  const { at, out } = card;
  outline(pen, cornersOf(card));
  pen.fillStyle = played ? inks.ink : inks.paper;
  pen.fill();
  pen.setLineDash(moving ? [3, 3] : page === null ? [2, 2] : []);
  pen.strokeStyle = page === null || moving ? inks.faint : inks.ink;
  pen.lineWidth = isOn ? 2.5 : 1.25;
  pen.stroke();
  pen.setLineDash([]);
  if (isOn) paintTab(pen, card, inks.ink);
  if (page === null) return;
  pen.fillStyle = played ? inks.paper : moving ? inks.faint : inks.ink;
  const size = Math.min(PAGE.mostText, Math.max(PAGE.text, Math.hypot(out.x, out.y) * 0.9));
  writeAt(pen, String(page), { x: at.x, y: at.y + 0.5 }, { weight: 700, size });
}

/** A small triangle towards the reader. */
function paintTab(pen: Pen, { at, along, out }: Card, colour: string): void {
  const foot = { x: at.x + out.x, y: at.y + out.y };
  const [a, o] = [times(unit(along), 5), times(unit(out), 6)];
  outline(pen, [
    { x: foot.x - a.x, y: foot.y - a.y },
    { x: foot.x + a.x, y: foot.y + a.y },
    { x: foot.x + o.x, y: foot.y + o.y },
  ]);
  pen.fillStyle = colour;
  pen.fill();
}

/** An arc over the desk from where the leaf lay to where it will lie, and who moves it. */
function paintLeaf(pen: Pen, { from, to, words }: LeafMark, frame: OverlayFrame): void {
  const { camera, view, inks } = frame;
  const [start, end] = stretched(toScreen(camera, view, from), toScreen(camera, view, to), 44);
  const middle = { x: (start.x + end.x) / 2, y: (start.y + end.y) / 2 };
  // To the side that lies higher on the screen, so that the words above it follow.
  const rise = Math.max(24, Math.abs(end.x - start.x) * 0.5);
  const bend = { x: middle.x + (end.y - start.y) * 0.4, y: middle.y - rise };
  for (const [colour, width] of [
    [inks.paper, 6],
    [inks.ink, 2.5],
  ] as const) {
    pen.beginPath();
    pen.moveTo(start.x, start.y);
    pen.quadraticCurveTo(bend.x, bend.y, end.x, end.y);
    pen.strokeStyle = colour;
    pen.lineWidth = width;
    pen.stroke();
    paintPoint(pen, [bend, end], colour, width + 5);
  }
  paintSlip(pen, { x: middle.x, y: Math.min(start.y, end.y, (bend.y + middle.y) / 2) - 18 }, words, frame);
}

/** There by a broken line with a point; only reaching for something: a short dotted one. */
function paintWay(pen: Pen, { from, to, walks, words }: WayMark, frame: OverlayFrame): void {
  const [start, end] = [toScreen(frame.camera, frame.view, from), toScreen(frame.camera, frame.view, to)];
  strokeLine(pen, [start, end], frame.inks.paper, 6);
  pen.setLineDash(walks ? [8, 5] : [1, 5]);
  strokeLine(pen, [start, end], frame.inks.ink, 2.5);
  pen.setLineDash([]);
  paintPoint(pen, [start, end], frame.inks.ink, 8);
  paintSlip(pen, { x: end.x, y: Math.min(start.y, end.y) - 22 }, words, frame);
}

/** The head of an arrow that comes from the first spot and ends at the second. */
function paintPoint(pen: Pen, [from, at]: readonly [Vec2, Vec2], colour: string, size: number): void {
  const way = unit({ x: at.x - from.x, y: at.y - from.y });
  const aside = { x: -way.y, y: way.x };
  outline(pen, [
    { x: at.x + way.x * size * 0.6, y: at.y + way.y * size * 0.6 },
    { x: at.x - (way.x - aside.x * 0.6) * size, y: at.y - (way.y - aside.y * 0.6) * size },
    { x: at.x - (way.x + aside.x * 0.6) * size, y: at.y - (way.y + aside.y * 0.6) * size },
  ]);
  pen.fillStyle = colour;
  pen.fill();
}

/** At least so far apart, about their middle. */
function stretched(a: Vec2, b: Vec2, least: number): [Vec2, Vec2] {
  const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  const more = Math.max(0, least - length) / 2 / length;
  const [x, y] = [(b.x - a.x) * more, (b.y - a.y) * more];
  return [
    { x: a.x - x, y: a.y - y },
    { x: b.x + x, y: b.y + y },
  ];
}

function outline(pen: Pen, corners: readonly Vec2[]): void {
  pen.beginPath();
  for (const [index, { x, y }] of corners.entries())
    if (index === 0) pen.moveTo(x, y);
    else pen.lineTo(x, y);
  pen.closePath();
}

function cornersOf({ at, along, out }: Card): Vec2[] {
  return (
    [
      [-1, -1],
      [1, -1],
      [1, 1],
      [-1, 1],
    ] as const
  ).map(([right, down]) => ({
    x: at.x + along.x * right + out.x * down,
    y: at.y + along.y * right + out.y * down,
  }));
}

function onScreen({ x, y }: Vec2): Vec2 {
  return { x, y: -y };
}

function times({ x, y }: Vec2, by: number): Vec2 {
  return { x: x * by, y: y * by };
}

function unit({ x, y }: Vec2): Vec2 {
  return times({ x, y }, 1 / (Math.hypot(x, y) || 1));
}
