/** The house: seats block by block, and single places with symbols of their own. */

import type { SightBand } from '../../checks/report.ts';
import type { HousePlace } from '../../document/seating.ts';
import type { Place, Point, SeatBlock } from '../../document/records.ts';
import { t } from '../../words/say.ts';
import { IDENTITY, mapPath } from '../affine.ts';
import { grownBox } from '../bounds.ts';
import type { Occupancy } from '../occupancy.ts';
import { polyline, rectangle, roundedRectangle } from '../outline.ts';
import type { GroupPrimitive, PathItem, Primitive } from '../primitives.ts';
import { bandMark, bandOf, bandRim, BANDS, SIGHT_BANDS } from '../sight-bands.ts';
import { WEIGHT } from '../style.ts';
import { itemToPage, onPage, paint, pen, WORST_SEEN, type PlanContext, type PlanReport } from './context.ts';
import { cushionOf, houseShown, type ShownBlock } from './house-shown.ts';
import { placeSymbol } from './places.ts';
import { placeDescription } from './place-words.ts';
import { blockName, rowNames } from './row-names.ts';

/** The places of the house that are shown, each block one group. Static while items are dragged, but for the bands. */
export function drawHouse(context: PlanContext, taken: Occupancy): GroupPrimitive {
  const bands = context.layers.sightBands;
  const bandsById = bands && context.report ? seatBands(context.report, bands.player) : NO_BANDS;
  const { blocks, places } = houseShown(context);
  return {
    kind: 'group',
    children: [
      ...blocks.map((shown) => drawBlock(context, shown, { bandsById, taken })),
      ...places.map((place) => drawPlace(context, place, bandsById.get(place.id) ?? null)),
    ],
  };
}

type Bands = ReadonlyMap<string, SightBand>;

const NO_BANDS: Bands = new Map();

/** The band of every seat: of one player, or the worst of all players as that seat sees them. */
export function seatBands({ sight }: Pick<PlanReport, 'sight'>, player: string): Bands {
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
  readonly bandsById: Bands;
  /** Where texts are already. */
  readonly taken: Occupancy;
}

function drawBlock(
  context: PlanContext,
  shown: ShownBlock,
  { bandsById, taken }: BlockContent,
): GroupPrimitive {
  const { block, seats, breakLine } = shown;
  const children: Primitive[] = [];
  const inFrame = lookedAt(context, shown);
  // Seats of one look share one path: a full house stays quick to paint and small to print.
  for (const band of [null, ...SIGHT_BANDS]) {
    const alike = inFrame.filter((seat) => (bandsById.get(seat.id) ?? null) === band);
    if (alike.length > 0) children.push(...drawSeats(context, alike, { block, band }));
  }
  if (breakLine) children.push(drawBreak(context, breakLine));
  children.push(...rowNames(context, shown, taken), ...blockName(context, shown, taken));
  const name = block.name || t`Seats`;
  return {
    kind: 'group',
    subject: block.id,
    description: breakLine
      ? t`${name}: ${seats.length} seats and more that are not shown`
      : t`${name}: ${seats.length} seats`,
    children,
  };
}

/** The seats of which some part may be looked at. */
function lookedAt(context: PlanContext, { block, seats }: ShownBlock): readonly HousePlace[] {
  const { frame, scale } = context;
  if (!frame) return seats;
  const { x, y, width, height } = grownBox(frame, block.seatPitch / scale);
  return seats.filter((seat) => {
    const at = onPage(context, seat);
    return at.x >= x && at.x <= x + width && at.y >= y && at.y <= y + height;
  });
}

/** The long break line of ISO 128-2 (01.1.18, from memory): thin, with zigzags. */
function drawBreak({ palette }: PlanContext, points: readonly Point[]): Primitive {
  const path: Point[] = [];
  points.forEach((to, index) => {
    const from = points[index - 1];
    if (from && index % ZIGZAG_EVERY === 2) path.push(...zigzag(from, to));
    path.push(to);
  });
  return { kind: 'path', path: polyline(path), ...pen(palette.building, WEIGHT.thin) };
}

/** Seats from one zigzag to the next. */
const ZIGZAG_EVERY = 5;

function zigzag(from: Point, to: Point): Point[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const [ux, uy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const spot = (along: number, out: number): Point => ({
    x: middle.x + along * ux - out * uy,
    y: middle.y + along * uy + out * ux,
  });
  return [spot(-0.7, 0), spot(-0.3, -1.4), spot(0.3, 1.4), spot(0.7, 0)];
}

interface SeatLook {
  readonly block: SeatBlock;
  readonly band: SightBand | null;
}

/** Narrower than this on the page, mm, a seat is a plain rectangle: its back and the rim of its mark would only blur. */
const PLAIN_BELOW = 1;

function drawSeats(
  context: PlanContext,
  seats: readonly HousePlace[],
  { block, band }: SeatLook,
): Primitive[] {
  const { palette, scale } = context;
  const { width, depth } = cushionOf(block);
  const isPlain = width / scale < PLAIN_BELOW;
  const corner = Math.min(90, width / 4);
  const box = { x: -width / 2, y: -depth / 2, width, height: depth };
  const cushion = isPlain ? rectangle(box) : roundedRectangle(box, corner);
  const back = polyline([
    { x: -width / 2 + corner / 2, y: depth / 2 },
    { x: width / 2 - corner / 2, y: depth / 2 },
  ]);
  const cushions: PathItem[] = [];
  const backs: PathItem[] = [];
  for (const seat of seats) {
    const map = itemToPage(context, seat);
    cushions.push(...mapPath(map, cushion));
    if (!isPlain) backs.push(...mapPath(map, back));
  }
  const fill = band === null ? palette.houseSeat : BANDS[band].fill;
  const line = band === null ? palette.houseSeatLine : palette.ink;
  return [
    { kind: 'path', path: cushions, fill, ...pen(line, WEIGHT.hair) },
    ...(isPlain ? [] : [{ kind: 'path' as const, path: backs, ...pen(line, WEIGHT.fine) }]),
    ...bandMarks(context, seats, { band, radius: (0.27 * Math.min(width, depth)) / scale, isPlain }),
  ];
}

interface MarkLook {
  readonly band: SightBand | null;
  readonly radius: number;
  readonly isPlain: boolean;
}

function bandMarks(
  context: PlanContext,
  seats: readonly HousePlace[],
  { band, radius, isPlain }: MarkLook,
): Primitive[] {
  if (band === null) return [];
  const filled: PathItem[] = [];
  const rims: PathItem[] = [];
  for (const seat of seats) {
    const at = onPage(context, seat);
    filled.push(...bandMark(band, at, radius));
    if (!isPlain) rims.push(...bandRim(at, radius));
  }
  const colour = BANDS[band].mark;
  const rim: Primitive[] = isPlain ? [] : [{ kind: 'path', path: rims, ...pen(colour, WEIGHT.hair) }];
  return filled.length > 0 ? [{ kind: 'path', path: filled, fill: colour }, ...rim] : rim;
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
    description: placeDescription(place),
    children: [...placeSymbol(place.use, map, { fill, line: context.palette.ink }), ...mark],
  };
}
