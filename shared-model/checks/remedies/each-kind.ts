/** The usual search: what can be lowered, moved or turned a little so that something is seen. */

import type { PlacedRecord } from '../../document/records.ts';
import type { Remedy } from '../finding.ts';
import type { Attempt } from './attempt.ts';
import { everyWay, lowerOne, moveOne, standsAmong, STRAIGHT, turnOne } from './ways.ts';
import type { Weight } from './weights.ts';

/** How far things are moved for a view, mm: music must stay before its reader, and a player at his stand. */
const FARTHEST: Readonly<Record<Weight, number>> = { light: 640, person: 480, bulky: 320 };
const COARSE = 80;

/** What may be changed, by its weight; asked only when it comes to that. */
export type Movables = (weight: Weight) => readonly PlacedRecord[];

/** The least lowering of a desk, move and turn of one thing, in this order. Nothing bulky is moved. */
export function remediesOfEachKind(movables: Movables, attempt: Attempt): Remedy[] {
  const stands = standsAmong(movables('light'));
  return [
    lowerOne(stands, attempt),
    moveOfWeight(movables, 'light', attempt) ?? moveOfWeight(movables, 'person', attempt),
    turnOne(stands, attempt),
  ].filter((remedy) => remedy !== null);
}

/** Straight ahead, back or to a side. */
export function moveOfWeight(movables: Movables, weight: Weight, attempt: Attempt): Remedy | null {
  const ways = everyWay(movables(weight), STRAIGHT);
  return moveOne(ways, { coarse: COARSE, most: FARTHEST[weight] }, attempt);
}
