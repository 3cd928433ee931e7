/** Ids for new records: `stand-4` when the highest stand so far is `stand-3`. */

import type { Document } from '../document/document.ts';
import { asId, type Id } from '../document/ids.ts';
import type { Kind } from '../document/records.ts';

export function freshId<K extends Kind>(document: Document, kind: K): Id<K> {
  return freshIds(document)(kind);
}

/** Gives ids one after another, each only once and none of the `reserved` ones. */
export function freshIds(
  document: Document,
  reserved: readonly string[] = [],
): <K extends Kind>(kind: K) => Id<K> {
  const given = new Set(reserved);
  const highest = new Map<Kind, number>();
  return (kind) => {
    let number = highest.get(kind) ?? highestNumber(document, kind);
    let id: string;
    do id = `${kind}-${++number}`;
    while (document.records.has(id) || given.has(id));
    highest.set(kind, number);
    given.add(id);
    return asId(id);
  };
}

/** Numbers beyond this were typed by hand and are not counted on from. */
const LAST_COUNTED = 1_000_000;

function highestNumber(document: Document, kind: Kind): number {
  const start = `${kind}-`;
  let highest = 0;
  for (const id of document.records.keys()) {
    if (!id.startsWith(start) || !/^\d{1,7}$/.test(id.slice(start.length))) continue;
    const number = Number(id.slice(start.length));
    if (number <= LAST_COUNTED) highest = Math.max(highest, number);
  }
  return highest;
}
