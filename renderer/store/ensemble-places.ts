/** Where everybody of an ensemble goes on the platform, and what that makes of records. */

import type { Fashion } from '#model/arrange/fashions.ts';
import type { Member } from '#model/arrange/instrument-words.ts';
import { roomFor, type Footprint } from '#model/arrange/room-for.ts';
import { placesOf, type Place } from '#model/arrange/shapes.ts';
import { largeInstrumentModel } from '#model/catalogue/large-instruments.ts';
import { pianoModel, USUAL_PIANO } from '#model/catalogue/pianos.ts';
import { groundsBeforeDoors } from '#model/checks/room/doors.ts';
import { freshIds } from '#model/commands/fresh-id.ts';
import { concertOf, placedInSetup, platformOf, type Document } from '#model/document/document.ts';
import { facingVector, type Vec2 } from '#model/geometry/frame.ts';
import { boundsOf } from '#model/geometry/polygon.ts';
import { EnsembleRecords, isLarge, type EnsembleOrder, type Large } from './ensemble-records.ts';
import { STAND_AHEAD } from './players.ts';

/** Everybody set in this fashion; null where they do not go on the platform so. */
export function ensembleOnPlatform(
  document: Document,
  members: readonly Member[],
  order: EnsembleOrder,
  fashion?: Fashion,
): EnsembleRecords | null {
  const seats = relativeSeats(members, order, fashion);
  const shift = roomFor({
    footprints: seats.flatMap(footprintsOf),
    outline: platformOf(document).outline,
    taken: placedInSetup(document, order.setup),
    fromEdge: concertOf(document).limits.edgeDistance,
    free: groundsBeforeDoors(document),
    back: fashion?.back ?? 0,
  });
  if (!shift) return null;
  const set = new EnsembleRecords(order, freshIds(document), fashion);
  for (const seat of seats) set.member(seat.member, moved(seat, shift));
  set.sharedStands();
  return set;
}

/** One of the ensemble and where, about the group's own spot. */
interface Seat extends Place {
  readonly member: Member;
}

function moved({ x, y, facing, page }: Place, by: Vec2): Place {
  const round = (length: number): number => Math.round(length / 10) * 10;
  return { x: round(x + by.x), y: round(y + by.y), facing: Math.round(facing), page: Math.round(page) };
}

/** Who carries his instrument is in the shape; what stands on the floor goes behind, side by side. */
function relativeSeats(
  members: readonly Member[],
  { shape, shared, withStands }: EnsembleOrder,
  fashion?: Fashion,
): Seat[] {
  const inShape = members.filter((member) => !isLarge(member));
  const behind = members.filter(isLarge);
  const widths = inShape.map(widthOf);
  const places = placesOf({ shape, widths, shared: shared && withStands, ...(fashion ? { fashion } : {}) });
  const clear = behind.some(({ kind }) => kind === 'piano') ? (fashion?.piano.clear ?? 0) : 0;
  const seats = inShape.map((member, index) => shifted({ member, ...(places[index] ?? HERE) }, clear));
  const top = seats.reduce((most, { y }) => Math.max(most, y + BEHIND_PLAYERS), 0);
  const depth = behind.reduce((most, member) => Math.max(most, sizeOf(member).depth), 0);
  const row = placesOf({ shape: 'row', widths: behind.map((member) => sizeOf(member).width), shared: false });
  return [
    ...seats,
    ...behind.map((member, index) => ({ member, ...HERE, x: row[index]?.x ?? 0, y: top + depth / 2 })),
  ];
}

function shifted(seat: Seat, by: number): Seat {
  return { ...seat, x: seat.x + by };
}

const HERE: Place = { x: 0, y: 0, facing: 0, page: 0 };

/** Behind the last chairs, before what stands at the back. Common practice, no source. */
const BEHIND_PLAYERS = 900;
const SHOULDERS = 480;
const BETWEEN = 250;
const LEAST_WIDTH = 1000;
const AT_A_TABLE = 1700;
/** Room for whoever plays it. */
const PLAYER_ROOM = 1100;

function widthOf(member: Member): number {
  if (member.kind !== 'carried') return AT_A_TABLE;
  const { left, right } = member.model.elbowRoom;
  return Math.max(LEAST_WIDTH, SHOULDERS + left + right + BETWEEN);
}

/** On the plan, its player included; a piano lies across. */
function sizeOf({ kind, model }: Large): { readonly width: number; readonly depth: number } {
  if (kind === 'piano') {
    const { length, width } = pianoModel(model) ?? USUAL_PIANO;
    return { width: length + PLAYER_ROOM, depth: width };
  }
  const { minX, maxX, minY, maxY } = boundsOf(largeInstrumentModel(model)?.outline ?? [{ x: 0, y: 0 }]);
  return { width: maxX - minX + 400, depth: maxY - minY + PLAYER_ROOM };
}

/** Of a player: himself with his chair, and the stand before him. Of something large: its box. */
function footprintsOf(seat: Seat): Footprint[] {
  const { member, x, y, page } = seat;
  if (isLarge(member)) {
    const { width, depth } = sizeOf(member);
    const radius = depth / 2;
    const reach = Math.max(0, width / 2 - radius);
    return [-reach, 0, reach].map((by) => ({ x: x + by, y, radius }));
  }
  const ahead = facingVector(page);
  return [
    { x, y, radius: 400 },
    { x: x + ahead.x * STAND_AHEAD, y: y + ahead.y * STAND_AHEAD, radius: 300 },
  ];
}
