/** Balconies lie over the stalls; on a flat drawing they are drawn behind them instead. */

import { allOf, type Document } from '../../document/document.ts';
import { housePlaces } from '../../document/seating.ts';
import type { AnyRecord, Millimetres, Place, SeatBlock } from '../../document/records.ts';
import { t } from '../../words/say.ts';
import { boxesOverlap, boxOfPoints, grownBox, joinBoxes } from '../bounds.ts';
import type { Box } from '../primitives.ts';

/**
 * The document with every level of the house that would be drawn over a lower one moved away from the platform until
 * it is clear of it, and its blocks named so that the reader knows. Ids stay, so reports of the document still apply.
 */
export function levelsApart(document: Document): Document {
  const moved = new Map<string, AnyRecord>();
  let below: Box[] = [];
  for (const level of levelsOf(document)) {
    const boxes = boxesOf(document, level);
    const all = joinBoxes(boxes);
    const hidden = boxes.some((box) => below.some((other) => boxesOverlap(box, other)));
    const shift = hidden && all ? lowestOf(below) - GAP - (all.y + all.height) : 0;
    if (shift < 0) for (const record of level) moved.set(record.id, movedBy(record, shift));
    below = [...below, ...boxes.map((box) => ({ ...box, y: box.y + Math.min(0, shift) }))];
  }
  return moved.size === 0
    ? document
    : { records: new Map([...document.records].map(([id, record]) => [id, moved.get(id) ?? record])) };
}

/** Room for the name of the level, mm in the house. */
const GAP = 1300;
/** A storey; what rises less belongs to the same level. */
const STOREY = 2000;
const SEAT_HALF = 250;

type HouseRecord = SeatBlock | Place;

/** The blocks and single places, lowest floor first, cut where the floor jumps by a storey. */
function levelsOf(document: Document): HouseRecord[][] {
  const records: HouseRecord[] = [...allOf(document, 'seatBlock'), ...allOf(document, 'place')];
  const levels: HouseRecord[][] = [];
  let floor: Millimetres = -Infinity;
  for (const record of records.sort((a, b) => a.floor - b.floor)) {
    if (record.floor - floor >= STOREY || levels.length === 0) levels.push([]);
    levels.at(-1)?.push(record);
    floor = record.floor;
  }
  return levels;
}

function boxesOf(document: Document, level: readonly HouseRecord[]): Box[] {
  const ids = new Set<string>(level.map((record) => record.id));
  const spots = new Map<string, { x: number; y: number }[]>();
  for (const place of housePlaces(document)) {
    if (!ids.has(place.record)) continue;
    const known = spots.get(place.record);
    if (known) known.push(place);
    else spots.set(place.record, [place]);
  }
  return [...spots.values()].flatMap((points) => {
    const box = boxOfPoints(points);
    return box ? [grownBox(box, SEAT_HALF)] : [];
  });
}

function lowestOf(boxes: readonly Box[]): number {
  return boxes.reduce((lowest, box) => Math.min(lowest, box.y), Infinity);
}

function movedBy(record: HouseRecord, shift: Millimetres): HouseRecord {
  if (record.kind === 'place') return { ...record, y: record.y + shift };
  const name = t`${record.name || t`Upper level`} (above, drawn behind)`;
  return { ...record, y: record.y + shift, name };
}
