/** The fields of a record all the way down, as its schema has them. */

import type * as v from 'valibot';
import type { Kind } from '../document/records.ts';
import { RECORD_SCHEMAS } from './schema.ts';

/** Schemas by path: "lip", "sides[].pagesAcross"; "[]" stands for every entry of a list. */
export type FieldTree = ReadonlyMap<string, readonly v.GenericSchema[]>;

const trees = new Map<Kind, FieldTree>();

export function fieldTree(kind: Kind): FieldTree {
  const known = trees.get(kind);
  if (known) return known;
  const found = new Map<string, v.GenericSchema[]>();
  collect(RECORD_SCHEMAS[kind] as unknown as AnySchema, '', found);
  trees.set(kind, found);
  return found;
}

/** "sides[1].pagesAcross" as "sides[].pagesAcross". */
export function patternOf(path: string): string {
  return path.replace(/\[\d+\]/g, '[]');
}

/** What the library's schemas hold of others, by its documentation. */
interface AnySchema extends v.GenericSchema {
  readonly entries?: Readonly<Record<string, AnySchema>>;
  readonly item?: AnySchema;
  readonly wrapped?: AnySchema;
  readonly options?: readonly (AnySchema | string | number)[];
}

function collect(schema: AnySchema, path: string, found: Map<string, v.GenericSchema[]>): void {
  if (path !== '') found.set(path, [...(found.get(path) ?? []), schema]);
  for (const [name, entry] of Object.entries(schema.entries ?? {}))
    collect(entry, path === '' ? name : `${path}.${name}`, found);
  if (schema.item) collect(schema.item, `${path}[]`, found);
  if (schema.wrapped) collect(schema.wrapped, path, found);
  for (const option of schema.options ?? []) if (typeof option === 'object') collect(option, path, found);
}
