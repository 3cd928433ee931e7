/** A section through the house: platform, players and rows from the side, with the lines of sight in it. */

import type { Point } from '../document/records.ts';
import { bounds } from './bounds.ts';
import type { Box, Primitive } from './primitives.ts';
import { largestScale } from './scales.ts';
import {
  placedSection,
  sectionSource,
  type SectionContext,
  type SectionPlacement,
  type SectionRequest,
  type SectionSource,
} from './section/context.ts';
import { drawFloor, drawHeight, drawPlatform, drawSteps } from './section/ground.ts';
import { drawSectionLabels } from './section/labels.ts';
import { drawCuts, drawLines } from './section/lines.ts';
import { drawListeners, drawPlace } from './section/people.ts';
import { drawPlayer, drawWindow } from './section/players.ts';
import { drawRowFigures } from './section/row-table.ts';
import { drawThing } from './section/things.ts';

export { sectionSource } from './section/context.ts';
export { clearanceWords } from './section/clearance-words.ts';
export { sectionRows, type BlockFigures } from './section/row-figures.ts';
export type { SectionCut, SectionPlacement, SectionRequest, SectionSource } from './section/context.ts';

/** In mm on the page. Empty when the seat or the player that the section asks for is not there. */
export function sectionDrawing(request: SectionRequest & SectionPlacement): Primitive[] {
  const source = sectionSource(request);
  return source ? drawWhole(placedSection(source, request)) : [];
}

function drawWhole(context: SectionContext): Primitive[] {
  const drawn = drawSection(context);
  return [...drawn, ...drawSectionLabels(context, drawn), ...drawCuts(context)];
}

/** All but the labels, which find their places round it. */
function drawSection(context: SectionContext): Primitive[] {
  const under = [...drawGround(context), ...drawStage(context), ...drawLines(context)];
  return [
    ...under,
    ...context.rakes.map((rake) => drawListeners(context, rake)),
    ...context.places.map((place) => drawPlace(context, place)),
    ...drawHeight(context),
    ...drawRowFigures(context),
  ];
}

/** The house floor, the rakes, and the platform. */
function drawGround(context: SectionContext): Primitive[] {
  return [
    ...context.rakes.flatMap((rake) => drawSteps(context, rake)),
    ...drawFloor(context),
    drawPlatform(context),
  ];
}

/** What stands on the platform, and over it the windows of the players in the strip. */
function drawStage(context: SectionContext): Primitive[] {
  const things = context.items.map((item) =>
    item.record.kind === 'player'
      ? drawPlayer(context, { ...item, record: item.record })
      : drawThing(context, item),
  );
  const windows = context.items.flatMap(({ record, full }) =>
    full && record.kind === 'player' ? drawWindow(context, record) : [],
  );
  return [...things, ...windows];
}

/** The box of a section at a scale without its labels, its origin at (0, 0) on the page; null: nothing to draw. */
export function sectionBox(source: SectionSource, scale: number): Box | null {
  const context = placedSection(source, { scale, origin: { x: 0, y: 0 }, area: null });
  return bounds(drawSection(context), source.measure);
}

/** Right of the house: names of places in the back rows, mm on paper. */
const ROOM_FOR_NAMES = 20;

/** The section at a scale in the middle of an area of the page, to which its labels keep. */
export function sectionIn(source: SectionSource, scale: number, area: Box): Primitive[] {
  const origin = originIn(source, scale, area);
  return origin ? sectionAt(source, { scale, origin, area }) : [];
}

/** Where the origin of the section comes to when it is put in the middle of an area; null: nothing to draw. */
export function originIn(source: SectionSource, scale: number, area: Box): Point | null {
  const box = sectionBox(source, scale);
  if (!box) return null;
  const spare = area.width - box.width;
  const left = Math.max(0, Math.min(spare / 2, spare - ROOM_FOR_NAMES));
  return {
    x: area.x + left - box.x,
    y: area.y + (area.height - box.height) / 2 - box.y,
  };
}

export function sectionAt(source: SectionSource, placement: SectionPlacement): Primitive[] {
  return drawWhole(placedSection(source, placement));
}

export interface FittedSection {
  readonly scale: number;
  readonly children: readonly Primitive[];
}

/** The section at the largest standard scale that fits an area of the page, in its middle; null when none does. */
export function fittedSection(request: SectionRequest, area: Box): FittedSection | null {
  const source = sectionSource(request);
  if (!source) return null;
  const scale = largestScale(request.units, (candidate) => {
    const box = sectionBox(source, candidate);
    return box !== null && box.width <= area.width && box.height <= area.height;
  });
  return scale === null ? null : { scale, children: sectionIn(source, scale, area) };
}
