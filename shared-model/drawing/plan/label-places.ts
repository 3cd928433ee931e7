/** Finds a place for every label: near its thing, over no other text, over other things only when it must be. */

import { boxContains, grownBox, overlapArea } from '../bounds.ts';
import { createOccupancy, type Occupancy } from '../occupancy.ts';
import type { Box } from '../primitives.ts';
import type { LabelRequest } from './label-requests.ts';

export interface Size {
  readonly width: number;
  readonly height: number;
}

export interface PlacedLabel {
  readonly request: LabelRequest;
  readonly box: Box;
  /** So far from its thing that a line has to lead there. */
  readonly leader: boolean;
}

export interface LabelPlaces {
  readonly placed: readonly PlacedLabel[];
  /** There was no room anywhere in the area. */
  readonly dropped: readonly LabelRequest[];
}

export interface LabelSurroundings {
  readonly sizeOf: (request: LabelRequest) => Size;
  /** Texts: labels never overlap them. Grows by the labels placed. */
  readonly texts: Occupancy;
  /** Lines and things that a label would rather leave uncovered. */
  readonly things: readonly Box[];
  readonly area: Box | null;
}

export function placeLabels(requests: readonly LabelRequest[], surroundings: LabelSurroundings): LabelPlaces {
  // What carries its label in a corner is ground that others stand on: labels may lie on it.
  const solid = requests.slice(0, MOST_LABELS).filter((request) => request.inside !== 'corner');
  const items = createOccupancy(solid.map((request) => request.item));
  const things = createOccupancy([...surroundings.things, ...solid.map((request) => request.item)]);
  const placed: PlacedLabel[] = [];
  const dropped: LabelRequest[] = requests.slice(MOST_LABELS);
  const search: Search = { ...surroundings, things, items, full: false };
  for (const request of requests.slice(0, MOST_LABELS)) {
    const label = bestPlace(request, search);
    if (label) {
      placed.push({ ...label, leader: label.leader || isAmbiguous(label, items) });
      surroundings.texts.take(withAir(label.box));
    } else dropped.push(request);
  }
  return { placed, dropped };
}

interface Search {
  readonly sizeOf: (request: LabelRequest) => Size;
  readonly texts: Occupancy;
  readonly things: Occupancy;
  /** The things that have labels of their own. */
  readonly items: Occupancy;
  readonly area: Box | null;
  /** Set once a bubble found no room anywhere: what is full stays full. */
  full: boolean;
}

/** No plan that anybody can read has more; beyond, the table of marks must do. */
const MOST_LABELS = 500;

/** How far off the thing labels are tried, mm; from the second on with a leader. */
const RINGS = [0.7, 3.5, 7, 11, 16, 22, 30, 40, 55];

/** What a place costs: a ring further out, a mm2 of something else covered or nearly so, a leader over text, a name left out. */
const COST = { ring: 3, covered: 0.25, near: 0.12, mostCovered: 14, leaderOverText: 5, noName: 4.5 };

interface Found {
  readonly request: LabelRequest;
  readonly box: Box;
  readonly cost: number;
  readonly leader: boolean;
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

function cheapestPlace(request: LabelRequest, search: Search): Found | null {
  const size = search.sizeOf(request);
  let best: Found | null = null;
  for (const [ring, distance] of RINGS.entries()) {
    // Further out can only cost more than this.
    if (best && best.cost <= ring * COST.ring) break;
    for (const { box, bias } of candidates(request, { size, distance, ring })) {
      if (!isFree(box, search)) continue;
      const cost = bias + costOf(request, { box, ring }, search);
      if (!best || cost < best.cost) best = { request, box, cost, leader: ring > 0 };
    }
  }
  return best;
}

function isFree(box: Box, { area, texts }: Search): boolean {
  return (area === null || boxContains(area, box)) && !texts.isTaken(withAir(box));
}

interface Spot {
  readonly box: Box;
  readonly ring: number;
}

function costOf(request: LabelRequest, { box, ring }: Spot, { things, items, texts }: Search): number {
  const own = ownArea(request, box);
  const near = grownBox(box, TOO_NEAR);
  const nearArea = Math.max(0, items.coveredArea(near) - ownArea(request, near));
  const covered = Math.max(0, things.coveredArea(box) - own) * COST.covered + nearArea * COST.near;
  const leader = ring > 0 && leaderCrossesText(request, box, texts) ? COST.leaderOverText : 0;
  return ring * COST.ring + Math.min(covered, COST.mostCovered) + leader;
}

interface Candidate {
  readonly box: Box;
  /** A slight preference among places that are equally good otherwise. */
  readonly bias: number;
}

/** Spots round the thing's box, as fractions of the way out; those first in the list look best. */
const SPOTS: readonly (readonly [number, number])[] = [
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
];

interface Ring {
  readonly size: Size;
  readonly distance: number;
  readonly ring: number;
}

function candidates(request: LabelRequest, { size, distance, ring }: Ring): Candidate[] {
  const { item } = request;
  const [middleX, middleY] = [item.x + item.width / 2, item.y + item.height / 2];
  const [reachX, reachY] = [
    (item.width + size.width) / 2 + distance,
    (item.height + size.height) / 2 + distance,
  ];
  const found = SPOTS.map(([across, down], rank) => ({
    box: centred(middleX + across * reachX, middleY + down * reachY, size),
    bias: rank * 0.05,
  }));
  return ring > 0 ? found : [...insideCandidates(request, size), ...found];
}

function insideCandidates({ item, inside }: LabelRequest, size: Size): Candidate[] {
  const air = inside === 'corner' ? 2 : 1;
  const [slackX, slackY] = [(item.width - size.width) / 2 - air, (item.height - size.height) / 2 - air];
  if (inside === null || slackX < 0 || slackY < 0) return [];
  const [middleX, middleY] = [item.x + item.width / 2, item.y + item.height / 2];
  if (inside === 'middle') return [{ box: centred(middleX, middleY, size), bias: -1 }];
  return CORNERS.map(([across, down]) => ({
    box: centred(middleX + across * slackX, middleY + down * slackY, size),
    bias: -1,
  }));
}

const CORNERS = [
  [-1, -1],
  [1, -1],
  [1, 1],
  [-1, 1],
] as const;

function centred(x: number, y: number, { width, height }: Size): Box {
  return { x: x - width / 2, y: y - height / 2, width, height };
}

/** Every label keeps this much clear of other texts. */
function withAir({ x, y, width, height }: Box): Box {
  return { x: x - 0.4, y: y - 0.25, width: width + 0.8, height: height + 0.5 };
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

function leaderCrossesText({ item }: LabelRequest, box: Box, texts: Occupancy): boolean {
  const [fromX, fromY] = [box.x + box.width / 2, box.y + box.height / 2];
  const [toX, toY] = [item.x + item.width / 2, item.y + item.height / 2];
  const steps = Math.ceil(Math.hypot(toX - fromX, toY - fromY) / 2);
  for (let step = 1; step < steps; step++) {
    const share = step / steps;
    const spot = {
      x: fromX + (toX - fromX) * share,
      y: fromY + (toY - fromY) * share,
      width: 0.1,
      height: 0.1,
    };
    if (texts.isTaken(spot)) return true;
  }
  return false;
}

/** The free place of the whole area that is nearest to the thing; null when the area is full or has no bounds. */
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
      if (away < nearest && isFree(box, search)) [best, nearest] = [box, away];
    }
  }
  if (!best && request.name === '') search.full = true;
  return best && { request, box: best, leader: true };
}
