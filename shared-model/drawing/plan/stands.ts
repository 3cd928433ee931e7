/** Music stands from above: base, desks, the pages on them, and a heavy line at the lip, where the reader is. */

import { standModel, USUAL_STAND } from '../../catalogue/stands.ts';
import { deskDepth, desksOf, type Desk } from '../../document/desks.ts';
import type { Point, Stand } from '../../document/records.ts';
import { circle, line, polygon } from '../outline.ts';
import type { PathItem, Primitive } from '../primitives.ts';
import { WEIGHT } from '../style.ts';
import { itemToPage, onPage, paint, pen, type PlanContext } from './context.ts';

export function drawStand(context: PlanContext, stand: Stand): Primitive[] {
  const desks = desksOf(stand);
  return [
    ...columns(stand).flatMap((at) => drawBase(context, stand, at)),
    ...desks.flatMap((desk) => drawDesk(context, desk)),
    ...(stand.form === 'backToBack' ? drawRidge(context, desks) : []),
  ];
}

/** Feet in the stand's own frame: under the desk's middle, or under both desks of a pair. */
function columns(stand: Stand): Point[] {
  if (stand.form === 'single') return [{ x: 0, y: 0 }];
  const out = deskDepth(stand) / 2;
  return [
    { x: 0, y: -out },
    { x: 0, y: out },
  ];
}

function drawBase(context: PlanContext, stand: Stand, at: Point): Primitive[] {
  const { baseRadius } = standModel(stand.model) ?? USUAL_STAND;
  const map = itemToPage(context, stand);
  const away = at.y > 0 ? 1 : -1;
  const legs: PathItem[] = LEGS.flatMap((angle) => {
    const turn = (angle * Math.PI) / 180;
    return line(at, { x: at.x + baseRadius * Math.sin(turn), y: at.y + away * baseRadius * Math.cos(turn) });
  });
  return [
    paint(map, legs, pen(context.palette.metal, WEIGHT.medium)),
    paint(map, circle(at, 25), { fill: context.palette.metal }),
  ];
}

/** One leg under the reader, two away from him. */
const LEGS = [0, 120, 240];

function drawDesk(context: PlanContext, desk: Desk): Primitive[] {
  const { palette } = context;
  const corners = desk.board.map((corner) => onPage(context, corner));
  const [left, right] = corners;
  const lip = left && right ? line(left, right) : [];
  return [
    { kind: 'path', path: polygon(corners), fill: palette.desk },
    ...drawPages(context, desk),
    { kind: 'path', path: lip, ...pen(palette.ink, WEIGHT.heavy) },
  ];
}

/** The row of pages, each its own sheet. */
function drawPages(context: PlanContext, desk: Desk): Primitive[] {
  if (!desk.paper) return [];
  const { palette } = context;
  const [a, b, c, d] = desk.paper;
  const across = (from: Point, to: Point, share: number): Point => ({
    x: from.x + (to.x - from.x) * share,
    y: from.y + (to.y - from.y) * share,
  });
  const count = Math.max(1, Math.round(desk.side.pagesAcross));
  return Array.from({ length: count }, (_, page): Primitive => {
    const [from, to] = [page / count, (page + 1) / count];
    const sheet = [across(a, b, from), across(a, b, to), across(d, c, to), across(d, c, from)];
    return {
      kind: 'path',
      path: polygon(sheet.map((corner) => onPage(context, corner))),
      fill: palette.page,
      ...pen(palette.desk, WEIGHT.hair),
    };
  });
}

/** Where the upper edges of a pair meet. */
function drawRidge(context: PlanContext, [first]: readonly Desk[]): Primitive[] {
  if (!first) return [];
  const { board, paper } = first;
  const widest =
    paper && Math.hypot(paper[1].x - paper[0].x, paper[1].y - paper[0].y) > widthOf(board) ? paper : board;
  const ends = line(onPage(context, widest[3]), onPage(context, widest[2]));
  return [{ kind: 'path', path: ends, ...pen(context.palette.ink, WEIGHT.bold) }];
}

function widthOf([a, b]: Desk['board']): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}
