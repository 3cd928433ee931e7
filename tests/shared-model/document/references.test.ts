import { describe, expect, it } from 'vitest';
import { asId, type Id } from '#model/document/ids.ts';
import { referencesOf, withReferences } from '#model/document/references.ts';
import { PLACED_KINDS, type AnyRecord, type Kind } from '#model/document/records.ts';
import { documentOfEveryKind } from './every-kind.ts';
import { frozen } from './freeze.ts';

const RECORDS = [...frozen(documentOfEveryKind()).records.values()];

const other = <K extends Kind>(id: Id<K>): Id<K> => asId(`${id}-other`);

/** Every id-valued field in the JSON of a record, found without knowing what the fields mean. */
function idsIn(record: AnyRecord, known: ReadonlySet<string>): string[] {
  const found: string[] = [];
  const look = (value: unknown, key: string): void => {
    if (typeof value === 'string' && key !== 'id' && key !== 'kind' && key !== 'name' && known.has(value))
      found.push(value);
    if (typeof value === 'object' && value !== null)
      for (const [name, inner] of Object.entries(value)) look(inner, name);
  };
  look(record, '');
  return found.sort();
}

describe('references', () => {
  it('are all found: no other field of any record holds the id of another', () => {
    const known = new Set(RECORDS.map(({ id }) => id as string));
    for (const record of RECORDS) {
      expect(
        referencesOf(record)
          .map(({ id }) => id)
          .sort(),
        record.id,
      ).toEqual(idsIn(record, known));
    }
    expect(new Set(RECORDS.flatMap(referencesOf).flatMap(({ kinds }) => kinds))).toEqual(
      new Set([...PLACED_KINDS, 'setup', 'score', 'door', 'storage']),
    );
  });

  it('are all renamed, and nothing else is touched', () => {
    for (const record of RECORDS) {
      const renamed = withReferences(record, other);
      if (!renamed) throw new Error(record.id);
      expect(referencesOf(renamed).map(({ id }) => id)).toEqual(
        referencesOf(record).map(({ id }) => `${id}-other`),
      );
      const back = withReferences(renamed, <K extends Kind>(id: Id<K>) => asId<K>(id.replace(/-other$/, '')));
      expect(back).toEqual(record);
    }
  });

  it('that stay leave the record itself', () => {
    for (const record of RECORDS) expect(withReferences(record, (id) => id)).toBe(record);
  });

  it('that are let go leave a record without them, or none where they are needed', () => {
    for (const record of RECORDS) {
      const names = referencesOf(record).map(({ field }) => field);
      const left = withReferences(record, (id) => (id.startsWith('setup') ? id : null));
      if (['instrument', 'pagePlan', 'group'].includes(record.kind)) expect(left).toBeNull();
      else
        expect(left && referencesOf(left).map(({ field }) => field)).toEqual(
          names.filter((name) => name === 'setup' || name === 'variantOf'),
        );
      const homeless = withReferences(record, () => null);
      const isNothingAlone = record.kind === 'instrument' || record.kind === 'group';
      expect(homeless === null, record.id).toBe(names.includes('setup') || isNothingAlone);
    }
  });

  it('that a page plan loses take with them only what hangs on them', () => {
    const plan = RECORDS.find((record) => record.kind === 'pagePlan');
    if (!plan) throw new Error('no page plan');
    const without = (gone: string) => withReferences(plan, (id) => (id === gone ? null : id));
    expect(without('player-2')).toEqual({ ...plan, turns: [], pins: plan.pins.slice(0, 1) });
    expect(without('stand-1')).toEqual({ ...plan, stations: [], turns: [], pins: [] });
    expect(without('score-1')).toBeNull();
  });
});
