/** Helpers for looking into pictures: which share of a player's window is painted over. */

import type { SeatPoint, Target } from '#model/checks/scene.ts';
import type { Document } from '#model/document/document.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import { cameraOf, project, type Camera } from '#model/drawing/view/camera.ts';
import type { ViewRequest } from '#model/drawing/view/context.ts';
import { sheet, type Solid } from '#model/drawing/view/mesh.ts';
import { pictureOf } from '#model/drawing/view/picture.ts';
import type { View } from '#model/drawing/view/view.ts';
import type { Box, PathItem, Primitive } from '#model/drawing/primitives.ts';
import { facingTowards, type Vec2, type Vec3 } from '#model/geometry/frame.ts';
import { SETUP } from '../../../helpers/build.ts';
import { roughMeasure } from '../drawings.ts';

/** A picture on A5, without a view. */
export function viewRequest(document: Document, setup = SETUP): Omit<ViewRequest, 'view'> {
  return {
    document,
    setup,
    width: 210,
    height: 148,
    palette: PALETTES.print,
    measure: roughMeasure,
    units: 'metric',
    names: true,
    show: 'figures',
  };
}

/** The window of the sight check as a card in the scene. */
const CARD = 'window';

/** Paper that the window fills but for a margin: long enough for any sampling. */
const PAPER = 200;

/** A level view from a seat that holds just the window. */
export function viewOfWindow(seat: SeatPoint, target: Target): View {
  const away = Math.hypot(target.x - seat.x, target.y - seat.y);
  const half = (target.width / 2 / away) * 1.05;
  const height = (target.z1 - target.z0) / away;
  return {
    subject: seat.id,
    label: seat.label,
    from: 'seat',
    eye: { x: seat.x, y: seat.y, z: seat.z },
    facing: facingTowards(seat, target),
    pitch: 0,
    field: {
      left: -half,
      right: half,
      bottom: (target.z0 - seat.z) / away - 0.02 * height,
      top: (target.z1 - seat.z) / away + 0.02 * height,
    },
  };
}

export const windowCamera = (view: View): Camera => cameraOf(view, PAPER, PAPER);

/**
 * The share of a window at which the last painted area is the window's card or of a subject that does not hide it,
 * on a grid of side x side spots.
 */
export function paintedShare(
  solids: readonly Solid[],
  { seat, target, side }: { readonly seat: SeatPoint; readonly target: Target; readonly side: number },
  own: ReadonlySet<string> = new Set([target.id]),
): number {
  const camera = windowCamera(viewOfWindow(seat, target));
  const [left, right] = windowEnds(seat, target);
  const corner = ({ x, y }: Vec2, z: number): Vec3 => ({ x, y, z });
  const card = sheet(
    [corner(left, target.z0), corner(right, target.z0), corner(right, target.z1), corner(left, target.z1)],
    { fill: '#ffffff' },
  );
  const all = [...solids, { subject: CARD, parts: [card] }];
  const picture = pictureOf(all, camera, PALETTES.print, (subject) => subject);
  // The view is level and square to the window, so on paper the window is an upright rectangle.
  const [low, high] = [project(camera, corner(left, target.z0)), project(camera, corner(right, target.z1))];
  const spots = { x: low.x, y: high.y, width: high.x - low.x, height: low.y - high.y };
  const tops = topSubjects(picture, spots, side);
  return tops.filter((top) => top === CARD || (top !== null && own.has(top))).length / tops.length;
}

/** Left and right ends of the window as the seat sees it. */
function windowEnds(seat: SeatPoint, { x, y, width }: Target): [Vec2, Vec2] {
  const away = Math.hypot(x - seat.x, y - seat.y);
  const [rx, ry] = [(y - seat.y) / away, -(x - seat.x) / away];
  return [
    { x: x - (rx * width) / 2, y: y - (ry * width) / 2 },
    { x: x + (rx * width) / 2, y: y + (ry * width) / 2 },
  ];
}

/** What is painted last in the middle of each cell of a grid of side x side over a box, by painting it all. */
function topSubjects(picture: readonly Primitive[], box: Box, side: number): (string | null)[] {
  const tops: (string | null)[] = new Array<string | null>(side * side).fill(null);
  for (const { subject, ring } of ringsIn(picture)) {
    const cells = ring.map(({ x, y }) => ({
      x: ((x - box.x) / box.width) * side - 0.5,
      y: ((y - box.y) / box.height) * side - 0.5,
    }));
    paintRing(cells, side, (cell) => (tops[cell] = subject));
  }
  return tops;
}

/** Row by row between each odd crossing and the next one. */
function paintRing(ring: readonly Vec2[], side: number, paint: (cell: number) => void): void {
  const [first, last] = [Math.min(...ring.map(({ y }) => y)), Math.max(...ring.map(({ y }) => y))];
  for (let row = Math.max(0, Math.ceil(first)); row <= Math.min(side - 1, Math.floor(last)); row++) {
    const crossings = ring.flatMap((a, i) => {
      const b = ring[(i + 1) % ring.length] ?? a;
      return a.y > row === b.y > row ? [] : a.x + ((row - a.y) / (b.y - a.y)) * (b.x - a.x);
    });
    crossings.sort((a, b) => a - b);
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const [from, to] = [Math.ceil(crossings[i] ?? 0), Math.floor(crossings[i + 1] ?? 0)];
      for (let x = Math.max(0, from); x <= Math.min(side - 1, to); x++) paint(row * side + x);
    }
  }
}

interface PaintedRing {
  readonly subject: string;
  readonly ring: readonly Vec2[];
}

/** Every filled ring of a picture with its subject, in painting order. */
function ringsIn(picture: readonly Primitive[], subject = ''): PaintedRing[] {
  return picture.flatMap((each): PaintedRing[] => {
    if (each.kind === 'group') return ringsIn(each.children, each.subject ?? subject);
    if (each.kind === 'text' || each.fill === undefined) return [];
    return ringsOf(each.path).map((ring) => ({ subject, ring }));
  });
}

function ringsOf(path: readonly PathItem[]): Vec2[][] {
  const rings: Vec2[][] = [];
  for (const item of path) {
    if (item[0] === 'M') rings.push([{ x: item[1], y: item[2] }]);
    else if (item[0] === 'L') rings.at(-1)?.push({ x: item[1], y: item[2] });
  }
  return rings;
}
