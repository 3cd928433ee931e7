/** The house as eye points, and what of the house hides the platform: rails, the platform's own edge, heads in front. */

import { bodies } from '../../catalogue/people.ts';
import type { Document } from '../../document/document.ts';
import { allOf, platformOf } from '../../document/document.ts';
import type { Person, Point, SeatBlock } from '../../document/records.ts';
import { housePlaces, type HousePlace } from '../../document/seating.ts';
import { facingVector } from '../../geometry/frame.ts';
import type { CapsuleOccluder, QuadOccluder, SeatPoint } from '../scene.ts';
import { upright, wallsOf } from './furniture.ts';
import { headRadius } from './people.ts';

export function seatPoints(document: Document): SeatPoint[] {
  return housePlaces(document).map(({ id, record, label, row, x, y, eyeZ }) => ({
    id,
    x,
    y,
    z: eyeZ,
    record,
    label,
    row,
  }));
}

/** The platform's sides, from the house floor up to its own floor: they hide what is low from low eyes. */
export function platformOccluders(document: Document): QuadOccluder[] {
  const { id, outline, height } = platformOf(document);
  return height > 0 ? wallsOf(id, outline, [-height, 0]) : [];
}

/** How far before the front row's eyes a rail stands. Common practice, no source. */
export const RAIL_AHEAD = 500;

/** A closed rail before each block that has one, as long as the front row. */
export function railOccluders(document: Document): QuadOccluder[] {
  const places = housePlaces(document);
  return allOf(document, 'seatBlock').flatMap((block) => {
    if (block.frontRail <= 0) return [];
    return railOf(
      block,
      places.filter((place) => place.record === block.id && place.row === 0),
    );
  });
}

function railOf(block: SeatBlock, front: readonly HousePlace[]): QuadOccluder[] {
  const first = front[0];
  const last = front.at(-1);
  if (!first || !last) return [];
  // Before a curved row it runs straight from seat to seat; before a straight one it is a single piece.
  const between = block.curveRadius === 0 ? [] : front.map((seat) => beside(seat, 0));
  const posts = [beside(first, -block.seatPitch / 2), ...between, beside(last, block.seatPitch / 2)];
  return posts.slice(1).map((to, index) => {
    const from = posts[index] ?? to;
    return upright(block.id, `rail-${index + 1}`, [from, to], [first.floorZ, first.floorZ + block.frontRail]);
  });
}

/** A spot on the rail before a seat, shifted towards the sitter's right. */
function beside(seat: HousePlace, sideways: number): Point {
  const ahead = facingVector(seat.facing);
  return {
    x: seat.x + ahead.x * RAIL_AHEAD + ahead.y * sideways,
    y: seat.y + ahead.y * RAIL_AHEAD - ahead.x * sideways,
  };
}

/** Whoever sits in the house: the middle of the survey, both sexes weighted equally. */
export const LISTENER: Person = {
  population: 'pooled',
  size: { by: 'percentile', percentile: 50 },
  shoes: 0,
  measured: { eyeHeight: null, shoulderHeight: null, armLength: null },
};

/**
 * A head on every seat and wheelchair place, its crown as far above the eye as the survey's median head's.
 * `owner` is the eye point it belongs to only in name: an eye is inside its own head, so the head stands a
 * head's radius and a little behind the eye, and hides nothing from it.
 */
export function headOccluders(document: Document): CapsuleOccluder[] {
  const body = bodies(LISTENER, 450).tall;
  const r = headRadius(body);
  const eyeToCrown = body.crown - body.eyeHeight;
  return housePlaces(document)
    .filter((place) => isSeated(document, place))
    .map((place) => {
      const ahead = facingVector(place.facing);
      const behind = r + HEAD_CLEARANCE;
      const crown = place.eyeZ + eyeToCrown;
      return {
        id: `${HEAD}${place.id}`,
        record: place.record,
        kind: 'capsule',
        x: place.x - ahead.x * behind,
        y: place.y - ahead.y * behind,
        z0: crown - 2 * r,
        z1: crown - r,
        r,
      };
    });
}

/** What the id of a head begins with. */
export const HEAD = 'head:';

/** Keeps a head clear of its own eye. */
const HEAD_CLEARANCE = 5;

function isSeated(document: Document, place: HousePlace): boolean {
  const record = document.records.get(place.record);
  return record?.kind === 'seatBlock' || (record?.kind === 'place' && record.use === 'wheelchair');
}
