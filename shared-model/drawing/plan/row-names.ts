/** The letters or numbers of the rows, at both ends of each; every second, third, ... where they would touch. */

import { allOf } from '../../document/document.ts';
import type { HousePlace } from '../../document/seating.ts';
import { rowName } from '../../document/seating.ts';
import type { SeatBlock } from '../../document/records.ts';
import { facingVector } from '../../geometry/frame.ts';
import { firstFree, type Occupancy } from '../occupancy.ts';
import type { TextPrimitive } from '../primitives.ts';
import { CAP_HEIGHT, LEADING, TEXT } from '../style.ts';
import { fitted, textLine } from '../text.ts';
import { onPage, type PlanContext } from './context.ts';

interface Rows {
  readonly seats: readonly HousePlace[];
  readonly taken: Occupancy;
}

export function rowNames(context: PlanContext, block: SeatBlock, { seats, taken }: Rows): TextPrimitive[] {
  const rowsApart = block.rowDepth / context.scale;
  const every = Math.max(1, Math.ceil((TEXT.small * LEADING) / Math.max(rowsApart, 1e-6)));
  const texts: TextPrimitive[] = [];
  for (const [row, ends] of endsOfRows(seats)) {
    if (row % every !== 0) continue;
    const name = rowName(block.firstRow, row);
    texts.push(besideSeat(context, block, { seat: ends.first, name, side: -1 }));
    if (ends.last !== ends.first) texts.push(besideSeat(context, block, { seat: ends.last, name, side: 1 }));
  }
  return texts.flatMap((text) => firstFree([text], taken, context.measure));
}

interface RowEnd {
  readonly seat: HousePlace;
  readonly name: string;
  /** -1 on the sitter's left of the seat, 1 on his right. */
  readonly side: -1 | 1;
}

function besideSeat(context: PlanContext, block: SeatBlock, { seat, name, side }: RowEnd): TextPrimitive {
  const look = facingVector(seat.facing);
  const out = side * (block.seatPitch * 0.5 + TEXT.small * 0.55 * context.scale);
  const at = onPage(context, { x: seat.x + look.y * out, y: seat.y - look.x * out });
  const { faint } = context.palette;
  return textLine(name, { x: at.x, y: at.y + (CAP_HEIGHT * TEXT.small) / 2 }, { ...ROW_TYPE, colour: faint });
}

const ROW_TYPE = { size: TEXT.small, weight: 'regular', anchor: 'middle' } as const;

function endsOfRows(seats: readonly HousePlace[]): Map<number, { first: HousePlace; last: HousePlace }> {
  const rows = new Map<number, { first: HousePlace; last: HousePlace }>();
  for (const seat of seats) {
    const ends = rows.get(seat.row);
    if (ends) ends.last = seat;
    else rows.set(seat.row, { first: seat, last: seat });
  }
  return rows;
}

/** The name of a block before its front row, or behind its last; none where the house is one block. */
export function blockName(context: PlanContext, block: SeatBlock, { seats, taken }: Rows): TextPrimitive[] {
  const front = seats.filter((seat) => seat.row === 0);
  if (front.length === 0 || allOf(context.document, 'seatBlock').length < 2) return [];
  const look = facingVector(block.facing);
  const name = fitted(block.name, LONGEST_NAME, ROW_TYPE, context.measure);
  if (name === '') return [];
  const [depth, step] = [(block.rows - 1) * block.rowDepth, context.scale * TEXT.small];
  const candidates = [block.rowDepth * 0.62, -depth - block.rowDepth * 0.75, step * 3, -depth - step * 3].map(
    (ahead) => {
      const at = onPage(context, { x: block.x + look.x * ahead, y: block.y + look.y * ahead });
      return textLine(name, at, { ...ROW_TYPE, weight: 'bold', colour: context.palette.faint });
    },
  );
  return firstFree(candidates, taken, context.measure);
}

const LONGEST_NAME = 70;
