/** How much of the house a plan shows: whole rows from the front of each block, never a part of one. */

import { allOf } from '../../document/document.ts';
import type { Place, Point, SeatBlock } from '../../document/records.ts';
import { housePlaces, type HousePlace } from '../../document/seating.ts';
import { facingVector } from '../../geometry/frame.ts';
import { boxContains, boxOfPoints } from '../bounds.ts';
import type { Box } from '../primitives.ts';
import { itemToPage, onPage, type PlanContext } from './context.ts';
import { mapPoint } from '../affine.ts';
import { placeOutline } from './places.ts';

/** Where the stage lies on the page, and what may be drawn on: all that decides what of the house is shown. */
export type HouseView = Pick<PlanContext, 'document' | 'toPage' | 'scale' | 'area'>;

export interface ShownBlock {
  readonly block: SeatBlock;
  /** Of the rows shown, front row first. */
  readonly seats: readonly HousePlace[];
  /** Where the block goes on beyond the plan: points on the page along the back of the last row shown. */
  readonly breakLine: readonly Point[] | null;
}

export interface HouseShown {
  readonly blocks: readonly ShownBlock[];
  readonly places: readonly Place[];
  /** Some row or place of the house is not on the plan. */
  readonly isCut: boolean;
}

/** A block shows as many whole rows as lie in the area, counted from its front, and none behind a row that does not. */
export function houseShown(view: HouseView): HouseShown {
  const seats = seatsByRecord(view);
  const all = allOf(view.document, 'seatBlock');
  const blocks = all.flatMap((block) => shownBlock(view, block, seats.get(block.id) ?? []) ?? []);
  const places = allOf(view.document, 'place');
  const shown = places.filter((place) => isWithin(view, placeBox(view, place)));
  const isCut =
    shown.length < places.length ||
    blocks.length < all.length ||
    blocks.some(({ breakLine }) => breakLine !== null);
  return { blocks, places: shown, isCut };
}

function seatsByRecord({ document }: HouseView): Map<string, HousePlace[]> {
  const groups = new Map<string, HousePlace[]>();
  for (const place of housePlaces(document)) {
    const group = groups.get(place.record);
    if (group) group.push(place);
    else groups.set(place.record, [place]);
  }
  return groups;
}

function shownBlock(view: HouseView, block: SeatBlock, seats: readonly HousePlace[]): ShownBlock | null {
  const firstOut = seats.find((seat) => !isWithin(view, seatBox(view, block, seat)));
  if (!firstOut) return { block, seats, breakLine: null };
  for (let rows = firstOut.row; rows > 0; rows--) {
    const shown = seats.filter(({ row }) => row < rows);
    const breakLine = lineBehind(view, block, shown);
    const box = boxOfPoints(breakLine);
    if (box && isWithin(view, box)) return { block, seats: shown, breakLine };
  }
  return null;
}

/** Along the back of the last of the rows, a little beyond its ends, where the row behind it would begin. */
function lineBehind(view: HouseView, block: SeatBlock, seats: readonly HousePlace[]): Point[] {
  const last = seats.at(-1)?.row ?? 0;
  const row = seats.filter(({ row: own }) => own === last);
  const spots = row.map((seat) => besideSeat(block, seat, 0));
  const [first, end] = [row[0], row.at(-1)];
  if (!first || !end) return [];
  const ends = [besideSeat(block, first, -1), ...spots, besideSeat(block, end, 1)];
  return ends.map((spot) => onPage(view, spot));
}

/** Behind a seat, on its middle or `side` seats to its sitter's right. */
function besideSeat(block: SeatBlock, seat: HousePlace, side: number): Point {
  const look = facingVector(seat.facing);
  const [back, across] = [0.55 * block.rowDepth, side * 0.5 * block.seatPitch];
  return {
    x: seat.x - look.x * back + look.y * across,
    y: seat.y - look.y * back - look.x * across,
  };
}

/** The box on the page of a seat as it is drawn. */
export function seatBox(view: HouseView, block: SeatBlock, seat: HousePlace): Box {
  const { width, depth } = cushionOf(block);
  const look = facingVector(seat.facing);
  const [c, s] = [Math.abs(look.y), Math.abs(look.x)];
  const half = {
    x: (c * width + s * depth) / 2 / view.scale,
    y: (s * width + c * depth) / 2 / view.scale,
  };
  const at = onPage(view, seat);
  return { x: at.x - half.x, y: at.y - half.y, width: 2 * half.x, height: 2 * half.y };
}

/** Size of the cushion as drawn, mm in the house. */
export function cushionOf({ seatPitch, rowDepth }: SeatBlock): { width: number; depth: number } {
  return { width: seatPitch * 0.84, depth: Math.min(rowDepth * 0.52, 470) };
}

/** The box on the page of a single place as it is drawn. */
export function placeBox(view: HouseView, place: Place): Box {
  const map = itemToPage(view, { x: place.x, y: place.y, facing: 180 });
  const corners = placeOutline(place.use).map((corner) => mapPoint(map, corner));
  const at = onPage(view, place);
  return boxOfPoints(corners) ?? { x: at.x, y: at.y, width: 0, height: 0 };
}

function isWithin({ area }: HouseView, box: Box): boolean {
  return area === null || boxContains(area, box);
}

/** Where the house is on the page, as far as it is drawn: texts keep off it. */
export function houseBoxes(view: HouseView): Box[] {
  const { blocks, places } = houseShown(view);
  const seats = blocks.flatMap(({ block, seats: shown }) => shown.map((seat) => seatBox(view, block, seat)));
  const lines = blocks.flatMap(({ breakLine }) => (breakLine ? (boxOfPoints(breakLine) ?? []) : []));
  return [...seats, ...lines, ...places.map((place) => placeBox(view, place))];
}
