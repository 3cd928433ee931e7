/**
 * A row of pages taped side to side, set on one desk and folded, seen from above: x to the reader's right, y away from him.
 *
 * Written from the paper alone: rigid panels, hinges that give way only to the sides on which they are scored, a desk as
 * wide as the pages that are open. Every way of folding that the hinges allow is tried, until one lies clear of itself and
 * of the open pages. Shares nothing with the product but the row.
 */

import {
  distance,
  crosses,
  place,
  turned,
  type Point,
  type Pose,
  type Segment,
  type Vector,
} from './space.ts';

/** To which sides a hinge gives way: `towards` the reader (printed on printed), `away` (blank on blank). */
export type Give = 'towards' | 'away';

export interface Row {
  /** What is printed, left to right; null: nothing. */
  readonly pages: readonly (string | null)[];
  /** One fewer than pages. */
  readonly hinges: readonly ReadonlySet<Give>[];
  /** Whether the text of each page is upright while the row lies flat. */
  readonly upright: readonly boolean[];
}

export interface Lying {
  /** What the reader sees from his left, or why he cannot read. */
  readonly seen: readonly (string | null)[] | 'on its head' | 'covered';
  /** How each hinge is bent; null: flat. */
  readonly bends: readonly (Give | null)[];
}

const WIDTH = 210;
const HEIGHT = 297;
/** What folded paper lacks of lying quite flat, so that layers stay apart. */
const SPRING = 0.004;
const NEAR = 1e-6;

/**
 * All ways in which `shown` pages, from index `first`, lie open and everything else behind them. Empty: it cannot lie so.
 */
export function waysToLie(row: Row, first: number, shown: number): Lying[] {
  return bendsOf(row, first, shown).flatMap((bends) => {
    const poses = posesOf(bends.map(angleOf), first);
    if (!holds(poses) || selfCrossings(poses).length > 0) return [];
    const standsOut = poses.some((pose, index) => !isOpen(index, first, shown) && leaves(pose, shown));
    return standsOut ? [] : [{ seen: look(row, poses, first, shown), bends }];
  });
}

type Bends = Lying['bends'];

/**
 * What is in the way of moving the row on by two pages. Tried: what lies behind drawn out on the right, then folded away on
 * the left; and a leaf laid over from the right to the left, nothing being opened. Empty: one of the two goes.
 */
export function movesBy(from: Lying, to: Lying, first: number): string[] {
  const open = from.bends.map((bend, hinge) => (to.bends[hinge] === bend ? bend : null));
  const drawnOut = [
    ...onTheWay(from.bends, open, first),
    ...onTheWay(open, to.bends, first + 2),
    ...selfCrossings(posesOf(open.map(angleOf), first)),
  ];
  return drawnOut.length === 0 ? [] : onTheWay(from.bends, to.bends, first);
}

const STEPS = 16;

function onTheWay(start: Bends, end: Bends, held: number): string[] {
  return Array.from({ length: STEPS - 1 }, (_, step) => (step + 1) / STEPS).flatMap((share) => {
    const angles = start.map(
      (bend, hinge) => angleOf(bend) * (1 - share) + angleOf(end[hinge] ?? null) * share,
    );
    return selfCrossings(posesOf(angles, held));
  });
}

/** Flat within the open pages, bent as the hinges allow elsewhere. */
function bendsOf({ hinges }: Row, first: number, shown: number): (Give | null)[][] {
  return hinges.reduce<(Give | null)[][]>(
    (all, gives, hinge) => {
      const lies = hinge >= first && hinge < first + shown - 1;
      const choices = lies ? [null] : [...gives];
      return all.flatMap((before) => choices.map((choice) => [...before, choice]));
    },
    [[]],
  );
}

/** Of the panel to the right of a hinge against the one to the left, from above, anticlockwise. */
function angleOf(bend: Give | null): number {
  if (bend === null) return 0;
  return (bend === 'away' ? 1 : -1) * (Math.PI - SPRING);
}

/** Every panel in space (z up), the one at `held` flat on the desk with its left edge at the desk's. */
function posesOf(angles: readonly number[], held: number): Pose[] {
  const poses: Pose[] = [];
  poses[held] = { x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1], origin: [0, 0, 0] };
  for (let index = held + 1; index <= angles.length; index++)
    poses[index] = hinged(poses[index - 1] as Pose, 1, angles[index - 1] ?? 0);
  for (let index = held - 1; index >= 0; index--)
    poses[index] = hinged(poses[index + 1] as Pose, -1, -(angles[index] ?? 0));
  return poses;
}

/** The next panel to the right (1) or to the left (-1) of one, turned about the edge that they share. */
function hinged(before: Pose, side: 1 | -1, angle: number): Pose {
  const flat = { ...before, origin: place(before, [side * WIDTH, 0, 0]) };
  return turned(flat, place(before, [side > 0 ? WIDTH : 0, 0, 0]), [0, 0, 1], angle);
}

const corners: readonly Vector[] = [
  [0, 0, 0],
  [WIDTH, 0, 0],
  [WIDTH, 0, HEIGHT],
  [0, 0, HEIGHT],
];

/** Edges that are taped lie on each other, and no panel is stretched. */
function holds(poses: readonly Pose[]): boolean {
  const at = (pose: Pose, corner: number): Vector => place(pose, corners[corner] as Vector);
  return poses.every((pose, index) => {
    const next = poses[index + 1];
    const meets =
      !next || (distance(at(pose, 1), at(next, 0)) < NEAR && distance(at(pose, 2), at(next, 3)) < NEAR);
    return meets && Math.abs(distance(at(pose, 0), at(pose, 2)) - Math.hypot(WIDTH, HEIGHT)) < NEAR;
  });
}

function fromAbove(pose: Pose): Segment {
  return [0, WIDTH].map((x): Point => {
    const [across, deep] = place(pose, [x, 0, 0]);
    return [across, deep];
  }) as [Point, Point];
}

/** Neighbours meet at their hinge and nowhere else. */
function selfCrossings(poses: readonly Pose[]): string[] {
  const segments = poses.map(fromAbove);
  return segments.flatMap((a, index) =>
    segments.flatMap((b, other) =>
      other > index + 1 && crosses(a, b) ? [`page ${index + 1} passes through page ${other + 1}`] : [],
    ),
  );
}

function isOpen(index: number, first: number, shown: number): boolean {
  return index >= first && index < first + shown;
}

/** Beyond the desk that the open pages fill, on the left or the right. */
function leaves(pose: Pose, shown: number): boolean {
  return fromAbove(pose).some(([x]) => x < -1 || x > shown * WIDTH + 1);
}

function look({ pages, upright }: Row, poses: readonly Pose[], first: number, shown: number): Lying['seen'] {
  const inFront = poses.some((pose, index) => {
    const middle = fromAbove(pose).reduce((sum, [, y]) => sum + y, 0) / 2;
    return !isOpen(index, first, shown) && middle < NEAR;
  });
  if (inFront) return 'covered';
  if (upright.slice(first, first + shown).includes(false)) return 'on its head';
  return pages.slice(first, first + shown);
}
