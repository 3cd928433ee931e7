/** Which concerts are too large to be drawn in the window itself, between one frame and the next. */

import { allOf, placedInSetup, type Document } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import { seatsInRow } from '#model/document/seating.ts';

/** Drawing and painting a place takes about 30 microseconds on a slow machine. */
const MOST_PLACES = 800;
/** Finding room for the label of one among so many takes about a millisecond. */
const MOST_ITEMS = 60;

export function isLarge(document: Document, setup: Id<'setup'>): boolean {
  return countPlaces(document) > MOST_PLACES || placedInSetup(document, setup).length > MOST_ITEMS;
}

function countPlaces(document: Document): number {
  let places = allOf(document, 'place').length;
  for (const block of allOf(document, 'seatBlock')) {
    for (let row = 0; row < block.rows; row++) places += seatsInRow(block, row);
  }
  return places;
}
