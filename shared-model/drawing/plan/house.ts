/** The house: seats block by block, and single places with symbols of their own. */

import type { Report, SightBand } from '../../checks/report.ts';
import { allOf } from '../../document/document.ts';
import { housePlaces, type HousePlace } from '../../document/seating.ts';
import type { Place, Point, SeatBlock } from '../../document/records.ts';
import { IDENTITY, mapPath } from '../affine.ts';
import { boxContains } from '../bounds.ts';
import type { Occupancy } from '../occupancy.ts';
import { polyline, roundedRectangle } from '../outline.ts';
import type { Box, GroupPrimitive, PathItem, Primitive } from '../primitives.ts';
import { bandMark, bandOf, bandRim, BANDS, SIGHT_BANDS } from '../sight-bands.ts';
import { WEIGHT } from '../style.ts';
import { itemToPage, onPage, paint, pen, WORST_SEEN, type PlanContext } from './context.ts';
import { placeSymbol } from './places.ts';
import { blockName, rowNames } from './row-names.ts';

/** All places of the house, each block one group. Static while items are dragged, but for the bands. */
export function drawHouse(context: PlanContext, taken: Occupancy): GroupPrimitive {
  const bands = context.layers.sightBands;
  const bandsById = bands && context.report ? seatBands(context.report, bands.player) : NO_BANDS;
  const seats = groupedByRecord(housePlaces(context.document).filter((place) => isInArea(context, place)));
  const blocks = allOf(context.document, 'seatBlock').map((block) =>
    drawBlock(context, block, { seats: seats.get(block.id) ?? [], bandsById, taken }),
  );
  const places = allOf(context.document, 'place')
    .filter((place) => seats.has(place.id))
    .map((place) => drawPlace(context, place, bandsById.get(place.id) ?? null));
  return { kind: 'group', children: [...blocks, ...places] };
}

type Bands = ReadonlyMap<string, SightBand>;

const NO_BANDS: Bands = new Map();

/** The band of every seat: of one player, or the worst of all players as that seat sees them. */
export function seatBands({ sight }: Report, player: string): Bands {
  const { seats, targets } = sight.scene;
  const wanted = targets.map((target) => player === WORST_SEEN || target.id === player);
  const bands = new Map<string, SightBand>();
  seats.forEach((seat, row) => {
    let least = Infinity;
    wanted.forEach((counts, column) => {
      if (counts) least = Math.min(least, sight.visible[row * targets.length + column] ?? Infinity);
    });
    if (least !== Infinity) bands.set(seat.id, bandOf(least));
  });
  return bands;
}

interface BlockContent {
  readonly seats: readonly HousePlace[];
  readonly bandsById: Bands;
  /** Where texts are already. */
  readonly taken: Occupancy;
}

function drawBlock(
  context: PlanContext,
  block: SeatBlock,
  { seats, bandsById, taken }: BlockContent,
): GroupPrimitive {
  const children: Primitive[] = [];
  // Seats of one look share one path: a full house stays quick to paint and small to print.
  for (const band of [null, ...SIGHT_BANDS]) {
    const alike = seats.filter((seat) => (bandsById.get(seat.id) ?? null) === band);
    if (alike.length > 0) children.push(...drawSeats(context, alike, { block, band }));
  }
  children.push(
    ...rowNames(context, block, { seats, taken }),
    ...blockName(context, block, { seats, taken }),
  );
  return {
    kind: 'group',
    subject: block.id,
    description: `${block.name || 'Seats'}: ${seats.length} seats`,
    children,
  };
}

interface SeatLook {
  readonly block: SeatBlock;
  readonly band: SightBand | null;
}

function drawSeats(
  context: PlanContext,
  seats: readonly HousePlace[],
  { block, band }: SeatLook,
): Primitive[] {
  const { palette, scale } = context;
  const [width, depth] = [block.seatPitch * 0.84, Math.min(block.rowDepth * 0.52, 470)];
  const corner = Math.min(90, width / 4);
  const cushion = roundedRectangle({ x: -width / 2, y: -depth / 2, width, height: depth }, corner);
  const back = polyline([
    { x: -width / 2 + corner / 2, y: depth / 2 },
    { x: width / 2 - corner / 2, y: depth / 2 },
  ]);
  const cushions: PathItem[] = [];
  const backs: PathItem[] = [];
  for (const seat of seats) {
    const map = itemToPage(context, seat);
    cushions.push(...mapPath(map, cushion));
    backs.push(...mapPath(map, back));
  }
  const fill = band === null ? palette.houseSeat : BANDS[band].fill;
  const line = band === null ? palette.houseSeatLine : palette.ink;
  return [
    { kind: 'path', path: cushions, fill, ...pen(line, WEIGHT.hair) },
    { kind: 'path', path: backs, ...pen(line, WEIGHT.fine) },
    ...bandMarks(context, seats, { band, radius: (0.27 * Math.min(width, depth)) / scale }),
  ];
}

interface MarkLook {
  readonly band: SightBand | null;
  readonly radius: number;
}

function bandMarks(
  context: PlanContext,
  seats: readonly HousePlace[],
  { band, radius }: MarkLook,
): Primitive[] {
  if (band === null) return [];
  const filled: PathItem[] = [];
  const rims: PathItem[] = [];
  for (const seat of seats) {
    const at = onPage(context, seat);
    filled.push(...bandMark(band, at, radius));
    rims.push(...bandRim(at, radius));
  }
  const colour = BANDS[band].mark;
  const rim: Primitive = { kind: 'path', path: rims, ...pen(colour, WEIGHT.hair) };
  return filled.length > 0 ? [{ kind: 'path', path: filled, fill: colour }, rim] : [rim];
}

function drawPlace(context: PlanContext, place: Place, band: SightBand | null): GroupPrimitive {
  const fill = band === null ? context.palette.houseSeat : BANDS[band].fill;
  const map = itemToPage(context, { x: place.x, y: place.y, facing: 180 });
  const radius = 90 / context.scale;
  const at = onPage(context, place);
  const mark: Primitive[] =
    band === null
      ? []
      : [
          paint(IDENTITY, bandRim(at, radius), pen(BANDS[band].mark, WEIGHT.hair)),
          paint(IDENTITY, bandMark(band, at, radius), { fill: BANDS[band].mark }),
        ];
  return {
    kind: 'group',
    subject: place.id,
    description: `${place.name || 'Place'}: ${place.use}`,
    children: [...placeSymbol(place.use, map, { fill, line: context.palette.ink }), ...mark],
  };
}

/** Whether the whole seat lies in the area that may be drawn in. */
export function isInArea(context: PlanContext, place: Point): boolean {
  if (!context.area) return true;
  const at = onPage(context, place);
  const reach = SEAT_HALF / context.scale;
  return boxContains(context.area, { x: at.x - reach, y: at.y - reach, width: 2 * reach, height: 2 * reach });
}

const SEAT_HALF = 300;

/** Where the places of the house are on the page, as far as they are drawn: texts keep off them. */
export function placeBoxes(context: PlanContext): Box[] {
  if (!context.layers.seats) return [];
  const half = CUSHION_HALF / context.scale;
  return housePlaces(context.document)
    .filter((place) => isInArea(context, place))
    .map((place) => {
      const at = onPage(context, place);
      return { x: at.x - half, y: at.y - half, width: 2 * half, height: 2 * half };
    });
}

const CUSHION_HALF = 220;

function groupedByRecord(places: readonly HousePlace[]): Map<string, HousePlace[]> {
  const groups = new Map<string, HousePlace[]>();
  for (const place of places) {
    const group = groups.get(place.record);
    if (group) group.push(place);
    else groups.set(place.record, [place]);
  }
  return groups;
}
