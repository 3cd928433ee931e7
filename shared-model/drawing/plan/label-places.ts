/**
 * Finds a place for every label: near its thing, over no other text, over other things only when it must be. A label
 * with figures stands clear of everything, or goes without them.
 */

import type { Point } from '../../document/records.ts';
import { boxContains, boxesOverlap, grownBox, overlapArea } from '../bounds.ts';
import { createOccupancy, type Occupancy } from '../occupancy.ts';
import type { Box } from '../primitives.ts';
import { stacked, type LabelRequest } from './label-requests.ts';
import { FINE_RINGS, RINGS, spotsAt, type Ring, type Size, type Spot } from './label-spots.ts';

export type { Size } from './label-spots.ts';

export interface PlacedLabel {
  /** As it is drawn: without the name or the figures that found no room. */
  readonly request: LabelRequest;
  readonly box: Box;
  /** So far from its thing, or so near to another, that a line has to lead there. */
  readonly leader: boolean;
}

export interface LabelPlaces {
  readonly placed: readonly PlacedLabel[];
  /** There was no room anywhere in the area. */
  readonly dropped: readonly LabelRequest[];
  /** Placed, but without the figures that were asked for. */
  readonly withoutFigures: readonly LabelRequest[];
  /** Placed, but with the mark alone. */
  readonly withoutNames: readonly LabelRequest[];
  /** What leaders must not rub out with the paper about them. */
  readonly barred: Occupancy;
}

export interface LabelSurroundings {
  readonly sizeOf: (request: LabelRequest) => Size;
  /** Texts: labels never overlap them. Grows by the labels placed. */
  readonly texts: Occupancy;
  /** Lines and things that a label would rather leave uncovered. */
  readonly things: readonly Box[];
  /** Walls and the like: no label covers them, and a leader crosses them by the shortest way. Left out: none. */
  readonly barred?: readonly Box[];
  readonly area: Box | null;
}

/**
 * First every label finds a place without its figures, so that no mark is lost for the sake of a figure. Then, in rounds,
 * each moves to where it stands clear with them.
 */
export function placeLabels(requests: readonly LabelRequest[], surroundings: LabelSurroundings): LabelPlaces {
  const shown = requests.slice(0, MOST_LABELS);
  const search = searchAmong(shown, surroundings);
  const stood = firstPlaces(shown, search);
  const figured = shown.filter(({ figures }) => figures.length > 0);
  const rounds = requests.length > MOST_WITH_FIGURES ? 0 : ROUNDS;
  for (let round = 0; round < rounds; round++) {
    for (const request of crowdedFirst(figured, search)) addFigures(request, stood, search);
  }
  return {
    placed: shown.flatMap((request) => stood.get(request) ?? []),
    dropped: requests.filter((request) => !stood.has(request)),
    withoutFigures: figured.filter((request) => stood.get(request)?.request.figures.length === 0),
    withoutNames: shown.filter(
      (request) => request.mark !== '' && request.name !== '' && stood.get(request)?.request.name === '',
    ),
    barred: search.barred,
  };
}

/** Without figures. Where not all marks find room with the names about, all marks come first and then the names. */
function firstPlaces(shown: readonly LabelRequest[], search: Search): Map<LabelRequest, PlacedLabel> {
  const stood = new Map<LabelRequest, PlacedLabel>();
  for (const request of shown) place(request, bestPlace({ ...request, figures: [] }, search), stood, search);
  if (stood.size === shown.length || shown.length > MOST_WITH_FIGURES) return stood;
  for (const label of stood.values()) lift(label, search);
  stood.clear();
  search.full = false;
  const bare = (request: LabelRequest): LabelRequest =>
    request.mark === '' ? { ...request, figures: [] } : { ...request, name: '', figures: [] };
  for (const request of crowdedFirst(shown, search))
    place(request, bestPlace(bare(request), search), stood, search);
  for (const request of crowdedFirst(shown, search)) {
    const before = stood.get(request);
    if (before) lift(before, search);
    place(request, bestPlace({ ...request, figures: [] }, search) ?? before ?? null, stood, search);
  }
  if (search.area === null) placeRest(shown, stood, search);
  return stood;
}

/** A drawing without bounds has no table of marks beside it: there a mark in a heap is worth a line across another. */
function placeRest(
  shown: readonly LabelRequest[],
  stood: Map<LabelRequest, PlacedLabel>,
  search: Search,
): void {
  search.mayCross = true;
  for (const request of shown)
    if (!stood.has(request)) place(request, bestPlace({ ...request, figures: [] }, search), stood, search);
  search.mayCross = false;
}

/** No plan that anybody can read has more; beyond, the table of marks must do. */
const MOST_LABELS = 500;
/** Among more things hardly any figure finds room, and looking for it takes long. */
const MOST_WITH_FIGURES = 200;
/** What a label could not find in one round may be free after the others have moved. */
const ROUNDS = 3;

interface Search {
  readonly sizeOf: (request: LabelRequest) => Size;
  readonly texts: Occupancy;
  readonly things: Occupancy;
  /** The things that have labels of their own. */
  readonly items: Occupancy;
  readonly barred: Occupancy;
  readonly solid: readonly Box[];
  readonly area: Box | null;
  /** What each label has taken of the texts' room. */
  readonly taken: Map<PlacedLabel, readonly Box[]>;
  /** Set once a bubble found no room anywhere: what is full stays full. */
  full: boolean;
  /** Whether leaders may run over other labels and signs. */
  mayCross: boolean;
}

function searchAmong(shown: readonly LabelRequest[], surroundings: LabelSurroundings): Search {
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
function stand(found: PlacedLabel, search: Search): PlacedLabel {
  const label = { ...found, leader: found.leader || isAmbiguous(found, search.items) };
  const boxes = [withAir(label.box), ...(label.leader ? leaderBoxes(label) : [])];
  for (const box of boxes) search.texts.take(box);
  search.taken.set(label, boxes);
  return label;
}

function place(
  request: LabelRequest,
  found: PlacedLabel | null,
  stood: Map<LabelRequest, PlacedLabel>,
  search: Search,
): void {
  if (found) stood.set(request, stand(found, search));
}

function lift(label: PlacedLabel, search: Search): void {
  for (const box of search.taken.get(label) ?? []) search.texts.release(box);
  search.taken.delete(label);
}

/** Those with the most about them choose first. */
function crowdedFirst(requests: readonly LabelRequest[], { things }: Search): LabelRequest[] {
  const crowd = new Map(
    requests.map((request) => [request, things.coveredArea(grownBox(request.item, NEIGHBOURHOOD))]),
  );
  return requests.toSorted((a, b) => (crowd.get(b) ?? 0) - (crowd.get(a) ?? 0));
}

const NEIGHBOURHOOD = 15;

function addFigures(request: LabelRequest, stood: Map<LabelRequest, PlacedLabel>, search: Search): void {
  const before = stood.get(request);
  if (before) lift(before, search);
  const found = clearPlace(request, search);
  if (found) stood.set(request, stand(found, search));
  else if (before) stood.set(request, stand(before, search));
}

/** What a place costs: a mm2 of something else covered or nearly so, a leader over a thing, a mm of it there and over a wall, parts left out. */
const COST = {
  covered: 0.8,
  near: 0.12,
  mostCovered: 14,
  leaderOverAnother: 6,
  leaderOverThing: 1.2,
  leaderOverBarred: 2,
  noName: 4.5,
  stacked: 3,
};

interface Found extends PlacedLabel {
  readonly cost: number;
}

/** The whole label, or only its bubble where the whole would hide too much: the table of marks has the name. */
function bestPlace(request: LabelRequest, search: Search): PlacedLabel | null {
  const whole = cheapestPlace(request, search);
  if (whole && whole.cost <= COST.noName) return whole;
  if (request.mark === '' || request.name === '') return whole ?? anywhere(request, search);
  const short = cheapestPlace({ ...request, name: '' }, search);
  if (short && (!whole || short.cost + COST.noName < whole.cost)) return short;
  return whole ?? anywhere({ ...request, name: '' }, search);
}

/** With figures; without the name, or with the figures under each other, where only so there is a place near by. */
function clearPlace(request: LabelRequest, search: Search): PlacedLabel | null {
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
  return bias + ring.cost + hidden + overThings;
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

/** The free place of the whole area that is nearest to the thing; null when there is none, or the area has no bounds. */
function anywhere(request: LabelRequest, search: Search): PlacedLabel | null {
  const { area } = search;
  const { item } = request;
  const size = search.sizeOf(request);
  if (!area || search.full) return null;
  let best: Box | null = null;
  let nearest = Infinity;
  for (let y = area.y; y + size.height <= area.y + area.height; y += size.height / 2) {
    for (let x = area.x; x + size.width <= area.x + area.width; x += 4) {
      const box = { x, y, ...size };
      const away = Math.hypot(x + size.width / 2 - item.x, y - item.y);
      if (away >= nearest || !isFree(box, search)) continue;
      if (!leaderCrosses(request, box, search.texts)) [best, nearest] = [box, away];
    }
  }
  if (!best && request.name === '') search.full = true;
  return best && { request, box: best, leader: true };
}
