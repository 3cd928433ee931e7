/** One setup's room, worked out once for all checks of it. */

import { inSetup, placedInSetup, platformOf, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Instrument, PlacedRecord, Platform, Point, Riser } from '../../document/records.ts';
import { boundsOf, type Bounds } from '../../geometry/polygon.ts';
import { boardsOf, solidsOf, type Board, type Solid } from './solids.ts';

/** A record with everything of it that takes up room. */
export interface Thing {
  readonly record: PlacedRecord;
  readonly solids: readonly Solid[];
  readonly boards: readonly Board[];
  /** Round all of it, on plan. */
  readonly bounds: Bounds;
}

export interface Room {
  readonly document: Document;
  readonly setup: Id<'setup'>;
  readonly platform: Platform;
  readonly things: readonly Thing[];
  readonly risers: readonly Riser[];
  readonly solids: readonly Solid[];
  readonly instruments: readonly Instrument[];
}

/** The same one for the same document: several checks ask for it one after another. */
export function roomOf(document: Document, setup: Id<'setup'>): Room {
  const known = ROOMS.get(document.records);
  if (known?.setup === setup) return known;
  const room = builtRoom(document, setup);
  ROOMS.set(document.records, room);
  return room;
}

const ROOMS = new WeakMap<Document['records'], Room>();

function builtRoom(document: Document, setup: Id<'setup'>): Room {
  const risers = inSetup(document, setup, 'riser');
  const things = placedInSetup(document, setup).map((record) => thingOf(record, risers));
  return {
    document,
    setup,
    risers,
    things,
    platform: platformOf(document),
    solids: things.flatMap(({ solids }) => solids),
    instruments: inSetup(document, setup, 'instrument'),
  };
}

/** A thing that has not changed, on levels that have not either, takes up the same room as in the document before. */
function thingOf(record: PlacedRecord, risers: readonly Riser[]): Thing {
  const known = THINGS.get(record);
  if (known && isSameList(known.risers, risers)) return known.thing;
  const thing = builtThing(record, risers);
  THINGS.set(record, { risers, thing });
  return thing;
}

const THINGS = new WeakMap<PlacedRecord, { readonly risers: readonly Riser[]; readonly thing: Thing }>();

function isSameList(a: readonly Riser[], b: readonly Riser[]): boolean {
  return a.length === b.length && a.every((riser, index) => riser === b[index]);
}

function builtThing(record: PlacedRecord, risers: readonly Riser[]): Thing {
  const [solids, boards] = [solidsOf(record, risers), boardsOf(record, risers)];
  const corners = [
    ...solids.flatMap(({ outline }) => outline),
    ...boards.flatMap((board): readonly Point[] => board.corners),
  ];
  return { record, solids, boards, bounds: boundsOf(corners) };
}
