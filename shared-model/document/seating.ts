/** Where every seat of a block is: rows straight or curved, with aisles, stagger and rake. */

import { facingVector, type Vec2 } from '../geometry/frame.ts';
import { allOf, platformOf, type Document } from './document.ts';
import type { Place, SeatBlock } from './records.ts';
import { t } from '../words/say.ts';

export interface HousePlace {
  /** `block/A-12`, or the id of a single place. */
  readonly id: string;
  readonly record: string;
  readonly label: string;
  /** Index of the row from the front of its block; 0 for a single place. */
  readonly row: number;
  readonly x: number;
  readonly y: number;
  /** Floor and eye heights in the stage frame. */
  readonly floorZ: number;
  readonly eyeZ: number;
  readonly facing: number;
}

/** Every place of the house, block by block, front row first, seats from the sitter's left. */
export function housePlaces(document: Document): HousePlace[] {
  const houseFloor = -platformOf(document).height;
  const blocks = allOf(document, 'seatBlock');
  const ambiguous = withSharedRows(blocks);
  const places = blocks.flatMap((block, index) => {
    const own = placesOfBlock(block, houseFloor);
    return ambiguous.has(block) ? namedByBlock(block, own, index + 1) : own;
  });
  for (const place of allOf(document, 'place')) places.push(singlePlace(place, houseFloor));
  return places;
}

/** The list of a document's blocks is made once, and asked about for every frame of a drag. */
const shared = new WeakMap<readonly SeatBlock[], ReadonlySet<SeatBlock>>();

/** Where another block has a row A, too, "A 6" is two places. */
function withSharedRows(blocks: readonly SeatBlock[]): ReadonlySet<SeatBlock> {
  const before = shared.get(blocks);
  if (before) return before;
  const counts = new Map<string, number>();
  for (const block of blocks)
    for (const name of rowNames(block)) counts.set(name, (counts.get(name) ?? 0) + 1);
  const found = new Set(
    blocks.filter((block) => rowNames(block).some((name) => (counts.get(name) ?? 0) > 1)),
  );
  shared.set(blocks, found);
  return found;
}

function rowNames({ firstRow, rows }: SeatBlock): string[] {
  return Array.from({ length: rows }, (_, row) => rowName(firstRow, row));
}

/** "A 6 (Stalls)". */
const named = new WeakMap<readonly HousePlace[], { readonly name: string; readonly places: HousePlace[] }>();

function namedByBlock(block: SeatBlock, own: readonly HousePlace[], number: number): readonly HousePlace[] {
  const name = block.name || `${t`seat block`} ${number}`;
  const before = named.get(own);
  if (before?.name === name) return before.places;
  const places = own.map((place) => ({ ...place, label: `${place.label} (${name})` }));
  named.set(own, { name, places });
  return places;
}

export function seatsInRow(block: SeatBlock, row: number): number {
  if (typeof block.seatsPerRow === 'number') return block.seatsPerRow;
  return block.seatsPerRow[row] ?? 0;
}

/** A, B, ... Z, AA, AB, ...; or 1, 2, ... when the first row is a number. */
export function rowName(firstRow: string, row: number): string {
  if (/^\d{1,6}$/.test(firstRow)) return String(Number(firstRow) + row);
  return lettersOf(numberOfLetters(firstRow) + row);
}

function singlePlace(place: Place, houseFloor: number): HousePlace {
  const floorZ = houseFloor + place.floor;
  return {
    id: place.id,
    record: place.id,
    label: place.name || place.id,
    row: 0,
    x: place.x,
    y: place.y,
    floorZ,
    eyeZ: floorZ + place.eyeHeight,
    facing: 180,
  };
}

/** Blocks change seldom and are asked about for every frame of a drag; records are immutable. */
const known = new WeakMap<
  SeatBlock,
  { readonly houseFloor: number; readonly places: readonly HousePlace[] }
>();

function placesOfBlock(block: SeatBlock, houseFloor: number): readonly HousePlace[] {
  const before = known.get(block);
  if (before?.houseFloor === houseFloor) return before.places;
  const places = placesInRows(block, houseFloor);
  known.set(block, { houseFloor, places });
  return places;
}

function placesInRows(block: SeatBlock, houseFloor: number): HousePlace[] {
  const places: HousePlace[] = [];
  for (let row = 0; row < block.rows; row++) {
    const name = rowName(block.firstRow, row);
    const floorZ = houseFloor + block.floor + row * block.riser;
    offsetsInRow(block, row).forEach((offset, index) => {
      places.push({
        id: `${block.id}/${name}-${index + 1}`,
        record: block.id,
        label: `${name} ${index + 1}`,
        row,
        floorZ,
        eyeZ: floorZ + block.eyeHeight,
        ...spotInRow(block, row, offset),
      });
    });
  }
  return places;
}

/** Signed distances of a row's seats from its middle, growing towards the sitter's right. */
function offsetsInRow(block: SeatBlock, row: number): number[] {
  const count = seatsInRow(block, row);
  const offsets: number[] = [];
  let at = 0;
  for (let seat = 0; seat < count; seat++) {
    for (const aisle of block.aisles) if (seat > 0 && aisle.afterSeat === seat) at += aisle.width;
    offsets.push(at);
    at += block.seatPitch;
  }
  const middle = (offsets.at(-1) ?? 0) / 2;
  const shift = block.staggered && row % 2 === 1 ? block.seatPitch / 2 : 0;
  return offsets.map((offset) => offset - middle + shift);
}

function spotInRow(block: SeatBlock, row: number, offset: number): Vec2 & { readonly facing: number } {
  const ahead = facingVector(block.facing);
  const back = row * block.rowDepth;
  if (block.curveRadius === 0) {
    // The sitter's right hand, looking along `ahead`.
    const right = { x: ahead.y, y: -ahead.x };
    return {
      x: block.x - ahead.x * back + right.x * offset,
      y: block.y - ahead.y * back + right.y * offset,
      facing: block.facing,
    };
  }
  const radius = block.curveRadius + back;
  const turned = offset / radius;
  const facing = block.facing + (turned * 180) / Math.PI;
  const look = facingVector(facing);
  return {
    x: block.x + ahead.x * block.curveRadius - look.x * radius,
    y: block.y + ahead.y * block.curveRadius - look.y * radius,
    facing,
  };
}

function numberOfLetters(letters: string): number {
  let number = 0;
  for (const letter of letters.toUpperCase()) {
    const digit = letter.charCodeAt(0) - 64;
    if (digit >= 1 && digit <= 26) number = number * 26 + digit;
  }
  return Math.max(0, number - 1);
}

function lettersOf(index: number): string {
  let letters = '';
  for (let rest = index + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return letters;
}
