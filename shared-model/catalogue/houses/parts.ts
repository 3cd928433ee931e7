/** The records a house is made of, with the figures that most houses share. */

import { asId } from '../../document/ids.ts';
import type { Door, Millimetres, Place, Platform, Point, SeatBlock, Shape } from '../../document/records.ts';
import { t } from '../../words/say.ts';
import { circle } from '../shapes.ts';

/** ANSUR II, sexes weighted equally: 1185 barefoot on a seat at knee height, and shoes, less a slump. */
const SEATED_EYE = 1200;

/** Standing: ANSUR II, sexes weighted equally, 1581 and shoes. The others: common practice, no source. */
const EYES: Readonly<Record<Place['use'], Millimetres>> = { standing: 1605, wheelchair: 1220, camera: 1700 };

type Fields<R> = Omit<Partial<R>, 'id' | 'kind'>;

export function platform(
  outline: readonly Point[],
  height: Millimetres,
  openEdges: readonly number[],
): Platform {
  return { id: asId('platform'), kind: 'platform', name: t`Platform`, outline, height, openEdges };
}

/** Corners of a rectangular platform; edge 0 is its front edge, 1 stage left, 2 the back, 3 stage right. */
export function rectangularPlatform(width: Millimetres, depth: Millimetres): Point[] {
  const half = width / 2;
  return [
    { x: -half, y: 0 },
    { x: half, y: 0 },
    { x: half, y: depth },
    { x: -half, y: depth },
  ];
}

/** An exit without steps in an edge of the platform, unless the fields say otherwise. */
export function door(id: string, name: string, fields: Fields<Door> & Pick<Door, 'edge' | 'offset'>): Door {
  return { id: asId(id), kind: 'door', name, width: 1000, exit: true, stepFree: true, ...fields };
}

/** Straight rows on a flat floor that look at the platform, unless the fields say otherwise. */
export function seats(id: string, name: string, fields: Fields<SeatBlock>): SeatBlock {
  return { ...PLAIN_SEATS, id: asId(id), name, ...fields };
}

const PLAIN_SEATS: Omit<SeatBlock, 'id'> = {
  kind: 'seatBlock',
  name: '',
  x: 0,
  y: -2500,
  facing: 180,
  rows: 10,
  seatsPerRow: 10,
  seatPitch: 520,
  rowDepth: 900,
  riser: 0,
  floor: 0,
  curveRadius: 0,
  staggered: false,
  aisles: [],
  frontRail: 0,
  eyeHeight: SEATED_EYE,
  firstRow: 'A',
};

export function place(id: string, name: string, use: Place['use'], at: Point & { floor?: number }): Place {
  const { x, y, floor = 0 } = at;
  return { id: asId(id), kind: 'place', name, use, x, y, floor, eyeHeight: EYES[use] };
}

/** A round column of the building; heights count from the platform's floor. */
export function column(id: string, at: Point, radius: Millimetres, height: Millimetres): Shape {
  return {
    id: asId(id),
    kind: 'shape',
    name: t`Column`,
    setup: null,
    x: at.x,
    y: at.y,
    facing: 0,
    outline: circle({ x: 0, y: 0 }, radius),
    height,
    fixed: true,
  };
}
