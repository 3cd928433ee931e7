/**
 * Finds a place for every label: near its thing, over no other text, over other things only when it must be. A label
 * with figures stands clear of everything, or goes without them.
 */

import { grownBox } from '../bounds.ts';
import type { Occupancy } from '../occupancy.ts';
import type { LabelRequest } from './label-requests.ts';
import {
  bestPlace,
  clearPlace,
  lift,
  searchAmong,
  stand,
  type Found,
  type LabelSurroundings,
  type PlacedLabel,
  type Search,
} from './label-search.ts';
import { tradePlaces, type Stood } from './label-trades.ts';

export type { Size } from './label-spots.ts';
export { leaderStart, OWN_END, type LabelSurroundings, type PlacedLabel } from './label-search.ts';

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

/**
 * First every label finds a place without its figures, so that no mark is lost for the sake of a figure. Then, in rounds,
 * each moves to where it stands clear with them; in the end neighbours trade places where one of them came off badly.
 */
export function placeLabels(requests: readonly LabelRequest[], surroundings: LabelSurroundings): LabelPlaces {
  const shown = requests.slice(0, MOST_LABELS);
  const search = searchAmong(shown, surroundings);
  const stood = firstPlaces(shown, surroundings, search);
  const figured = shown.filter(({ figures }) => figures.length > 0);
  const rounds = requests.length > MOST_WITH_FIGURES ? 0 : ROUNDS;
  for (let round = 0; round < rounds; round++) {
    for (const request of crowdedFirst(figured, search)) addFigures(request, stood, search);
  }
  if (rounds > 0) tradePlaces(figured, stood, search);
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
function firstPlaces(
  shown: readonly LabelRequest[],
  { leastSizeOf }: LabelSurroundings,
  search: Search,
): Stood {
  const stood: Stood = new Map();
  for (const request of shown) place(request, bestPlace({ ...request, figures: [] }, search), stood, search);
  if (stood.size === shown.length || shown.length > MOST_WITH_FIGURES) return stood;
  for (const label of stood.values()) lift(label, search);
  stood.clear();
  search.full = false;
  if (leastSizeOf) search.sizeOf = leastSizeOf;
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
function placeRest(shown: readonly LabelRequest[], stood: Stood, search: Search): void {
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

function place(request: LabelRequest, found: Found | null, stood: Stood, search: Search): void {
  if (found) stood.set(request, stand(found, search));
}

/** Those with the most about them choose first. */
function crowdedFirst(requests: readonly LabelRequest[], { things }: Search): LabelRequest[] {
  const crowd = new Map(
    requests.map((request) => [request, things.coveredArea(grownBox(request.item, NEIGHBOURHOOD))]),
  );
  return requests.toSorted((a, b) => (crowd.get(b) ?? 0) - (crowd.get(a) ?? 0));
}

const NEIGHBOURHOOD = 15;

function addFigures(request: LabelRequest, stood: Stood, search: Search): void {
  const before = stood.get(request);
  if (before) lift(before, search);
  const found = clearPlace(request, search);
  if (found) stood.set(request, stand(found, search));
  else if (before) stood.set(request, stand(before, search));
}
