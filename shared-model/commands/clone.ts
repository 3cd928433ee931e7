/** Copies of records under fresh ids, with what they name led to the copies. */

import type { Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import { withReferences } from '../document/references.ts';
import type { AnyRecord, Kind } from '../document/records.ts';
import { freshIds } from './fresh-id.ts';

/** What a copy names instead of an id that was not copied along; null lets go of it. */
export type Outside = <K extends Kind>(id: Id<K>) => Id<K> | null;

export interface Copies {
  readonly records: readonly AnyRecord[];
  /** From the id of an original to that of its copy. */
  readonly ids: ReadonlyMap<string, string>;
}

/** A record whose copy could not be without what it lets go of is left out. */
export function copiesOf(document: Document, originals: readonly AnyRecord[], outside: Outside): Copies {
  const fresh = freshIds(document);
  const ids = new Map(originals.map(({ id, kind }) => [id as string, fresh(kind) as string]));
  const rename: Outside = <K extends Kind>(id: Id<K>) => (ids.get(id) as Id<K> | undefined) ?? outside(id);
  const records: AnyRecord[] = [];
  for (const original of originals) {
    const copy = withReferences(original, rename);
    const id = ids.get(original.id);
    if (copy && id !== undefined) records.push({ ...copy, id } as AnyRecord);
  }
  return { records, ids };
}
