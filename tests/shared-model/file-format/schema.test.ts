import type * as v from 'valibot';
import { describe, expect, expectTypeOf, it } from 'vitest';
import type { Kind, RecordOf } from '#model/document/records.ts';
import { fieldTitle, isKind, KINDS, type RECORD_SCHEMAS } from '#model/file-format/schema.ts';
import { unknownModel } from '#model/file-format/models.ts';
import { documentOfEveryKind } from '../document/every-kind.ts';

/** The same type with every field and list written out and read-only, so that two can be compared. */
type Plain<T> = T extends string ? T : T extends object ? { readonly [Key in keyof T]: Plain<T[Key]> } : T;

type Read<K extends Kind> = Plain<v.InferOutput<(typeof RECORD_SCHEMAS)[K]>>;

describe('the schemas', () => {
  it('give exactly the records of the document, checked by the compiler', () => {
    expectTypeOf<{ [K in Kind]: Read<K> }>().toEqualTypeOf<{ [K in Kind]: Plain<RecordOf<K>> }>();
  });

  it('know the kinds and nothing that only looks like one', () => {
    expect(KINDS.every(isKind)).toBe(true);
    for (const other of ['toString', '__proto__', 'constructor', 'Stand', '', null, 3])
      expect(isKind(other)).toBe(false);
  });

  it('name fields for people', () => {
    expect(fieldTitle('stand', 'lip')).toBe('Lip');
    expect(fieldTitle('stand', 'deskWidth')).toBe('Desk width');
    expect(fieldTitle('concert', 'headsInFront')).toBe('Heads in front');
    expect(fieldTitle('stand', 'toString')).toBe('toString');
    for (const record of documentOfEveryKind().records.values()) {
      for (const name of Object.keys(record)) {
        expect(fieldTitle(record.kind, name), `${record.kind}.${name}`).toMatch(/^[A-Z].*|^[xy]$/);
      }
    }
  });

  it('find models that the catalogue does not have', () => {
    for (const record of documentOfEveryKind().records.values()) expect(unknownModel(record)).toBeNull();
  });
});
