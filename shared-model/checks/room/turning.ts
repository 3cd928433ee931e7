/**
 * Room to turn a wheelchair: a circle of 60 in (1525 mm), ADA/ABA 304.3.1 (the circle from memory), over the user's place, over each bend in which
 * his way turns back, and over where he comes to a stand before the exit. Of all circles over such a spot the widest free
 * one on the platform is found: what lies beyond a door is not known.
 *
 * Through 90 degrees a wheelchair turns within ways of 36 in (ADA Standards 1991, figure 7(a)); to turn back round
 * something less than 48 in (1220 mm) wide it takes more (ADA/ABA 403.5.2: 60 in at the turn where the ways are 36 in).
 *
 * Accuracy: a circle's width is measured on the outlines; a wider one by less than 1 mm may be missed, because it is looked
 * for between points SPACING apart (sites.ts).
 */

import { circle } from '../../catalogue/shapes.ts';
import type { Vec2 } from '../../geometry/frame.ts';
import type { RouteResult, TurningCircle } from '../report.ts';
import { clearanceAlong, type Clearances } from './clearance.ts';
import { someSites, type Sites } from './sites.ts';
import type { Walker } from './walk.ts';
import { between } from './walls.ts';
import { discAt, nodeCount, startOf, wayGraph, type Disc } from './way-graph.ts';

export const TURNING_DIAMETER = 1525;
/** Bends of more than this, within the length below, are such in which somebody turns back. */
const MOST_TURN = (91 * Math.PI) / 180;
/** Round something wider than this one drives in two bends. */
export const BEND_LENGTH = 1220;
/** A wheelchair before a door has its middle so far from it: half of 48 in (1220 mm), ADA/ABA 305.3. */
export const BEFORE_DOOR = 610;
/** Circles wider than this are found to be so wide at least, and no more is asked. */
const FAR = 2000;

/** What a wheelchair turns among. */
export interface TurningRoom {
  readonly sites: Sites;
  readonly clearances: Clearances;
}

/** One circle for each spot on the way where room to turn is asked for; of somebody without a way, at his place. */
export function turningCircles(
  { sites, clearances }: TurningRoom,
  walker: Walker,
  { path }: RouteResult,
): TurningCircle[] {
  const bends = bendsOf(path).map((near) => ({ near, at: 'bend' as const }));
  const end = beforeEnd(path, BEFORE_DOOR);
  const ends = end ? [{ near: end, at: 'exit' as const }] : [];
  return [{ near: walker.spot, at: 'place' as const }, ...bends, ...ends].map(({ near, at }) => {
    const { x, y, radius } = widestOver(near, sites, walker.free);
    // Between the sites of an edge the circle bulges over it by a little.
    const free = clearanceAlong(clearances, { a: { x, y }, b: { x, y } }, walker.free, radius);
    return { at, near, x, y, diameter: 2 * free };
  });
}

/** The point of a way so far before its end, or its start; null of no way. */
function beforeEnd(path: readonly Vec2[], length: number): Vec2 | null {
  let left = length;
  for (let index = path.length - 1; index > 0; index--) {
    const [a, b] = [path[index - 1], path[index]];
    const leg = a && b ? Math.hypot(b.x - a.x, b.y - a.y) : 0;
    if (a && b && leg >= left) return leg > 0 ? between({ a: b, b: a }, left / leg) : b;
    left -= leg;
  }
  return path[0] ?? null;
}

/** The corners about which a way turns back: the middle of each bend. */
export function bendsOf(path: readonly Vec2[]): Vec2[] {
  const turns = turnsAlong(path);
  const bends: Vec2[] = [];
  for (let from = 0; from < turns.length; from++) {
    const last = lastWithin(turns, from);
    const bend = turns.slice(from, last + 1);
    if (Math.abs(sumOf(bend)) <= MOST_TURN) continue;
    bends.push(middleOf(bend));
    from = last;
  }
  return bends;
}

interface Turn {
  readonly corner: Vec2;
  /** Along the way. */
  readonly at: number;
  /** Radians to the left. */
  readonly by: number;
}

function turnsAlong(path: readonly Vec2[]): Turn[] {
  let walked = 0;
  return path.flatMap((corner, index) => {
    const [before, after] = [path[index - 1], path[index + 1]];
    if (before) walked += Math.hypot(corner.x - before.x, corner.y - before.y);
    if (!before || !after) return [];
    const [px, py] = [corner.x - before.x, corner.y - before.y];
    const [qx, qy] = [after.x - corner.x, after.y - corner.y];
    return [{ corner, at: walked, by: Math.atan2(px * qy - py * qx, px * qx + py * qy) }];
  });
}

function lastWithin(turns: readonly Turn[], from: number): number {
  const start = turns[from]?.at ?? 0;
  let last = from;
  while ((turns[last + 1]?.at ?? Infinity) - start <= BEND_LENGTH) last++;
  return last;
}

function sumOf(turns: readonly Turn[]): number {
  return turns.reduce((sum, { by }) => sum + by, 0);
}

/** The corner by which half of the bend is done. */
function middleOf(bend: readonly Turn[]): Vec2 {
  const half = Math.abs(sumOf(bend)) / 2;
  let done = 0;
  const middle = bend.find(({ by }) => Math.abs((done += by)) >= half);
  return (middle ?? bend[0])?.corner ?? { x: NaN, y: NaN };
}

/**
 * The widest circle over a spot that holds no site of anything but `free`. Either it goes through three sites (a node of
 * their net), or it grew until the spot itself lay on its rim (a node of the net in which the spot is a site too).
 */
function widestOver(spot: Vec2, sites: Sites, free: ReadonlySet<string>): Disc {
  const around = sitesAround(spot, sites, free);
  const through = wayGraph(around);
  const touching = wayGraph(withSite(around, spot));
  const added = around.owners.length;
  const isOver = ({ x, y, radius }: Disc): boolean => Math.hypot(x - spot.x, y - spot.y) <= radius;
  const touches = (node: number): boolean =>
    [0, 1, 2].some((corner) => startOf(touching, 3 * node + corner) === added);
  let widest: Disc = { x: spot.x, y: spot.y, radius: 0 };
  const look = (disc: Disc): void => {
    if (disc.radius > widest.radius) widest = disc;
  };
  for (let node = 0; node < nodeCount(through); node++) {
    const disc = discAt(through, node);
    if (isOver(disc)) look(disc);
  }
  for (let node = 0; node < nodeCount(touching); node++) if (touches(node)) look(discAt(touching, node));
  return widest;
}

/** The sites near the spot, and a ring of others round them that no circle gets over. */
function sitesAround(spot: Vec2, sites: Sites, free: ReadonlySet<string>): Sites {
  const { coordinates, owners } = sites;
  const near: number[] = [];
  owners.forEach((owner, site) => {
    const [dx, dy] = [(coordinates[2 * site] ?? NaN) - spot.x, (coordinates[2 * site + 1] ?? NaN) - spot.y];
    if (Math.abs(dx) < FAR && Math.abs(dy) < FAR && Math.hypot(dx, dy) < FAR && !free.has(owner))
      near.push(site);
  });
  return circle(spot, FAR).reduce(withSite, someSites(sites, near));
}

function withSite({ coordinates, owners }: Sites, { x, y }: Vec2): Sites {
  const more = new Float64Array(coordinates.length + 2);
  more.set(coordinates);
  more.set([x, y], coordinates.length);
  return { coordinates: more, owners: [...owners, ''] };
}
