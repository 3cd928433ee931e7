/** Where round a thing its label may stand: rings of boxes further and further out. */

import type { Box } from '../primitives.ts';
import type { LabelRequest } from './label-requests.ts';

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Distance from the thing, and what standing that far off costs. */
export interface Ring {
  readonly distance: number;
  readonly cost: number;
  /** A line has to lead to the thing. */
  readonly leader: boolean;
}

/** Up to here a label seems to belong to its thing without a line, mm. */
const NO_LEADER = 1.8;

/** A step of a few millimetres costs 3; near the thing the steps are small. */
function costAt(distance: number): number {
  return Math.max(0, 5.6 * Math.log2((distance + 4) / 4.7));
}

function ringsAt(distances: readonly number[]): Ring[] {
  return distances.map((distance) => ({ distance, cost: costAt(distance), leader: distance > NO_LEADER }));
}

/** How far off the thing labels are tried, mm. */
export const RINGS: readonly Ring[] = ringsAt([0.7, 3.5, 7, 11, 16, 22, 30, 40, 55]);

/** The same in smaller steps, for large labels that must stand clear; beyond, nobody would look for a thing's figures. */
export const FINE_RINGS: readonly Ring[] = ringsAt([0.7, 1.7, 2.7, 4, 5.5, 7, 9, 11, 13.5, 16]);

export interface Spot {
  readonly box: Box;
  /** A slight preference among places that are equally good otherwise. */
  readonly bias: number;
}

/** Spots round the thing's box, as fractions of the way out; those first in the list look best. */
const ROUND: readonly (readonly [number, number])[] = [
  [1, 0],
  [-1, 0],
  [0, -1],
  [0, 1],
  [1, -0.6],
  [1, 0.6],
  [-1, -0.6],
  [-1, 0.6],
  [0.6, -1],
  [-0.6, -1],
  [0.6, 1],
  [-0.6, 1],
  [1, -1],
  [1, 1],
  [-1, -1],
  [-1, 1],
  [1, -0.3],
  [1, 0.3],
  [-1, -0.3],
  [-1, 0.3],
  [0.3, -1],
  [-0.3, -1],
  [0.3, 1],
  [-0.3, 1],
  [0.8, -1],
  [-0.8, -1],
  [0.8, 1],
  [-0.8, 1],
  [1, -0.15],
  [1, 0.15],
  [-1, -0.15],
  [-1, 0.15],
];

/** The spots of one ring; with the first come those inside the thing. */
export function spotsAt(request: LabelRequest, size: Size, { distance, leader }: Ring): Spot[] {
  const { item } = request;
  const [middleX, middleY] = [item.x + item.width / 2, item.y + item.height / 2];
  const [reachX, reachY] = [
    (item.width + size.width) / 2 + distance,
    (item.height + size.height) / 2 + distance,
  ];
  const found = ROUND.map(([across, down], rank) => ({
    box: centred(middleX + across * reachX, middleY + down * reachY, size),
    bias: rank * 0.05,
  }));
  return leader ? found : [...spotsInside(request, size), ...found];
}

function spotsInside({ item, inside }: LabelRequest, size: Size): Spot[] {
  const air = inside === 'corner' ? 2 : 1;
  const [slackX, slackY] = [(item.width - size.width) / 2 - air, (item.height - size.height) / 2 - air];
  if (inside === null || slackX < 0 || slackY < 0) return [];
  const [middleX, middleY] = [item.x + item.width / 2, item.y + item.height / 2];
  return (inside === 'middle' ? MIDDLES : CORNERS).map(([across, down], rank) => ({
    box: centred(middleX + across * slackX, middleY + down * slackY, size),
    bias: rank * 0.05 - 1,
  }));
}

const CORNERS = [
  [-1, -1],
  [1, -1],
  [1, 1],
  [-1, 1],
] as const;

/** In the middle, or beside what lies there. */
const MIDDLES = [[0, 0], [0, -0.6], [0, 0.6], [0, -1], [0, 1], ...CORNERS] as const;

export function centred(x: number, y: number, { width, height }: Size): Box {
  return { x: x - width / 2, y: y - height / 2, width, height };
}
