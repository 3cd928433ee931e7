/** Which two things may take up the same room: what stands on, leans over or reaches between the other. */

import type { PlacedRecord } from '../../document/records.ts';
import type { Solid } from './solids.ts';

/** Whether the two records never run into each other, wherever they are. */
export function mayShareRoom(a: PlacedRecord, b: PlacedRecord): boolean {
  return a.id === b.id || oneWay(a, b) || oneWay(b, a);
}

/** Whether these parts of two records go together, though their records may run into each other elsewhere. */
export function partsMayShareRoom(a: Solid, b: Solid): boolean {
  return legsGoBetween(a, b) || legsGoBetween(b, a) || shouldersOver(a, b) || shouldersOver(b, a);
}

function oneWay(a: PlacedRecord, b: PlacedRecord): boolean {
  return (
    plays(a, b) ||
    (isTableTop(a) && isFurniture(b)) ||
    // A lamp is clipped to a stand. All others stand on the floor, so not in a table or an instrument.
    (a.kind === 'lamp' && b.kind === 'stand') ||
    (isBuilding(a) && isBuilding(b))
  );
}

/** A player leans over what he plays. */
function plays(a: PlacedRecord, b: PlacedRecord): boolean {
  return a.kind === 'player' && (b.kind === 'piano' || b.kind === 'largeInstrument') && b.player === a.id;
}

function isTableTop(record: PlacedRecord): boolean {
  return record.kind === 'stand' && record.model === 'table-top';
}

function isFurniture(record: PlacedRecord): boolean {
  return record.kind === 'table' || record.kind === 'piano' || record.kind === 'largeInstrument';
}

function isBuilding(record: PlacedRecord): boolean {
  return record.kind === 'shape' && record.fixed;
}

/** Spread legs are in the way only of what is solid down to the floor. */
function legsGoBetween(a: Solid, b: Solid): boolean {
  const { kind } = b.record;
  const isSolid = kind === 'shape' || kind === 'riser' || kind === 'piano' || kind === 'largeInstrument';
  return a.part === 'foot' && !isSolid;
}

/** Who stands beside a level has his shoulders over it. */
function shouldersOver(a: Solid, b: Solid): boolean {
  return a.part === 'body' && b.record.kind === 'riser';
}
