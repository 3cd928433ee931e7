/**
 * Shortest ways between spots of the platform for something of a given width: a net of straight legs between the corners
 * that a way can bend round (corners.ts), each looked at on the outlines themselves, and Dijkstra's search over it.
 */

import { clearanceAlong, clearancesOf, keepsClear, type Clearances } from '../../checks/room/clearance.ts';
import { FIRST_STEP, SQUEEZE } from '../../checks/room/first-step.ts';
import type { Ground } from '../../checks/room/sites.ts';
import { between as along } from '../../checks/room/walls.ts';
import type { Vec2 } from '../../geometry/frame.ts';
import { depthInPolygon, pointInPolygon, type Polygon } from '../../geometry/polygon.ts';
import { cornersRound } from './corners.ts';
import { singleLine } from './single-line.ts';

/** A spot that a way begins or ends at. */
export interface End extends Vec2 {
  /**
   * A thing may stand closer to others than it can be carried past them; within the first step a squeeze will do. Not so
   * in a doorway.
   */
  readonly isDoorway: boolean;
}

export interface Line {
  readonly points: readonly Vec2[];
  readonly length: number;
}

export interface Net {
  /** The shortest way; null when there is none of this width. */
  readonly between: (from: End, to: End) => Line | null;
  /** The way that is shortest with what lies beyond its goal; its length is the way's alone. */
  readonly toAny: (from: End, goals: readonly Goal[]) => Line | null;
}

export interface Goal {
  readonly end: End;
  /** How far it is from there to the very end. */
  readonly beyond: number;
}

/** Rounding must not close a way that is just wide enough, mm. */
const SLACK = 0.05;

interface Room {
  readonly clearances: Clearances;
  readonly radius: number;
}

interface Search extends Room {
  readonly corners: readonly Vec2[];
  readonly legsOf: (corner: number) => readonly Leg[];
}

interface Leg {
  readonly to: number;
  readonly length: number;
}

/** What ways are looked for on. `outline`: of the platform, which no way leaves. */
export interface Floor {
  readonly ground: Ground;
  readonly outline: Polygon;
  readonly width: number;
}

/** For a few ways on a floor that is another one for the next: little is kept. */
export function onceOn({ ground, outline, width }: Floor): Net {
  const radius = width / 2;
  const room: Room = { clearances: clearancesOf(ground), radius };
  let known: readonly Vec2[] | null = null;
  const corners = () =>
    (known ??= bendsOn(ground, room.clearances, radius).filter((corner) => pointInPolygon(corner, outline)));
  const toAny = (from: End, goals: readonly Goal[]): Line | null =>
    straightTo(room, from, goals) ?? roundCorners(room, from, { goals, corners: corners() });
  return { between: (from, to) => toAny(from, [{ end: to, beyond: 0 }]), toAny };
}

/** The straight line to the goal with which it is shortest, if that is free: no other way is shorter. */
function straightTo(room: Room, from: End, goals: readonly Goal[]): Line | null {
  const whole = ({ end, beyond }: Goal): number => distance(from, end) + beyond;
  const [best] = goals.toSorted((a, b) => whole(a) - whole(b));
  if (!best) return null;
  const leg = { a: point(from), b: point(best.end) };
  const isFree = isLegFree(
    room,
    leg,
    [from, best.end].map((end) => leavingFrom(room, end)),
  );
  return isFree ? { points: [leg.a, leg.b], length: distance(leg.a, leg.b) } : null;
}

interface Between {
  readonly goals: readonly Goal[];
  readonly corners: readonly Vec2[];
}

function roundCorners(room: Room, from: End, { goals, corners }: Between): Line | null {
  const ends = [from, ...goals.map(({ end }) => end)];
  const leaving = ends.map((end) => leavingFrom(room, end));
  const spots = [...ends.map(point), ...corners];
  const found = singleLine({
    spots,
    goals: new Map(goals.map(({ beyond }, index) => [index + 1, beyond])),
    isFree: (a, b) => {
      const leg = legBetween(spots, a, b);
      return (
        leg !== null &&
        isLegFree(
          room,
          leg,
          [leaving[a], leaving[b]].flatMap((each) => each ?? []),
        )
      );
    },
  });
  return found && { points: found.spots.flatMap((at) => spots[at] ?? []), length: found.length };
}

function legBetween(spots: readonly Vec2[], from: number, to: number): Straight | null {
  const [a, b] = [spots[from], spots[to]];
  return a && b ? { a, b } : null;
}

/** For many ways on one floor: what was found for one is of use for the next. */
export function netOn({ ground, outline, width }: Floor): Net {
  const radius = width / 2;
  const clearances = clearancesOf(ground);
  const corners = bendsOn(ground, clearances, radius).filter((corner) => pointInPolygon(corner, outline));
  const known: (readonly Leg[] | undefined)[] = [];
  const isFree = (a: Vec2, b: Vec2): boolean => keepsClear(clearances, { a, b }, NOBODY, radius - SLACK);
  const legsOf = (index: number): readonly Leg[] =>
    (known[index] ??= corners.flatMap((corner, to): Leg[] => {
      const here = corners[index];
      return here && to !== index && isFree(here, corner) ? [{ to, length: distance(here, corner) }] : [];
    }));
  const search: Search = { clearances, corners, radius, legsOf };
  const doors = remembered((end: End) => reachedFrom(search, end));
  const between = (from: End, to: End): Line | null => lineBetween(search, doors(from), doors(to));
  return { between, toAny: (from, goals) => bestOf(goals, ({ end }) => between(from, end)) };
}

function bestOf(goals: readonly Goal[], lineTo: (goal: Goal) => Line | null): Line | null {
  let best: { line: Line; whole: number } | null = null;
  for (const goal of goals) {
    const line = lineTo(goal);
    const whole = (line?.length ?? Infinity) + goal.beyond;
    if (line && (!best || whole < best.whole)) best = { line, whole };
  }
  return best?.line ?? null;
}

const NOBODY: ReadonlySet<string> = new Set();

function outlinesOf({ walls, obstacles }: Ground): Polygon[] {
  return [...walls.map(({ a, b }) => [a, b]), ...obstacles.map((each) => each.outline)];
}

function bendsOn(ground: Ground, clearances: Clearances, radius: number): Vec2[] {
  return outlinesOf(ground)
    .flatMap((outline) => cornersRound(outline, radius))
    .filter((a) => keepsClear(clearances, { a, b: a }, NOBODY, radius - SLACK));
}

/** What is known of the ways from one end. */
interface Reached {
  readonly end: End;
  readonly leaving: Leaving;
  /** Straight legs to corners. */
  readonly legs: readonly Leg[];
  /** Lengths of the shortest ways to every corner, and the corner before it; worked out when first asked for. */
  readonly tree: () => Tree;
}

interface Tree {
  readonly lengths: Float64Array;
  readonly before: Int32Array;
}

function reachedFrom(search: Search, end: End): Reached {
  const leaving = leavingFrom(search, end);
  const legs = search.corners.flatMap((corner, to): Leg[] =>
    isLegFree(search, { a: end, b: corner }, [leaving]) ? [{ to, length: distance(end, corner) }] : [],
  );
  let tree: Tree | null = null;
  return { end, leaving, legs, tree: () => (tree ??= treeFrom(search, legs)) };
}

/** How something gets away from its own spot. */
interface Leaving {
  readonly spot: Vec2;
  /** Owners of what it is in the middle of. */
  readonly free: ReadonlySet<string>;
  /** Radius that will do within the first step. */
  readonly squeeze: number;
  readonly firstStep: number;
}

function leavingFrom({ clearances, radius }: Room, { x, y, isDoorway }: End): Leaving {
  const spot = { x, y };
  if (isDoorway) return { spot, free: NOBODY, squeeze: radius, firstStep: 0 };
  const free = new Set<string>();
  clearances.grid.forEachTouching({ minX: x, minY: y, maxX: x, maxY: y }, (index) => {
    const thing = clearances.outlines[index];
    if (thing && thing.owner !== '' && depthInPolygon(spot, thing.outline) > 0) free.add(thing.owner);
  });
  const there = clearanceAlong(clearances, { a: spot, b: spot }, free, SQUEEZE / 2);
  // It may stand closer to its neighbours than anybody squeezes past them.
  return { spot, free, squeeze: Math.min(radius, SQUEEZE / 2, 0.99 * there), firstStep: FIRST_STEP };
}

interface Straight {
  readonly a: Vec2;
  readonly b: Vec2;
}

/** Whether a leg is wide enough: within the first step of an end as for a squeeze, elsewhere in full. */
function isLegFree({ clearances, radius }: Room, leg: Straight, ends: readonly Leaving[]): boolean {
  const length = distance(leg.a, leg.b);
  let [from, to] = [0, 1];
  for (const { spot, free, squeeze, firstStep } of ends) {
    const share = length === 0 ? 1 : Math.min(1, firstStep / length);
    const startsHere = distance(spot, leg.a) <= distance(spot, leg.b);
    const near = startsHere ? { a: leg.a, b: along(leg, share) } : { a: along(leg, 1 - share), b: leg.b };
    if (share > 0 && !keepsClear(clearances, near, free, squeeze - SLACK)) return false;
    if (startsHere) from = Math.max(from, share);
    else to = Math.min(to, 1 - share);
  }
  if (from >= to && from > 0) return true;
  const rest = { a: along(leg, from), b: along(leg, to) };
  return keepsClear(clearances, rest, NOBODY, radius - SLACK);
}

function treeFrom({ corners, legsOf }: Search, legs: readonly Leg[]): Tree {
  const lengths = new Float64Array(corners.length).fill(Infinity);
  const before = new Int32Array(corners.length).fill(-1);
  for (const { to, length } of legs) lengths[to] = length;
  const isDone = new Uint8Array(corners.length);
  for (let at = nearest(lengths, isDone); at >= 0; at = nearest(lengths, isDone)) {
    isDone[at] = 1;
    for (const { to, length } of legsOf(at)) {
      const through = (lengths[at] ?? Infinity) + length;
      if (through >= (lengths[to] ?? Infinity)) continue;
      lengths[to] = through;
      before[to] = at;
    }
  }
  return { lengths, before };
}

function nearest(lengths: Float64Array, isDone: Uint8Array): number {
  let [best, least] = [-1, Infinity];
  for (let index = 0; index < lengths.length; index++) {
    const length = lengths[index] ?? Infinity;
    if (isDone[index] === 0 && length < least) [best, least] = [index, length];
  }
  return best;
}

function lineBetween(search: Search, from: Reached, to: Reached): Line | null {
  const [a, b] = [point(from.end), point(to.end)];
  const straight = isLegFree(search, { a, b }, [from.leaving, to.leaving]) ? distance(a, b) : Infinity;
  if (straight < Infinity) return { points: [a, b], length: straight };
  const { lengths, before } = from.tree();
  let [last, least] = [-1, Infinity];
  for (const { to: corner, length } of to.legs) {
    const total = (lengths[corner] ?? Infinity) + length;
    if (total < least) [last, least] = [corner, total];
  }
  if (last < 0) return null;
  const bends: Vec2[] = [];
  for (let at = last; at >= 0; at = before[at] ?? -1) {
    const corner = search.corners[at];
    if (corner) bends.push(corner);
  }
  return { points: [a, ...bends.reverse(), b], length: least };
}

function point({ x, y }: Vec2): Vec2 {
  return { x, y };
}

function distance(a: Vec2, b: Vec2): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** Ways to and from one spot are asked for again and again. */
function remembered<V>(work: (end: End) => V): (end: End) => V {
  const known = new Map<string, V>();
  return (end) => {
    const key = `${end.x} ${end.y} ${end.isDoorway}`;
    const value = known.get(key) ?? work(end);
    known.set(key, value);
    return value;
  };
}
