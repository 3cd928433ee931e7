/** Where a label came off badly because a neighbour chose before it, the neighbour may give up its place. */

import type { Box } from '../primitives.ts';
import type { LabelRequest } from './label-requests.ts';
import { bestPlace, clearPlace, COST, lift, stand, type Found, type Search } from './label-search.ts';

export type Stood = Map<LabelRequest, Found>;

/** Labels that cost less than this stand well enough. */
const WELL_PLACED = 4;
/** On a plan where more came off badly there is no room to be won. */
const MOST_TRADERS = 40;
const MOST_NEIGHBOURS = 8;
/** How far off a label may stand and still be in the way, mm. */
const NEIGHBOURHOOD = 15;
/** What a trade must save at least: labels do not move about for nothing. */
const LEAST_GAIN = 0.5;

/** The worst placed first, each asks its neighbours in turn, the nearest first; a trade stands when both together gain. */
export function tradePlaces(figured: readonly LabelRequest[], stood: Stood, search: Search): void {
  const worst = figured
    .filter((request) => costOf(request, stood) > WELL_PLACED)
    .toSorted((a, b) => costOf(b, stood) - costOf(a, stood));
  for (const request of worst.slice(0, MOST_TRADERS)) {
    for (const other of neighboursOf(request, stood)) {
      if (costOf(request, stood) <= WELL_PLACED) break;
      if (!trade([request, other], stood, search)) trade([other, request], stood, search);
    }
  }
}

function costOf(request: LabelRequest, stood: Stood): number {
  const found = stood.get(request);
  if (!found) return 0;
  return found.cost + (found.request.figures.length === 0 ? COST.noFigures : 0);
}

function neighboursOf(request: LabelRequest, stood: Stood): LabelRequest[] {
  const near = [...stood].flatMap(([other, { box }]) => {
    const away = gapBetween(request.item, box);
    return other === request || other.figures.length === 0 || away > NEIGHBOURHOOD ? [] : [{ other, away }];
  });
  const nearest = near.toSorted((a, b) => a.away - b.away);
  return nearest.slice(0, MOST_NEIGHBOURS).map(({ other }) => other);
}

function gapBetween(a: Box, b: Box): number {
  const across = Math.max(0, a.x - b.x - b.width, b.x - a.x - a.width);
  const down = Math.max(0, a.y - b.y - b.height, b.y - a.y - a.height);
  return Math.hypot(across, down);
}

/** Both give up their places and choose again, the first of them first. False, and all as before, unless that is better. */
function trade(pair: readonly [LabelRequest, LabelRequest], stood: Stood, search: Search): boolean {
  const before = pair.flatMap((request) => stood.get(request) ?? []);
  const cost = pair.reduce((sum, request) => sum + costOf(request, stood), 0);
  for (const label of before) lift(label, search);
  const tried = chosenAgain(pair, search);
  const isBetter =
    tried.size === pair.length &&
    pair.reduce((sum, request) => sum + costOf(request, tried), 0) < cost - LEAST_GAIN;
  if (!isBetter) for (const label of tried.values()) lift(label, search);
  pair.forEach((request, index) => {
    const old = before[index];
    const label = isBetter ? tried.get(request) : old && stand(old, search);
    if (label) stood.set(request, label);
  });
  return isBetter;
}

function chosenAgain(pair: readonly LabelRequest[], search: Search): Stood {
  const tried: Stood = new Map();
  for (const request of pair) {
    const found = clearPlace(request, search) ?? bestPlace({ ...request, figures: [] }, search);
    if (found) tried.set(request, stand(found, search));
  }
  return tried;
}
