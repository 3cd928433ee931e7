/** What every part of the plan is drawn from, and the step from the stage to the page. */

import { outlineOf } from '../../catalogue/outlines.ts';
import { inSetup, placedInSetup, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Units } from '../../document/measures.ts';
import type { Instrument, PlacedRecord, Point, Riser } from '../../document/records.ts';
import type { ReachResult, RouteResult } from '../../checks/report.ts';
import { chain, mapPath, mapPoint, shift, turnAbout, type Affine } from '../affine.ts';
import { boxContains, boxOfPoints } from '../bounds.ts';
import type { Path } from '../outline.ts';
import type { Palette } from '../palette.ts';
import type { Box, MeasureText, PathPrimitive, Stroke } from '../primitives.ts';
import { isDownTheHouse } from './extent.ts';
import { shortMarks } from './short-marks.ts';

export interface PlanLayers {
  readonly seats: boolean;
  /** Colours the seats by what they see of one player, or of whomever each sees worst. Needs a report. */
  readonly sightBands: { readonly player: string } | null;
  /** Bubbles with the items' marks: "S3". */
  readonly marks: boolean;
  readonly names: boolean;
  /** Words on edges and doors, heights of risers, names of the centre line and the front edge. */
  readonly words: boolean;
  /**
   * Distances from the centre line and the front edge: none; as dimension lines of these records; or of every item,
   * written under its mark, with a cross at the point they are measured to (coordinates in the sense of ISO 129-1).
   */
  readonly dimensions: 'none' | 'coordinates' | readonly string[];
  readonly grid: boolean;
  /** Lines from the players to what they must get to. Needs a report. */
  readonly reach: boolean;
  /** The walking routes that were found. Needs a report. */
  readonly routes: boolean;
  /** Where things wait off the platform; left out: not shown. */
  readonly storages?: boolean;
}

/** Value of `sightBands.player` for "whomever each seat sees worst". */
export const WORST_SEEN = 'worst';

/** What of a report is drawn on a plan. */
export interface PlanReport {
  readonly sight: PlanSight;
  readonly reach: readonly ReachResult[];
  readonly routes: readonly RouteResult[];
}

/** Visible shares as in a `SightReport`, with the names of those who see and are seen. */
export interface PlanSight {
  readonly scene: {
    readonly seats: readonly { readonly id: string }[];
    readonly targets: readonly { readonly id: string }[];
  };
  readonly visible: Float64Array;
}

export interface PlanRequest {
  readonly document: Document;
  readonly setup: Id<'setup'>;
  readonly report: PlanReport | null;
  /** The ratio's denominator: 50 for 1:50. */
  readonly scale: number;
  /** Where the origin of the stage frame lies on the page, in mm. */
  readonly origin: Point;
  readonly palette: Palette;
  readonly measure: MeasureText;
  readonly units: Units;
  readonly layers: PlanLayers;
  /** The part of the page that the plan may use; labels and rows of seats beyond it are left out. Null: no bounds. */
  readonly area: Box | null;
  /** What stands under a mark instead of its coordinates, its parts set apart as `coordinatesOf` does. */
  readonly figuresOf?: (record: PlacedRecord) => string;
  /** The part of the page that is looked at: seats outside it need not be drawn, for nobody sees them. Left out: all of it. */
  readonly frame?: Box;
  /** Things that are not drawn, though everything else keeps the mark it has with them. Left out: none. */
  readonly leftOut?: ReadonlySet<string>;
}

export interface PlanContext extends PlanRequest {
  /** From the stage (mm, y upstage) to the page (mm on paper, y down). */
  readonly toPage: Affine;
  /** Everything placed in the setup that is drawn, kind by kind in the order of the marks; columns off the area are not. */
  readonly items: readonly PlacedRecord[];
  readonly risers: readonly Riser[];
  readonly marks: ReadonlyMap<string, string>;
  /** What each player has in hand from the start. */
  readonly held: ReadonlyMap<string, readonly Instrument[]>;
}

export function planContext(request: PlanRequest): PlanContext {
  const { document, setup, scale, origin, leftOut } = request;
  const all = placedInSetup(document, setup);
  const toPage = stageToPage(scale, origin);
  const shown = leftOut ? all.filter(({ id }) => !leftOut.has(id)) : all;
  const items = shown.filter((record) => !isCutOff({ ...request, toPage }, record));
  return {
    ...request,
    toPage,
    items,
    risers: items.filter((record) => record.kind === 'riser'),
    marks: shortMarks(all),
    held: heldInstruments(document, setup),
  };
}

/** A column down the house shows whole or not at all, as rows of seats do. */
function isCutOff(
  { document, area, toPage }: Pick<PlanContext, 'document' | 'area' | 'toPage'>,
  record: PlacedRecord,
): boolean {
  if (area === null || !isDownTheHouse(document, record)) return false;
  const box = boxOfPoints(outlineOf(record).map((corner) => mapPoint(toPage, corner)));
  return box !== null && !boxContains(area, box);
}

/** From the stage (mm, y upstage) to the page (mm on paper, y down). */
export function stageToPage(scale: number, origin: Point): Affine {
  return { a: 1 / scale, b: 0, c: 0, d: -1 / scale, e: origin.x, f: origin.y };
}

/** What each player of the setup holds from the start. */
export function heldInstruments(document: Document, setup: Id<'setup'>): Map<string, Instrument[]> {
  const held = new Map<string, Instrument[]>();
  for (const instrument of inSetup(document, setup, 'instrument')) {
    if (instrument.support !== null) continue;
    const others = held.get(instrument.player);
    if (others) others.push(instrument);
    else held.set(instrument.player, [instrument]);
  }
  return held;
}

export function onPage({ toPage }: Pick<PlanContext, 'toPage'>, point: Point): Point {
  return mapPoint(toPage, point);
}

/** From an item's own frame (it looks along -y, +x is its left) to the page. */
export function itemToPage(
  { toPage }: Pick<PlanContext, 'toPage'>,
  item: Point & { readonly facing: number },
): Affine {
  return chain(chain(turnAbout(item.facing), shift(item.x, item.y)), toPage);
}

export interface Look {
  readonly fill?: string;
  readonly stroke?: Stroke;
}

/** A path drawn in some frame, put on the page. Line widths stay as they are: they are paper sizes. */
export function paint(map: Affine, path: Path, look: Look): PathPrimitive {
  return { kind: 'path', path: mapPath(map, path), ...look };
}

export function pen(colour: string, width: number, dash?: readonly number[]): { readonly stroke: Stroke } {
  return { stroke: dash ? { colour, width, dash } : { colour, width } };
}
