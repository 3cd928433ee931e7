/** What has to hold within one record beyond the type and range of its fields. */

import { WHEELCHAIR } from '../catalogue/seats.ts';
import { isSimplePolygon } from '../geometry/simple-polygon.ts';
import { seatsInRow } from '../document/seating.ts';
import type {
  AnyRecord,
  Concert,
  Lamp,
  Platform,
  Player,
  Point,
  SeatBlock,
  Setup,
  Stand,
  Underlay,
} from '../document/records.ts';
import { notAllowed, toldAs, type Complaint } from './complaint.ts';
import { pagePlanBroken } from './page-plan-rules.ts';
import { scoreBroken } from './score-rules.ts';
import { t } from '../words/say.ts';

/** The first rule the record breaks, or null. */
export function ruleBroken(record: AnyRecord): Complaint | null {
  switch (record.kind) {
    case 'concert':
      return dateBroken(record);
    case 'setup':
      return pairsBroken(record);
    case 'platform':
      return outlineBroken(record.outline) ?? openEdgesBroken(record);
    case 'shape':
      return outlineBroken(record.outline);
    case 'seatBlock':
      return seatsPerRowBroken(record) ?? aislesBroken(record) ?? curveBroken(record);
    case 'stand':
      return sidesBroken(record);
    case 'lamp':
      return cableBroken(record);
    case 'player':
      return mobilityBroken(record);
    case 'score':
      return scoreBroken(record);
    case 'pagePlan':
      return pagePlanBroken(record);
    case 'underlay':
      return linesBroken(record);
    default:
      return null;
  }
}

function dateBroken({ date }: Concert): Complaint | null {
  return date === '' || isCalendarDate(date)
    ? null
    : notAllowed('date', date, t`give a day that the calendar has`);
}

/** Of a text that looks like YYYY-MM-DD. */
function isCalendarDate(date: string): boolean {
  const [year = 0, month = 0, day = 0] = date.split('-').map(Number);
  const isLeap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const days = [31, isLeap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 0;
  return day >= 1 && day <= days;
}

function pairsBroken({ needNotSee }: Setup): Complaint | null {
  const seen = new Set<string>();
  for (const [index, [a, b]] of needNotSee.entries()) {
    const field = `needNotSee[${index}]`;
    if (a === b) return notAllowed(field, [a, b], t`name two different players`);
    const pair = [a, b].sort().join(' ');
    if (seen.has(pair)) return notAllowed(field, [a, b], t`name each pair once`);
    seen.add(pair);
  }
  return null;
}

function outlineBroken(outline: readonly Point[]): Complaint | null {
  if (isSimplePolygon(outline)) return null;
  return {
    field: 'outline',
    text: t` crosses or touches itself, repeats a corner or has no area; give its corners in order, each once`,
  };
}

function openEdgesBroken({ outline, openEdges }: Platform): Complaint | null {
  const seen = new Set<number>();
  for (const [index, edge] of openEdges.entries()) {
    const field = `openEdges[${index}]`;
    if (edge >= outline.length) {
      return notAllowed(
        field,
        edge,
        t`the outline has ${outline.length} edges, from 0 to ${outline.length - 1}`,
      );
    }
    if (seen.has(edge)) return notAllowed(field, edge, t`name each edge once`);
    seen.add(edge);
  }
  return null;
}

function seatsPerRowBroken({ rows, seatsPerRow }: SeatBlock): Complaint | null {
  if (typeof seatsPerRow === 'number' || seatsPerRow.length === rows) return null;
  return {
    field: 'seatsPerRow',
    text: t` names ${seatsPerRow.length} rows but "rows" is ${rows}; give one number for each row`,
    ...toldAs(() => rowsTold(seatsPerRow.length, rows)),
  };
}

function rowsTold(named: number, rows: number): string {
  return t`: there are numbers for ${named} rows, and the block has ${rows}; give one number for each row, or one for all`;
}

function aislesBroken(block: SeatBlock): Complaint | null {
  const longest = longestRow(block);
  const seen = new Set<number>();
  for (const [index, { afterSeat }] of block.aisles.entries()) {
    const field = `aisles[${index}].afterSeat`;
    if (afterSeat >= longest) {
      return notAllowed(field, afterSeat, t`an aisle lies between seats, and the longest row has ${longest}`);
    }
    if (seen.has(afterSeat)) return notAllowed(field, afterSeat, t`give each aisle its own place`);
    seen.add(afterSeat);
  }
  return null;
}

/** A curved row may not be longer than its circle. */
function curveBroken(block: SeatBlock): Complaint | null {
  if (block.curveRadius === 0) return null;
  const aisles = block.aisles.reduce((sum, aisle) => sum + aisle.width, 0);
  for (let row = 0; row < block.rows; row++) {
    const around = 2 * Math.PI * (block.curveRadius + row * block.rowDepth);
    if (seatsInRow(block, row) * block.seatPitch + aisles <= around) continue;
    return notAllowed(
      'curveRadius',
      block.curveRadius,
      t`the rows would run into themselves; give a larger radius`,
    );
  }
  return null;
}

function longestRow(block: SeatBlock): number {
  let longest = 0;
  for (let row = 0; row < block.rows; row++) longest = Math.max(longest, seatsInRow(block, row));
  return longest;
}

function sidesBroken({ form, sides }: Stand): Complaint | null {
  const wanted = form === 'single' ? 1 : 2;
  if (sides.length === wanted) return null;
  return { field: 'sides', text: t` has ${sides.length} but the form is "${form}"; give ${wanted}` };
}

function mobilityBroken({ chair, mobility }: Player): Complaint | null {
  if (mobility === 'wheelchair' || chair?.model !== WHEELCHAIR.id) return null;
  const complaint = notAllowed('mobility', mobility, t`who sits in a wheelchair uses it; give "wheelchair"`);
  return {
    ...complaint,
    ...toldAs(() => t`: who sits in a wheelchair comes in it, too; choose another seat first`),
  };
}

function linesBroken({ content }: Underlay): Complaint | null {
  if (content.type === 'picture') return null;
  const odd = content.lines.findIndex((numbers) => numbers.length % 2 === 1);
  if (odd < 0) return null;
  return {
    field: `content.lines[${odd}]`,
    text: t` has a single number at its end; give x and y of each point`,
  };
}

function cableBroken({ cable }: Lamp): Complaint | null {
  if (cable.length !== 1) return null;
  return { field: 'cable', text: t` has one corner; give at least the two ends, or none for no cable` };
}
