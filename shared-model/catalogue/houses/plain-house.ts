/** A house from five numbers: a plain platform before plain rows on a flat floor, to be changed afterwards. */

import type { Millimetres } from '../../document/records.ts';
import { HOUSE_PRACTICE, type VenueModel } from './model.ts';
import { door, platform, rectangularPlatform, seats } from './parts.ts';

export interface PlainHouse {
  readonly width: Millimetres;
  readonly depth: Millimetres;
  /** Of the platform above the floor of the house. */
  readonly height: Millimetres;
  readonly rows: number;
  readonly seatsPerRow: number;
}

/** From the platform to the first row. */
const FIRST_ROW: Millimetres = 2000;
const DOOR: Millimetres = 1200;

/**
 * A drop is open at the front and the sides, which asks for more caution rather than less; the way off is in the middle
 * of the back, free of steps only where the platform has no height. Without rows or seats there are none.
 */
export function plainHouse({ width, depth, height, rows, seatsPerRow }: PlainHouse): VenueModel {
  const count = rows * seatsPerRow;
  const wide = Math.min(DOOR, width / 2);
  const exit = { edge: 2, offset: (width - wide) / 2, width: wide, stepFree: height === 0 };
  return {
    id: 'plain-house',
    name: '',
    summary: '',
    seats: count,
    source: HOUSE_PRACTICE,
    records: () => [
      platform(rectangularPlatform(width, depth), height, height > 0 ? [0, 1, 3] : []),
      door('door-1', '', exit),
      ...(count > 0 ? [seats('seats', '', { rows, seatsPerRow, y: -FIRST_ROW })] : []),
    ],
  };
}
