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

export function roomOf(document: Document, setup: Id<'setup'>): Room {
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

function thingOf(record: PlacedRecord, risers: readonly Riser[]): Thing {
  const [solids, boards] = [solidsOf(record, risers), boardsOf(record, risers)];
  const corners = [
    ...solids.flatMap(({ outline }) => outline),
    ...boards.flatMap((board): readonly Point[] => board.corners),
  ];
  return { record, solids, boards, bounds: boundsOf(corners) };
}
