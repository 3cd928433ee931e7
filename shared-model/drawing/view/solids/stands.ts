/** Music stands: foot, column, desk with its tray, and the pages with what is printed on them. */

import { standModel, USUAL_STAND } from '../../../catalogue/stands.ts';
import { desksOf, type Desk } from '../../../document/desks.ts';
import type { Stand } from '../../../document/records.ts';
import { facingVector, facingTowards, type Vec3 } from '../../../geometry/frame.ts';
import { floorUnder, type ViewContext } from '../context.ts';
import { limb, sheet, type Part, type Solid } from '../mesh.ts';
import { between, cross, difference, dot, scaled, sum, unit } from '../vectors.ts';
import { staves } from './staves.ts';

export function standSolid(context: ViewContext, stand: Stand): Solid {
  const floor = floorUnder(context, stand);
  return {
    subject: stand.id,
    parts: desksOf(stand, floor).flatMap((desk, index) => [
      ...footParts(context, stand, desk, floor),
      ...deskParts(context, desk),
      ...pageParts(context, desk, index),
    ]),
  };
}

const COLUMN = 13;
const LEG = 9;
/** How high above the floor the legs leave the column. */
const HUB = 110;

/** One leg under the reader, two away from him, as on the plan. */
function footParts(
  { tints }: ViewContext,
  stand: Stand,
  { board, towardsReader }: Desk,
  floor: number,
): Part[] {
  const { baseRadius } = standModel(stand.model) ?? USUAL_STAND;
  const middle = between(board[0], board[2], 0.5);
  const at = (x: number, y: number, z: number): Vec3 => ({ x: middle.x + x, y: middle.y + y, z: floor + z });
  const reader = facingTowards({ x: 0, y: 0 }, towardsReader);
  const legs = [0, 120, 240].map((angle) => {
    const toe = facingVector(reader + angle);
    return limb(at(0, 0, HUB), at(toe.x * baseRadius, toe.y * baseRadius, LEG), LEG, tints.metal);
  });
  return [...legs, limb(at(0, 0, HUB - 40), { ...middle, z: middle.z - 20 }, COLUMN, tints.metal)];
}

const TRAY = 55;

function deskParts({ tints, camera }: ViewContext, { board }: Desk): Part[] {
  const [lipLeft, lipRight] = board;
  const out = scaled(normalOf(board), TRAY);
  const tray = [lipLeft, sum(lipLeft, out), sum(lipRight, out), lipRight];
  const over = !isBefore(board, camera.eye);
  return [sheet(board, { fill: tints.desk, over }), sheet(tray, { fill: tints.desk })];
}

/** Paper lies this far before its board, so that each hides the other from its own side. */
const PAPER_OFF_BOARD = 2;

/** The row of pages, each its own sheet. */
function pageParts(context: ViewContext, { paper, side, board }: Desk, deskIndex: number): Part[] {
  if (!paper) return [];
  const off = scaled(normalOf(board), PAPER_OFF_BOARD);
  const [a, b, c, d] = paper.map((corner) => sum(corner, off));
  if (!a || !b || !c || !d) return [];
  const count = Math.max(1, Math.round(side.pagesAcross));
  return Array.from({ length: count }, (_, page): Part => {
    const [from, to] = [page / count, (page + 1) / count];
    const corners = [between(a, b, from), between(a, b, to), between(d, c, to), between(d, c, from)] as const;
    return sheet(corners, {
      fill: context.tints.page,
      over: isBefore(board, context.camera.eye),
      marks: staves(context, corners, { side, page: deskIndex * count + page, row: between(a, c, 0.5) }),
    });
  });
}

/** Whether an eye is on the reader's side of a desk. */
function isBefore(board: Desk['board'], eye: Vec3): boolean {
  return dot(normalOf(board), difference(eye, board[0])) > 0;
}

/** Of a tilted rectangle, towards its reader. */
function normalOf([a, b, , d]: Desk['board']): Vec3 {
  return unit(cross(difference(b, a), difference(d, a)));
}
