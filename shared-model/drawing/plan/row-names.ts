/** The letters or numbers of the rows, at both ends of each, and the names of the blocks. */

import { allOf } from '../../document/document.ts';
import type { HousePlace } from '../../document/seating.ts';
import { rowName } from '../../document/seating.ts';
import type { SeatBlock } from '../../document/records.ts';
import { facingVector, type Vec2 } from '../../geometry/frame.ts';
import { boxContains, boxOfPoints, textBox } from '../bounds.ts';
import { firstFree, type Occupancy } from '../occupancy.ts';
import type { TextPrimitive } from '../primitives.ts';
import { CAP_HEIGHT, LEADING, TEXT } from '../style.ts';
import { fitted, textLine } from '../text.ts';
import { onPage, type PlanContext } from './context.ts';
import { seatBox, type ShownBlock } from './house-shown.ts';

/** Every second, third, ... row where all would touch. A row that finds no room beside it is named in an aisle. */
export function rowNames(
  context: PlanContext,
  { block, seats }: ShownBlock,
  taken: Occupancy,
): TextPrimitive[] {
  const rowsApart = block.rowDepth / context.scale;
  const every = Math.max(1, Math.ceil((TEXT.small * LEADING) / Math.max(rowsApart, 1e-6)));
  return seatsByRow(seats).flatMap((row) => {
    const [first] = row;
    if (!first || first.row % every !== 0) return [];
    const name = rowName(block.firstRow, first.row);
    const find = (ends: readonly RowEnd[]): TextPrimitive[] =>
      firstFree(
        ends
          .flatMap((end) => CLEAR.map((clear) => besideSeat(context, block, { ...end, name, clear })))
          .filter((text) => isOnPlan(context, text)),
        taken,
        { measure: context.measure },
      );
    const outer = [find([{ seat: first, side: -1 }]), find([{ seat: row.at(-1) ?? first, side: 1 }])].flat();
    return outer.length > 0 ? outer : find(aisleEnds(block, row));
  });
}

/** Between a seat and the name of its row, mm on paper, in the order they are tried. */
const CLEAR = [0.7, 0.4, 1.4, 2.4];

const ROW_TYPE = { size: TEXT.small, weight: 'regular', anchor: 'middle' } as const;

interface RowEnd {
  readonly seat: HousePlace;
  /** -1 on the sitter's left of the seat, 1 on his right. */
  readonly side: -1 | 1;
}

interface NamedEnd extends RowEnd {
  readonly name: string;
  readonly clear: number;
}

function besideSeat(
  context: PlanContext,
  block: SeatBlock,
  { seat, name, side, clear }: NamedEnd,
): TextPrimitive {
  const look = facingVector(seat.facing);
  const out = { x: look.y * side, y: look.x * side };
  const box = seatBox(context, block, seat);
  const half = (block.seatPitch * 0.42) / context.scale + clear;
  return textBeside(
    context,
    { name, weight: 'regular' },
    {
      from: { x: box.x + box.width / 2, y: box.y + box.height / 2 },
      out,
      clear: half,
    },
  );
}

function seatsByRow(seats: readonly HousePlace[]): HousePlace[][] {
  const rows: HousePlace[][] = [];
  for (const seat of seats) {
    const last = rows.at(-1);
    if (last?.[0]?.row === seat.row) last.push(seat);
    else rows.push([seat]);
  }
  return rows;
}

function aisleEnds(block: SeatBlock, row: readonly HousePlace[]): RowEnd[] {
  return block.aisles.flatMap(({ afterSeat }) => {
    const seat = row[afterSeat - 1];
    return seat && afterSeat < row.length ? [{ seat, side: 1 as const }] : [];
  });
}

/**
 * The name of a block before its front row, beside it if it looks across the page, or behind its last; none where the
 * house is one block or no such place is free.
 */
export function blockName(
  context: PlanContext,
  { block, seats, breakLine }: ShownBlock,
  taken: Occupancy,
): TextPrimitive[] {
  const box = boxOfPoints(seats.map((seat) => onPage(context, seat)));
  if (!box || allOf(context.document, 'seatBlock').length < 2) return [];
  const name = fitted(block.name, LONGEST_NAME, { ...ROW_TYPE, weight: 'bold' }, context.measure);
  if (name === '') return [];
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  const { x, y } = facingVector(block.facing);
  const ahead = { x, y: -y };
  const seat = Math.max(block.seatPitch * 0.42, Math.min(block.rowDepth * 0.26, 235)) / context.scale;
  const beside = (out: Vec2, aside = 0, clearances = NAME_CLEAR): TextPrimitive[] =>
    clearances.map((clear) =>
      textBeside(
        context,
        { name, weight: 'bold' },
        {
          from: { x: middle.x - out.y * aside * box.width, y: middle.y + out.x * aside * box.height },
          out,
          clear: (Math.abs(out.x) * box.width + Math.abs(out.y) * box.height) / 2 + seat + clear,
        },
      ),
    );
  // Upwards on the page first: there is more room beside a platform than before it.
  const asides = [90, -90].map((degrees) => turned(ahead, degrees)).sort((a, b) => a.y - b.y);
  const candidates = [
    ...[0, 0.25, -0.25].flatMap((aside) => beside(ahead, aside)),
    ...(Math.abs(ahead.y) > SQUARE ? [] : asides.flatMap((out) => beside(out, 0, ASIDE_CLEAR))),
    ...(breakLine ? [] : beside(turned(ahead, 180))),
  ];
  const onPlan = candidates.filter((text) => isOnPlan(context, text));
  return firstFree(onPlan, taken, { measure: context.measure, air: 0.4 });
}

const LONGEST_NAME = 70;
/** Between a block and its name, mm on paper. */
const NAME_CLEAR = [1.6, 1.05, 5, 8];
/** Beside a block: so far from the names of the rows that it does not seem to belong to one. */
const ASIDE_CLEAR = [9, 7, 12];
/** From here on a block looks up or down the page: a name beside it would hang far off in the margin. */
const SQUARE = 0.9;

interface Words {
  readonly name: string;
  readonly weight: 'regular' | 'bold';
}

interface Beside {
  readonly from: Vec2;
  /** A unit vector on the page. */
  readonly out: Vec2;
  /** From `from` to the nearest side of the text's box. */
  readonly clear: number;
}

function textBeside(
  context: PlanContext,
  { name, weight }: Words,
  { from, out, clear }: Beside,
): TextPrimitive {
  const [cap, width] = [CAP_HEIGHT * ROW_TYPE.size, context.measure(name, ROW_TYPE.size, weight)];
  const reach = clear + (Math.abs(out.x) * width) / 2 + (Math.abs(out.y) * cap) / 2;
  const at = { x: from.x + out.x * reach, y: from.y + out.y * reach + cap / 2 };
  return textLine(name, at, { ...ROW_TYPE, weight, colour: context.palette.faint });
}

function turned({ x, y }: Vec2, degrees: number): Vec2 {
  if (Math.abs(degrees) === 180) return { x: -x, y: -y };
  return degrees > 0 ? { x: -y, y: x } : { x: y, y: -x };
}

function isOnPlan({ area, measure }: PlanContext, text: TextPrimitive): boolean {
  return area === null || boxContains(area, textBox(text, measure));
}
