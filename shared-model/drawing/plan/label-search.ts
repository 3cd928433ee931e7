/** How a label finds the cheapest place among what is drawn already, takes it and gives it up again. */

import type { Point } from '../../document/records.ts';
import { boxContains, boxesOverlap, grownBox, overlapArea } from '../bounds.ts';
import { createOccupancy, type Occupancy } from '../occupancy.ts';
import type { Box } from '../primitives.ts';
import { stacked, type LabelRequest } from './label-requests.ts';
import { FINE_RINGS, RINGS, spotsAt, type Ring, type Size, type Spot } from './label-spots.ts';

export interface PlacedLabel {
  /** As it is drawn: without the name or the figures that found no room. */
  readonly request: LabelRequest;
  readonly box: Box;
  /** So far from its thing, or so near to another, that a line has to lead there. */
  readonly leader: boolean;
}

export interface LabelSurroundings {
  readonly sizeOf: (request: LabelRequest) => Size;
  /** A name for where the whole one finds no room: its beginning, or the same when that is short. Left out: none. */
  readonly shorterName?: (name: string) => string;
  /** Where some label finds no room with those: no label takes more than this. Left out: the same. */
  readonly leastSizeOf?: (request: LabelRequest) => Size;
  /** Texts: labels never overlap them. Grows by the labels placed. */
  readonly texts: Occupancy;
  /** Lines and things that a label would rather leave uncovered. */
  readonly things: readonly Box[];
  /** Walls and the like: no label covers them, and a leader crosses them by the shortest way. Left out: none. */
  readonly barred?: readonly Box[];
  readonly area: Box | null;
  /** Where the centre line lies across the page: a label rather stands on its thing's side. Left out: there is none. */
  readonly centre?: number;
}

export interface Search {
  sizeOf: (request: LabelRequest) => Size;
  readonly shorterName?: (name: string) => string;
  readonly texts: Occupancy;
  readonly things: Occupancy;
  /** The things that have labels of their own. */
  readonly items: Occupancy;
  readonly barred: Occupancy;
  readonly solid: readonly Box[];
  readonly area: Box | null;
  readonly centre?: number;
  /** What each label has taken of the texts' room. */
  readonly taken: Map<PlacedLabel, readonly Box[]>;
  /** Set once a bubble found no room anywhere: what is full stays full. */
  full: boolean;
  /** Whether leaders may run over other labels and signs. */
  mayCross: boolean;
}

export function searchAmong(shown: readonly LabelRequest[], surroundings: LabelSurroundings): Search {
  // What carries its label in a corner is ground that others stand on: labels may lie on it.
  const solid = shown.filter((request) => request.inside !== 'corner').map((request) => request.item);
  return {
    ...surroundings,
    things: createOccupancy([...surroundings.things, ...solid]),
    items: createOccupancy(solid),
    barred: createOccupancy(surroundings.barred),
    solid,
    taken: new Map(),
    full: false,
    mayCross: false,
  };
}

/** Puts a label where it was found: other texts keep off it and off the line that leads from it. */
export function stand(found: Found, search: Search): Found {
  const label = { ...found, leader: found.leader || isAmbiguous(found, search.items) };
  const boxes = [withAir(label.box), ...(label.leader ? leaderBoxes(label) : [])];
  for (const box of boxes) search.texts.take(box);
  search.taken.set(label, boxes);
  return label;
}

export function lift(label: PlacedLabel, search: Search): void {
  for (const box of search.taken.get(label) ?? []) search.texts.release(box);
  search.taken.delete(label);
}

/**
 * What a place costs: a mm2 of something else covered or nearly so, a leader over a thing, a mm of it there and over a wall,
 * the far side of the centre line, parts left out, a place anywhere on the sheet.
 */
export const COST = {
  covered: 0.8,
  near: 0.12,
  mostCovered: 14,
  leaderOverAnother: 18,
  leaderOverThing: 1.2,
  leaderOverBarred: 2,
  beyondCentre: 20,
  noName: 4.5,
  shorterName: 2.5,
  stacked: 3,
  noFigures: 24,
  anywhere: 24,
};

export interface Found extends PlacedLabel {
  readonly cost: number;
}

/** The whole label, or only its bubble where the whole would hide too much: the table of marks has the name. */
export function bestPlace(request: LabelRequest, search: Search): Found | null {
  const whole = cheapestPlace(request, search);
  if (whole && whole.cost <= COST.noName) return whole;
  if (request.mark === '' || request.name === '') return whole ?? anywhere(request, search);
  let best = whole;
  for (const { name, cost } of shorterNames(request, search)) {
    const found = cheapestPlace({ ...request, name }, search);
    if (found && found.cost + cost < (best?.cost ?? Infinity)) best = { ...found, cost: found.cost + cost };
  }
  return best ?? anywhere({ ...request, name: '' }, search);
}

/** The beginning of a name where there is one, and none. */
function shorterNames({ name }: LabelRequest, { shorterName }: Search): { name: string; cost: number }[] {
  const beginning = shorterName?.(name) ?? name;
  const none = { name: '', cost: COST.noName };
  return beginning === '' || beginning === name
    ? [none]
    : [{ name: beginning, cost: COST.shorterName }, none];
}

/** With figures; without the name, or with the figures under each other, where only so there is a place near by. */
export function clearPlace(request: LabelRequest, search: Search): Found | null {
  let best: Found | null = null;
  for (const { variant, cost } of variants(request)) {
    if (best && best.cost <= cost) break;
    const found = cheapestPlace(variant, search);
    if (found && found.cost + cost < (best?.cost ?? Infinity)) best = { ...found, cost: found.cost + cost };
  }
  return best;
}

/** Ways to write a label with figures, the best to read first. */
function variants(request: LabelRequest): { variant: LabelRequest; cost: number }[] {
  const bare = { ...request, name: '' };
  const ways = [
    { variant: request, cost: 0 },
    { variant: stacked(request), cost: COST.stacked },
    { variant: bare, cost: COST.noName },
    { variant: stacked(bare), cost: COST.noName + COST.stacked },
  ];
  return request.mark === '' || request.name === '' ? ways.slice(0, 2) : ways;
}

function cheapestPlace(request: LabelRequest, search: Search): Found | null {
  const size = search.sizeOf(request);
  let best: Found | null = null;
  for (const ring of request.figures.length === 0 ? RINGS : FINE_RINGS) {
    // Further out can only cost more than this.
    if (best && best.cost <= ring.cost) break;
    for (const spot of spotsAt(request, size, ring)) {
      if (!isFree(spot.box, search)) continue;
      const cost = costOf(request, { ...spot, ring }, search);
      if (cost < (best?.cost ?? Infinity)) best = { request, box: spot.box, cost, leader: ring.leader };
    }
  }
  return best;
}

function isFree(box: Box, { area, texts, barred }: Search): boolean {
  return (area === null || boxContains(area, box)) && !texts.isTaken(withAir(box)) && !barred.isTaken(box);
}

interface RingSpot extends Spot {
  readonly ring: Ring;
}

/** Infinite for a leader over a text or another thing's sign, and for a label with figures that would not stand clear. */
function costOf(request: LabelRequest, { box, bias, ring }: RingSpot, search: Search): number {
  const { things, items, texts } = search;
  const covered = Math.max(0, things.coveredArea(box) - ownArea(request, box));
  const near = grownBox(box, TOO_NEAR);
  const nearArea = Math.max(0, items.coveredArea(near) - ownArea(request, near));
  const touched = grownBox(box, TOUCHING);
  const isClear = covered < 1e-6 && items.coveredArea(touched) - ownArea(request, touched) < 1e-6;
  const hasLeader = ring.leader || nearArea > 1e-6;
  if (hasLeader && !search.mayCross && leaderCrosses(request, box, texts)) return Infinity;
  if (request.figures.length > 0 && !isClear) return Infinity;
  const overThings = hasLeader ? leaderCost(request, box, search) : 0;
  const hidden = Math.min(covered * COST.covered + nearArea * COST.near, COST.mostCovered);
  const beyond = isBeyondCentre(request, box, search) ? COST.beyondCentre : 0;
  return bias + ring.cost + hidden + overThings + beyond;
}

/** On the other side of the centre line from a thing that lies on one side of it. */
function isBeyondCentre({ item }: LabelRequest, box: Box, { centre }: Search): boolean {
  if (centre === undefined) return false;
  const middle = box.x + box.width / 2;
  return (item.x > centre && middle < centre) || (item.x + item.width < centre && middle > centre);
}

/** Every label keeps this much clear of other texts. */
function withAir({ x, y, width, height }: Box): Box {
  return { x: x - 0.5, y: y - 0.4, width: width + 1, height: height + 0.8 };
}

/** How much of a label's box lies over the thing that it names. */
function ownArea({ inside, item }: LabelRequest, box: Box): number {
  return inside === 'corner' ? 0 : overlapArea(item, box);
}

/** So near to another thing that it could be taken for its label. */
function isAmbiguous({ request, box }: PlacedLabel, items: Occupancy): boolean {
  const near = grownBox(box, TOO_NEAR);
  const inItself = request.inside !== null && boxContains(request.item, box);
  return !inItself && items.coveredArea(near) - ownArea(request, near) > 1e-6;
}

/** Distance to another thing below which a label seems to belong to it, mm. */
const TOO_NEAR = 1;

/** Figures so near to the lines of another thing cannot be told from them on a copy, mm. */
const TOUCHING = 0.5;

/** Where the line that leads from a label begins: on its box, nearest to the thing's point. */
export function leaderStart(box: Box, { x, y }: Point): Point {
  return {
    x: Math.max(box.x, Math.min(box.x + box.width, x)),
    y: Math.max(box.y, Math.min(box.y + box.height, y)),
  };
}

/** The leader in short pieces, without its end, which lies in the thing itself. */
function leaderBoxes({ request: { target }, box }: Pick<PlacedLabel, 'request' | 'box'>): Box[] {
  const from = leaderStart(box, target);
  const length = Math.hypot(target.x - from.x, target.y - from.y);
  const led = Math.max(0, length - OWN_END);
  const count = Math.ceil(led);
  return Array.from({ length: count }, (_, piece) => {
    const share = ((piece + 0.5) * led) / count / length;
    const [x, y] = [from.x + (target.x - from.x) * share, from.y + (target.y - from.y) * share];
    return { x: x - 0.5, y: y - 0.5, width: 1, height: 1 };
  });
}

/** The sign at the thing's point, which the leader runs into, mm. */
export const OWN_END = 1.8;

/** Over a text, or the sign of another thing: nobody could tell then which is whose. */
function leaderCrosses(request: LabelRequest, box: Box, texts: Occupancy): boolean {
  const own = grownBox({ ...request.target, width: 0, height: 0 }, OWN_SIGN);
  const pieces = leaderBoxes({ request, box });
  return pieces.some((piece) => !boxesOverlap(piece, own) && texts.isTaken(piece));
}

/** Half of the square that a thing's own sign stands in: no text comes into it, mm. */
const OWN_SIGN = 1.3;

/**
 * What a leader over other things costs: there it is easily overlooked, and the label seems to belong to them. That of a
 * label with figures may cross what its thing stands on or under, and that not far, but nothing else: infinite then.
 */
function leaderCost(request: LabelRequest, box: Box, { items, barred, solid }: Search): number {
  const outside = leaderBoxes({ request, box }).filter((piece) => overlapArea(request.item, piece) === 0);
  const walls = outside.filter((piece) => barred.isTaken(piece)).length * COST.leaderOverBarred;
  const over = outside.filter((piece) => items.isTaken(piece));
  if (over.length === 0) return walls;
  const cost = walls + over.length * COST.leaderOverThing;
  if (request.figures.length === 0) return COST.leaderOverAnother + cost;
  if (over.length > FAR_OVER) return Infinity;
  const others = solid.filter((item) => !boxContains(item, { ...request.target, width: 0, height: 0 }));
  return over.some((piece) => others.some((item) => boxesOverlap(item, piece))) ? Infinity : cost;
}

/** Beyond this, mm, a line over a thing leads the eye to the thing's end rather than to what stands on it. */
const FAR_OVER = 6;

/** A place on the other side of the centre line is as good as one that is so much further off on the thing's own side, mm. */
const FAR_SIDE = 40;

/** The free place of the whole area that is nearest to the thing; null when there is none, or the area has no bounds. */
function anywhere(request: LabelRequest, search: Search): Found | null {
  const { area } = search;
  const { item } = request;
  const size = search.sizeOf(request);
  if (!area || search.full) return null;
  let best: Box | null = null;
  let nearest = Infinity;
  for (let y = area.y; y + size.height <= area.y + area.height; y += size.height / 2) {
    for (let x = area.x; x + size.width <= area.x + area.width; x += 4) {
      const box = { x, y, ...size };
      const detour = isBeyondCentre(request, box, search) ? FAR_SIDE : 0;
      const away = Math.hypot(x + size.width / 2 - item.x, y - item.y) + detour;
      if (away >= nearest || !isFree(box, search)) continue;
      if (!leaderCrosses(request, box, search.texts)) [best, nearest] = [box, away];
    }
  }
  if (!best && request.name === '') search.full = true;
  return best && { request, box: best, leader: true, cost: COST.anywhere };
}
