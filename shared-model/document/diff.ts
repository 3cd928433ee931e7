/** A change as a value: every record it touches, before and after. Reversing it is swapping the two. */

import type { Document } from './document.ts';
import type { AnyRecord } from './records.ts';

export interface Change {
  readonly before: AnyRecord | null;
  readonly after: AnyRecord | null;
}

export type Diff = ReadonlyMap<string, Change>;

/** Whether two records say the same, whatever the order of their fields. */
export function sameRecord(a: AnyRecord, b: AnyRecord): boolean {
  return sameValue(a, b);
}

function sameValue(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  const [keysOfA, keysOfB] = [Object.keys(a), Object.keys(b)];
  return (
    keysOfA.length === keysOfB.length &&
    keysOfA.every((key) => sameValue((a as Fields)[key], (b as Fields)[key]))
  );
}

type Fields = Readonly<Record<string, unknown>>;

export function applyDiff(document: Document, diff: Diff): Document {
  const records = new Map(document.records);
  for (const [id, change] of diff) {
    if (change.after) records.set(id, change.after);
    else records.delete(id);
  }
  return { records };
}

export function invertDiff(diff: Diff): Diff {
  return new Map([...diff].map(([id, { before, after }]) => [id, { before: after, after: before }]));
}

/** One diff that does what `first` and then `second` do. */
export function composeDiffs(first: Diff, second: Diff): Diff {
  const composed = new Map(first);
  for (const [id, change] of second) {
    const earlier = first.get(id);
    composed.set(id, { before: earlier ? earlier.before : change.before, after: change.after });
  }
  return composed;
}
