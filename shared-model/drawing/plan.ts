/** The plan of one setup at a scale: the same drawing on the screen and on paper. */

import { grownBox, textBoxes } from './bounds.ts';
import { createOccupancy, type Occupancy } from './occupancy.ts';
import { planContext, type PlanContext, type PlanRequest } from './plan/context.ts';
import { drawDatum, drawGrid, drawWords } from './plan/datum.ts';
import { drawDimensions } from './plan/dimensions.ts';
import { drawHouse } from './plan/house.ts';
import { houseBoxes } from './plan/house-shown.ts';
import { drawRisers, drawThings } from './plan/items.ts';
import { drawCrosses, drawLabels, findLabelPlaces } from './plan/labels.ts';
import type { LabelPlaces } from './plan/label-places.ts';
import { hasCoordinates, itemBox } from './plan/label-requests.ts';
import { drawReach, drawRoutes } from './plan/overlays.ts';
import { drawPlatform } from './plan/platform.ts';
import { drawStorages, storageBoxes } from './plan/storages.ts';
import { drawRiserHeights } from './plan/riser-heights.ts';
import type { Box, GroupPrimitive, Primitive } from './primitives.ts';

export { planContext, WORST_SEEN } from './plan/context.ts';
export type { PlanContext, PlanLayers, PlanReport, PlanRequest } from './plan/context.ts';
export { isDownTheHouse, planExtent, stageExtent } from './plan/extent.ts';
export { levelsApart } from './plan/levels-apart.ts';
export { describeItem, drawItem, drawItems, drawRisers, drawThings } from './plan/items.ts';

/** The plan from the ground up, in mm on the page. `scale` and `origin` say where the stage lies on it. */
export function planDrawing(request: PlanRequest): Primitive[] {
  const context = planContext(request);
  const ground = [...drawGround(context), ...drawRisers(context)];
  const items = drawThings(context);
  const { above } = drawAnnotations(context, [...ground, ...items]);
  return [...ground, ...drawOverlays(context), ...items, ...above];
}

/** What stays as it is while items are dragged: house, platform, grid, centre line, words. */
export function drawGround(context: PlanContext): GroupPrimitive[] {
  // On a screen the words must not jump about with what is dragged past them; on paper nothing may lie over them.
  const things = hasCoordinates(context) ? solidBoxes(context) : [];
  const stored = context.layers.storages ? storageBoxes(context) : [];
  const taken = createOccupancy([...(context.layers.seats ? houseBoxes(context) : []), ...things, ...stored]);
  const datum = drawDatum(context, taken);
  // Warnings at the edges find their places before the words that only orient.
  const platform = drawPlatform(context, taken);
  const words = drawWords(context, taken);
  const house = context.layers.seats ? [drawHouse(context, taken)] : [];
  const grid = context.layers.grid ? [drawGrid(context, taken)] : [];
  const drawn = [...house, platform, ...grid, datum, words];
  if (!context.layers.storages) return drawn;
  return [...drawn, ...drawStorages(context, createOccupancy(textBoxes(drawn, context.measure)))];
}

/** Reach and routes, as far as the layers ask for them and a report has them. */
export function drawOverlays(context: PlanContext): GroupPrimitive[] {
  return [...drawRoutes(context), ...drawReach(context)];
}

export interface Annotations {
  /** Marks, names, figures, heights of risers, and the dimensions that were asked for: all over the items. */
  readonly above: readonly GroupPrimitive[];
  readonly labels: LabelPlaces;
}

/** Marks, names and dimensions, kept clear of each other and of the texts in what is `drawn` already. */
export function drawAnnotations(context: PlanContext, drawn: readonly Primitive[]): Annotations {
  const things = solidThings(context);
  const written = createOccupancy(textBoxes(drawn, context.measure));
  const heights = drawRiserHeights(context, { texts: written, things });
  const labels = findLabelPlaces(context, [...drawn, ...heights]);
  for (const { box } of labels.placed) written.take(grownBox(box, PILL_AIR));
  const dimensions = drawDimensions(context, { texts: written, things });
  const bubbles = drawLabels(context, labels);
  return { above: [...dimensions, ...heights, ...drawCrosses(context), ...bubbles], labels };
}

/** Figures keep this far off the outline of a mark, mm. */
const PILL_AIR = 0.4;

function solidThings(context: PlanContext): Occupancy {
  return createOccupancy(solidBoxes(context));
}

function solidBoxes(context: PlanContext): Box[] {
  const solid = context.items.filter((record) => record.kind !== 'riser');
  return solid.map((record) => itemBox(context, record));
}
