/** Of which things more wait at a place than the two setups of a changeover take, so that one can surely be fetched there. */

import type { Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import type { Storage } from '../document/records.ts';
import { isCountedIn, stockRowsFor } from './storing.ts';
import { stayingUnits, unitsOf, type Unit } from './units.ts';

/**
 * How many of a thing a place holds whatever stands on the platform: what the stock counts there, less the most that
 * either setup takes, as if all of that had come from there. 0 where nobody counted, or where the count does not tell
 * which of several sizes wait. What an earlier changeover took from one place to another is not followed.
 */
export function sparesBetween(
  document: Document,
  setups: readonly (Id<'setup'> | null)[],
): (unit: Unit, storage: Storage | null) => number {
  const standing = setups.flatMap((setup) =>
    setup === null ? [] : [[...unitsOf(document, setup), ...stayingUnits(document, setup)]],
  );
  const known = new Map<string, number>();
  return (unit, storage) => {
    if (!storage) return 0;
    const key = `${storage.id} ${unit.key}`;
    const count = known.get(key) ?? spareAt(document, { unit, storage, standing });
    known.set(key, count);
    return count;
  };
}

interface Asked {
  readonly unit: Unit;
  readonly storage: Storage;
  /** By setup. */
  readonly standing: readonly (readonly Unit[])[];
}

function spareAt(document: Document, { unit, storage, standing }: Asked): number {
  const rows = stockRowsFor(document, unit.thing);
  const drawn = standing.map((units) => units.filter(({ thing }) => isCountedIn(rows, thing)));
  if (drawn.flat().some(({ key }) => key !== unit.key)) return 0;
  const there = rows.filter((row) => row.storage === storage.id);
  const held = there.reduce((sum, { owned, borrowed }) => sum + owned + borrowed, 0);
  const taken = drawn.reduce((most, { length }) => Math.max(most, length), 0);
  return Math.max(0, held - taken);
}
