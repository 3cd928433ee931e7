/** The tilted desks of a stand and the paper on them, as rectangles in space. */

import { facingVector, radians, type Vec2, type Vec3 } from '../geometry/frame.ts';
import type { Stand, StandSide } from './records.ts';

/** Corners of a tilted rectangle: lip left, lip right, top right, top left as its reader sees them. */
export type Rectangle3 = readonly [Vec3, Vec3, Vec3, Vec3];

export interface Desk {
  /** 0 looks along the stand's facing, 1 the other way. */
  readonly sideIndex: 0 | 1;
  readonly side: StandSide;
  /** The way the page looks: from the desk towards the reader. */
  readonly towardsReader: Vec2;
  readonly board: Rectangle3;
  /** All pages of the row as one rectangle standing on the lip; null: no paper. */
  readonly paper: Rectangle3 | null;
}

/** The desks of a stand whose feet are at height `floor` above the platform's floor. */
export function desksOf(stand: Stand, floor = 0): Desk[] {
  return stand.sides.map((side, index) => deskOf(stand, side, index === 0 ? 0 : 1, floor));
}

/** Horizontal depth of a desk, from its lip to its upper edge. */
export function deskDepth(stand: Stand): number {
  return stand.deskHeight * Math.cos(radians(stand.tilt));
}

/**
 * Distance in plan from (x, y) to a desk's lip: half the depth for a single desk, whose middle is over (x, y);
 * all of it for a back-to-back pair, whose ridge is.
 */
export function lipOffset(stand: Stand): number {
  return stand.form === 'single' ? deskDepth(stand) / 2 : deskDepth(stand);
}

function deskOf(stand: Stand, side: StandSide, sideIndex: 0 | 1, floor: number): Desk {
  const towardsReader = facingVector(stand.facing + 180 * sideIndex);
  const rectangle = (width: number, height: number): Rectangle3 =>
    tiltedRectangle({ stand, towardsReader, floor, width, height });
  const hasPaper = side.pagesAcross > 0;
  return {
    sideIndex,
    side,
    towardsReader,
    board: rectangle(stand.deskWidth, stand.deskHeight),
    paper: hasPaper ? rectangle(side.pagesAcross * side.pageWidth, side.pageHeight) : null,
  };
}

interface RectangleOnDesk {
  readonly stand: Stand;
  readonly towardsReader: Vec2;
  readonly floor: number;
  readonly width: number;
  readonly height: number;
}

/** A rectangle that stands centred on the lip and leans with the desk. */
function tiltedRectangle({ stand, towardsReader, floor, width, height }: RectangleOnDesk): Rectangle3 {
  const tilt = radians(stand.tilt);
  const out = lipOffset(stand);
  const inwards = out - height * Math.cos(tilt);
  const low = floor + stand.lip;
  const high = low + height * Math.sin(tilt);
  // The reader looks against towardsReader; his right hand is this direction.
  const right = { x: towardsReader.y * -1, y: towardsReader.x };
  const corner = (sideways: number, outwards: number, z: number): Vec3 => ({
    x: stand.x + towardsReader.x * outwards + right.x * sideways,
    y: stand.y + towardsReader.y * outwards + right.y * sideways,
    z,
  });
  const half = width / 2;
  return [
    corner(-half, out, low),
    corner(half, out, low),
    corner(half, inwards, high),
    corner(-half, inwards, high),
  ];
}
