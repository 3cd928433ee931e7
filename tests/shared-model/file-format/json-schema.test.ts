import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import type { AnyRecord, Stand } from '#model/document/records.ts';
import { fileJsonSchema } from '#model/file-format/json-schema.ts';
import { KINDS, schemaOf } from '#model/file-format/schema.ts';
import { documentOfEveryKind } from '../document/every-kind.ts';
import { schemaAcceptsRecord } from './validator.ts';

const PUBLISHED = new URL('../../../shared-model/file-format/standlines.schema.json', import.meta.url);

interface Schema {
  readonly title?: string;
  readonly description?: string;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly items?: Schema;
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
  readonly $defs?: Readonly<Record<string, Schema>>;
}

/** Every named field anywhere in the schema, with its path. */
function fieldsOf(schema: Schema, path: string): [string, Schema][] {
  const named = Object.entries(schema.properties ?? {}).map(([name, inner]): [string, Schema] => [
    `${path}.${name}`,
    inner,
  ]);
  const deeper: [string, Schema][] = [
    ...named,
    ...Object.entries(schema.$defs ?? {}),
    ...[schema.items, ...(schema.anyOf ?? []), ...(schema.oneOf ?? [])].flatMap(
      (inner): [string, Schema][] => (inner ? [[path, inner]] : []),
    ),
  ];
  return [...named, ...deeper.flatMap(([where, inner]) => fieldsOf(inner, where))];
}

describe('the published JSON Schema', () => {
  it('is the one that is made from the reader’s own schemas', () => {
    // To renew it: npm run -s standlines -- schema > shared-model/file-format/standlines.schema.json
    expect(JSON.parse(readFileSync(PUBLISHED, 'utf8'))).toEqual(JSON.parse(JSON.stringify(fileJsonSchema())));
  });

  it('has a title and a description for every field', () => {
    const fields = fieldsOf(fileJsonSchema() as Schema, 'file');
    expect(fields.length).toBeGreaterThan(150);
    for (const [path, { title, description }] of fields) {
      expect(title, path).toMatch(/\S/);
      expect(description, path).toMatch(/\S.*\.$/);
    }
  });

  it('says the unit of every length', () => {
    const lengths =
      /(?:^|\.)(?:x|y|\w*[wW]idth|\w*[hH]eight|\w*Length|depth|lip|shoes|stature|floor|riser|offset|\w*Pitch|\w*Depth|\w*Distance|\w*Radius)$/;
    for (const [path, { description }] of fieldsOf(fileJsonSchema() as Schema, 'file')) {
      // An underlay has units of its own.
      if (lengths.test(path) && !path.startsWith('underlay.content'))
        expect(description, path).toMatch(/millimetres/i);
    }
  });

  it('describes every kind of record', () => {
    expect(Object.keys(fileJsonSchema().$defs ?? {})).toEqual(KINDS);
  });
});

const ODD_VALUES: readonly unknown[] = [
  ...[
    null,
    true,
    false,
    '',
    'a',
    'ä',
    'a b',
    '3',
    'A',
    'AAA',
    '999',
    '2027-01-01',
    'a\nb',
    'a\tb',
    '\ud800',
    '\udc00a',
  ],
  ...[
    '😀'.repeat(150),
    '😀'.repeat(200),
    '😀'.repeat(201),
    'x'.repeat(4000),
    'x'.repeat(4001),
    's'.repeat(64),
    's'.repeat(65),
  ],
  ...[
    -1e9, -360, -361, -1, -0.5, 0, 0.5, 1, 2, 3, 4, 10, 99, 100, 199.9, 200, 500, 1500, 2500.5, 1e6, 1e7,
    1e300,
  ],
  ...[
    [],
    [1],
    [1, 2, 3],
    [0.5],
    [-1],
    ['a'],
    {},
    { x: 0, y: 0 },
    { by: 'anyone' },
    { by: 'stature', stature: 1700 },
  ],
  ...[
    [{ x: 0, y: 0 }],
    [{}],
    [{}, {}],
    [{}, {}, {}],
    Array(501).fill(1),
    'player',
    'single',
    'backToBack',
    'full',
  ],
];

/** Every place in a JSON value, as a list of keys. */
function placesIn(value: unknown, path: readonly string[] = []): (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, inner]) => placesIn(inner, [...path, key]))];
}

type Json = Record<string, unknown>;

/** A copy of the record with one place changed: replaced, removed, or given a neighbour that is not known. */
function spoilt(
  record: AnyRecord,
  path: readonly string[],
  how: 'put' | 'remove' | 'beside',
  value: unknown,
): unknown {
  if (path.length === 0) return how === 'put' ? value : record;
  const copy = JSON.parse(JSON.stringify(record)) as Json;
  const parent = path.slice(0, -1).reduce<Json>((inner, key) => inner[key] as Json, copy);
  const key = path.at(-1) ?? '';
  if (how === 'put') parent[key] = value;
  else if (how === 'beside') parent['unheardOf'] = value;
  else if (Array.isArray(parent)) parent.splice(Number(key), 1);
  else delete parent[key];
  return copy;
}

/** The one rule across fields that the JSON Schema can say too. */
const sidesFit = (record: unknown): boolean => {
  const { kind, form, sides } = record as Stand;
  return kind !== 'stand' || sides.length === (form === 'backToBack' ? 2 : 1);
};

describe('the JSON Schema and the reader', () => {
  it('agree on every record with one thing changed', () => {
    const records = [...documentOfEveryKind().records.values()];
    const cases = records.flatMap((record) => placesIn(record).map((path) => ({ record, path })));
    let refused = 0;
    fc.assert(
      fc.property(
        fc.constantFrom(...cases),
        fc.constantFrom('put', 'put', 'put', 'remove', 'beside'),
        fc.constantFrom(...ODD_VALUES),
        ({ record, path }, how, value) => {
          const raw = spoilt(record, path, how, value);
          const read = v.safeParse(schemaOf(record.kind), raw);
          const accepted = read.success && sidesFit(read.output);
          if (!accepted) refused++;
          expect(schemaAcceptsRecord(record.kind, raw), JSON.stringify(raw)?.slice(0, 300)).toBe(accepted);
        },
      ),
      { numRuns: 10_000 },
    );
    expect(refused).toBeGreaterThan(2500);
  });
});
