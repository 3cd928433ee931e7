/** The plan of one setup at a scale: the same drawing on the screen and on paper. */

import { textBoxes } from './bounds.ts';
import { createOccupancy, type Occupancy } from './occupancy.ts';
import { planContext, type PlanContext, type PlanRequest } from './plan/context.ts';
import { drawDatum, drawGrid, drawWords } from './plan/datum.ts';
import { drawDimensions } from './plan/dimensions.ts';
import { drawHouse, placeBoxes } from './plan/house.ts';
import { drawRisers, drawThings } from './plan/items.ts';
import { drawLabels, findLabelPlaces } from './plan/labels.ts';
import type { LabelPlaces } from './plan/label-places.ts';
import { itemBox } from './plan/label-requests.ts';
import { drawReach, drawRoutes } from './plan/overlays.ts';
import { drawPlatform } from './plan/platform.ts';
import type { GroupPrimitive, Primitive } from './primitives.ts';

export { planContext, WORST_SEEN } from './plan/context.ts';
export type { PlanContext, PlanLayers, PlanRequest } from './plan/context.ts';
export { planExtent, stageExtent } from './plan/extent.ts';
export { levelsApart } from './plan/levels-apart.ts';
export { describeItem, drawItem, drawItems, drawRisers, drawThings } from './plan/items.ts';

/** The plan from the ground up, in mm on the page. `scale` and `origin` say where the stage lies on it. */
export function planDrawing(request: PlanRequest): Primitive[] {
  const context = planContext(request);
  const ground = [...drawGround(context), ...drawRisers(context)];
  const items = drawThings(context);
  const { below, above } = drawAnnotations(context, [...ground, ...items]);
  return [...ground, ...below, ...drawOverlays(context), ...items, ...above];
}

/** What stays as it is while items are dragged: house, platform, grid, centre line, words. */
export function drawGround(context: PlanContext): GroupPrimitive[] {
  const taken = createOccupancy(placeBoxes(context));
  const datum = drawDatum(context, taken);
  const words = drawWords(context, taken);
  const platform = drawPlatform(context, taken);
  const house = context.layers.seats ? [drawHouse(context, taken)] : [];
  const grid = context.layers.grid ? [drawGrid(context, taken)] : [];
  return [...house, platform, ...grid, datum, words];
}

/** Reach and routes, as far as the layers ask for them and a report has them. */
export function drawOverlays(context: PlanContext): GroupPrimitive[] {
  return [...drawRoutes(context), ...drawReach(context)];
}

export interface Annotations {
  /** Dimension lines of all items: they run under the items. */
  readonly below: readonly GroupPrimitive[];
  /** Marks and names, and the dimensions that were asked for one by one. */
  readonly above: readonly GroupPrimitive[];
  readonly labels: LabelPlaces;
}

/** Marks, names and dimensions, kept clear of each other and of the texts in what is `drawn` already. */
export function drawAnnotations(context: PlanContext, drawn: readonly Primitive[]): Annotations {
  const labels = findLabelPlaces(context, drawn);
  const bubbles = drawLabels(context, labels);
  const texts = createOccupancy(textBoxes([...drawn, ...bubbles], context.measure));
  const dimensions = drawDimensions(context, { texts, things: solidThings(context) });
  if (context.layers.dimensions === 'all') return { below: dimensions, above: bubbles, labels };
  return { below: [], above: [...dimensions, ...bubbles], labels };
}

function solidThings(context: PlanContext): Occupancy {
  const solid = context.items.filter((record) => record.kind !== 'riser');
  return createOccupancy(solid.map((record) => itemBox(context, record)));
}
