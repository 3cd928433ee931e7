/** Who reads where: every desk with paper that a player of the setup reads from. */

import { desksOf, type Desk, type Rectangle3 } from '../../document/desks.ts';
import { belongsTo, find, inSetup, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { floorHeightAt } from '../../document/levels.ts';
import { printedStaff } from '../../document/parts.ts';
import type { Player, Stand } from '../../document/records.ts';
import type { Vec3 } from '../../geometry/frame.ts';
import { between } from './vectors.ts';

export interface ReadingPlace {
  readonly reader: Player;
  readonly stand: Stand;
  readonly desk: Desk;
  /** The whole row of pages. */
  readonly paper: Rectangle3;
}

/** In the order of the stands' ids. A reader who is not in the setup reads nothing there. */
export function readingPlaces(document: Document, setup: Id<'setup'>): ReadingPlace[] {
  return inSetup(document, setup, 'stand').flatMap((stand) => placesAt(document, setup, stand));
}

/** The places of one stand, which need not be as it is in the document. */
export function placesAt(document: Document, setup: Id<'setup'>, stand: Stand): ReadingPlace[] {
  return desksOf(stand, floorHeightAt(document, setup, stand)).flatMap((desk) => {
    const reader = find(document, desk.side.reader);
    if (!reader || !belongsTo(reader, setup) || desk.paper === null) return [];
    // What is typed at the stand goes before what the part says.
    const staffSize = desk.side.staffSize ?? printedStaff(document, setup, reader.id);
    return [{ reader, stand, desk: { ...desk, side: { ...desk.side, staffSize } }, paper: desk.paper }];
  });
}

export function middleOf([lipLeft, , topRight]: Rectangle3): Vec3 {
  return between(lipLeft, topRight, 0.5);
}
