/** The view from a place of the house: everybody on the platform, and as much of it as an eye takes in at once. */

import { bodies } from '../../catalogue/people.ts';
import { inSetup, placedInSetup, platformOf, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { floorHeightAt } from '../../document/levels.ts';
import type { Degrees, Player, Point } from '../../document/records.ts';
import { housePlaces, type HousePlace } from '../../document/seating.ts';
import { outlineOf } from '../../catalogue/outlines.ts';
import { degrees, facingTowards, facingVector, radians, type Vec3 } from '../../geometry/frame.ts';
import type { Field, View } from './view.ts';

/** Degrees to either side within which the picture stays calm; the players are shown whole even beyond. */
const CALM = 33;
/** From far away there is so much round the stage, to either side. */
const NARROWEST = 13;
/** Nobody looks farther round than this at once. */
const WIDEST = 62;
/** Room round what has to be seen, in degrees and as shares of its height. */
const SIDE_MARGIN = 2;
const HEADROOM = 0.22;
const FOOTROOM = 0.08;

/** Tangents up and down: of a picture with hardly anything in it, and of the steepest that is drawn. */
const LEAST = 0.05;
const STEEPEST = 1.2;

/** `seatId` as in `housePlaces`: "block-1/C-12", or the id of a single place; null when there is no such place. */
export function viewFromSeat(document: Document, setup: Id<'setup'>, seatId: string): View | null {
  const place = housePlaces(document).find(({ id }) => id === seatId);
  if (!place) return null;
  const eye = { x: place.x, y: place.y, z: place.eyeZ };
  const players = inSetup(document, setup, 'player');
  const { facing, half } = sweepFrom(document, setup, place, players);
  const across = Math.tan(radians(half));
  const heights = heightsFrom(document, setup, { eye, facing, half }, players);
  return {
    subject: place.id,
    label: place.label,
    from: 'seat',
    eye,
    facing,
    pitch: 0,
    field: { left: -across, right: across, ...heights },
  };
}

interface Sweep {
  readonly facing: Degrees;
  /** To either side. */
  readonly half: Degrees;
}

/** All that stands on the platform, and then of the platform what lies within a calm picture. */
function sweepFrom(
  document: Document,
  setup: Id<'setup'>,
  place: HousePlace,
  players: readonly Player[],
): Sweep {
  const platform = platformOf(document).outline;
  const things = placedInSetup(document, setup).filter(({ setup: own }) => own !== null);
  const must = (things.length > 0 ? things : players).flatMap((record) => outlineOf(record));
  const middle = facingTowards(place, middleOf(must.length > 0 ? must : platform));
  const [left, right] = bearings(place, middle, must.length > 0 ? must : platform);
  const [platformLeft, platformRight] = bearings(place, middle, platform);
  const centre = (left + right) / 2;
  const low = Math.max(-WIDEST, Math.min(left, Math.max(platformLeft, centre - CALM)) - SIDE_MARGIN);
  const high = Math.min(WIDEST, Math.max(right, Math.min(platformRight, centre + CALM)) + SIDE_MARGIN);
  return { facing: middle - (low + high) / 2, half: Math.max(NARROWEST, (high - low) / 2) };
}

/** From the leftmost to the rightmost of the points, in degrees from a direction, to the right positive. */
function bearings(eye: Point, facing: Degrees, points: readonly Point[]): [number, number] {
  const ahead = facingVector(facing);
  let [low, high] = [Infinity, -Infinity];
  for (const { x, y } of points) {
    const [dx, dy] = [x - eye.x, y - eye.y];
    const bearing = degrees(Math.atan2(dx * ahead.y - dy * ahead.x, dx * ahead.x + dy * ahead.y));
    low = Math.min(low, bearing);
    high = Math.max(high, bearing);
  }
  return [low, high];
}

interface Looking extends Sweep {
  readonly eye: Vec3;
}

/** From the nearest edge of the platform's floor that is in the picture to over the highest head. */
function heightsFrom(
  document: Document,
  setup: Id<'setup'>,
  looking: Looking,
  players: readonly Player[],
): Pick<Field, 'bottom' | 'top'> {
  const crowns = players.map((player) => {
    const { crown } = bodies(player.person, player.chair?.height ?? null).tall;
    return { x: player.x, y: player.y, z: floorHeightAt(document, setup, player) + crown };
  });
  const floor = platformOf(document).outline.map(({ x, y }) => ({ x, y, z: 0 }));
  const feet = crowns.map((crown) => ({ ...crown, z: 0 }));
  const top = tangents(looking, crowns).reduce((most, tangent) => Math.max(most, tangent), LEAST);
  const bottom = tangents(looking, [...floor, ...feet]).reduce(
    (least, tangent) => Math.min(least, tangent),
    -LEAST,
  );
  const height = top - bottom;
  return {
    bottom: Math.max(-STEEPEST, bottom - FOOTROOM * height),
    top: Math.min(STEEPEST, top + HEADROOM * height),
  };
}

/** Tangents of the angles up to the points that are in the picture's width. */
function tangents({ eye, facing, half }: Looking, points: readonly Vec3[]): number[] {
  const ahead = facingVector(facing);
  return points.flatMap(({ x, y, z }) => {
    const depth = (x - eye.x) * ahead.x + (y - eye.y) * ahead.y;
    const across = (x - eye.x) * ahead.y - (y - eye.y) * ahead.x;
    return depth > 0 && Math.abs(across) <= depth * Math.tan(radians(half)) ? [(z - eye.z) / depth] : [];
  });
}

function middleOf(points: readonly Point[]): Point {
  const sum = points.reduce((to, { x, y }) => ({ x: to.x + x, y: to.y + y }), { x: 0, y: 0 });
  return { x: sum.x / points.length, y: sum.y / points.length };
}
