/** Where an upright plane meets the rows of the house. */

import { allOf, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Millimetres, SeatBlock } from '../../document/records.ts';
import { housePlaces, rowName, type HousePlace } from '../../document/seating.ts';
import { facingVector, radians, type Vec2 } from '../../geometry/frame.ts';
import { onPlane, spotOfPlane, type SightPlane } from './rake-plane.ts';

/** A row where the plane meets it. Heights in the stage frame. */
export interface PlaneRow {
  readonly block: Id<'seatBlock'>;
  /** Index from the front of its block. */
  readonly row: number;
  readonly name: string;
  /** Of the eyes, along the plane. */
  readonly out: Millimetres;
  readonly floorZ: Millimetres;
  readonly eyeZ: Millimetres;
  /** 1: its people look towards smaller `out`, as the house does; -1: the other way. */
  readonly looks: 1 | -1;
  /** By half a seat against the block's front row. */
  readonly shifted: boolean;
}

export interface PlaneBlock {
  readonly block: SeatBlock;
  /** From the front of the block; not empty. */
  readonly rows: readonly PlaneRow[];
}

/**
 * The rows that the plane meets between their first and their last seat, aisles included. With `beside` also straight
 * rows that lie wholly to one side of the plane, if they look along it: seen from the side they are where they are.
 */
export function rowsOnPlane(document: Document, plane: SightPlane, beside: boolean): PlaneBlock[] {
  const seats = seatsByRow(document);
  return allOf(document, 'seatBlock').flatMap((block): PlaneBlock[] => {
    const rows = Array.from({ length: block.rows }, (_, row) => {
      const inRow = seats.get(keyOf(block.id, row)) ?? [];
      return inRow.length > 0 ? rowOnPlane(block, { row, seats: inRow }, plane, beside) : null;
    }).filter((row) => row !== null);
    return rows.length > 0 ? [{ block, rows }] : [];
  });
}

function seatsByRow(document: Document): Map<string, HousePlace[]> {
  const rows = new Map<string, HousePlace[]>();
  for (const place of housePlaces(document)) {
    const key = keyOf(place.record, place.row);
    const row = rows.get(key);
    if (row) row.push(place);
    else rows.set(key, [place]);
  }
  return rows;
}

const keyOf = (block: string, row: number): string => `${block}/${row}`;

interface Row {
  readonly row: number;
  readonly seats: readonly HousePlace[];
}

function rowOnPlane(
  block: SeatBlock,
  { row, seats }: Row,
  plane: SightPlane,
  beside: boolean,
): PlaneRow | null {
  const [first] = seats;
  const shape = shapeOf(block, row);
  const met = shape.meets(plane).find((spot) => isBetween(spot, { row, seats }, block, shape));
  const spot = met ?? (beside && looksAlong(block, plane) ? shape.middle : null);
  if (!first || !spot) return null;
  return {
    block: block.id,
    row,
    name: rowName(block.firstRow, row),
    out: onPlane(plane, spot).out,
    floorZ: first.floorZ,
    eyeZ: first.eyeZ,
    looks: alongOut(block, plane) <= 0 ? 1 : -1,
    shifted: block.staggered && row % 2 === 1,
  };
}

function isBetween(spot: Vec2, { seats }: Row, { seatPitch }: SeatBlock, { offsetOf }: RowShape): boolean {
  let [first, last] = [Infinity, -Infinity];
  for (const seat of seats) {
    const offset = offsetOf(seat);
    [first, last] = [Math.min(first, offset), Math.max(last, offset)];
  }
  const offset = offsetOf(spot);
  return offset >= first - seatPitch / 2 && offset <= last + seatPitch / 2;
}

/** How far the block looks along `out`: 1 straight away from the platform. */
function alongOut({ facing }: SeatBlock, { out }: SightPlane): number {
  const ahead = facingVector(facing);
  return ahead.x * out.x + ahead.y * out.y;
}

/** Turned by no more than this, rows seen from the side are drawn as points. */
const MOST_TURNED = 5;

function looksAlong(block: SeatBlock, plane: SightPlane): boolean {
  return block.curveRadius === 0 && Math.abs(alongOut(block, plane)) >= Math.cos(radians(MOST_TURNED));
}

interface RowShape {
  readonly middle: Vec2;
  /** Where the plane meets the line that the seats are on. */
  readonly meets: (plane: SightPlane) => Vec2[];
  /** Of a spot on that line: distance along it from the middle. */
  readonly offsetOf: (spot: Vec2) => number;
}

function shapeOf(block: SeatBlock, row: number): RowShape {
  return block.curveRadius === 0 ? straightRow(block, row) : curvedRow(block, row);
}

function straightRow(block: SeatBlock, row: number): RowShape {
  const ahead = facingVector(block.facing);
  const back = row * block.rowDepth;
  const middle = { x: block.x - ahead.x * back, y: block.y - ahead.y * back };
  return {
    middle,
    meets: (plane) => {
      const rate = alongOut(block, plane);
      // A plane along the row meets it nowhere in particular.
      if (Math.abs(rate) < 1e-9) return [];
      const gap = (middle.x - plane.at.x) * ahead.x + (middle.y - plane.at.y) * ahead.y;
      return [spotOfPlane(plane, gap / rate)];
    },
    offsetOf: ({ x, y }) => (x - middle.x) * ahead.y - (y - middle.y) * ahead.x,
  };
}

function curvedRow(block: SeatBlock, row: number): RowShape {
  const ahead = facingVector(block.facing);
  const radius = block.curveRadius + row * block.rowDepth;
  const centre = { x: block.x + ahead.x * block.curveRadius, y: block.y + ahead.y * block.curveRadius };
  return {
    middle: { x: centre.x - ahead.x * radius, y: centre.y - ahead.y * radius },
    meets: (plane) => {
      const { out, beyond } = onPlane(plane, centre);
      if (Math.abs(beyond) > radius) return [];
      const half = Math.sqrt(radius * radius - beyond * beyond);
      return [spotOfPlane(plane, out + half), spotOfPlane(plane, out - half)];
    },
    offsetOf: ({ x, y }) => {
      const [lookX, lookY] = [centre.x - x, centre.y - y];
      const turned = Math.atan2(ahead.x * lookY - ahead.y * lookX, ahead.x * lookX + ahead.y * lookY);
      return turned * radius;
    },
  };
}
