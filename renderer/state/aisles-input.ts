/** Reads aisles as people type them: after which seat, and how wide: "9 : 1100, 18 : 1.2 m". */

import type { Units } from '#model/document/measures.ts';
import type { SeatBlock } from '#model/document/records.ts';
import { readLength } from './length-input.ts';

type Aisles = SeatBlock['aisles'];

/** A comma may also part a width's decimals: one that begins the next aisle stands before a seat and a colon. */
const NEXT = /,(?=\s*\d+\s*:)/;

/** Null: not to be read. */
export function readAisles(typed: string, units: Units): Aisles | null {
  if (typed.trim() === '') return [];
  const read = typed.split(NEXT).map((part) => readAisle(part, units));
  return read.includes(null) ? null : read.filter((aisle) => aisle !== null);
}

function readAisle(typed: string, units: Units): Aisles[number] | null {
  const [, seat, typedWidth = ''] = /^\s*(\d{1,4})\s*:\s*(.+)$/.exec(typed) ?? [];
  const width = readLength(typedWidth, units);
  return seat !== undefined && width.ok ? { afterSeat: Number(seat), width: width.millimetres } : null;
}
