import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyDiff, composeDiffs, invertDiff, sameRecord, type Diff } from '#model/document/diff.ts';
import { documentOf, type Document } from '#model/document/document.ts';
import type { AnyRecord } from '#model/document/records.ts';
import { aSeat, aStand, aTable } from '../../helpers/build.ts';
import { documentOfEveryKind } from './every-kind.ts';
import { frozen } from './freeze.ts';

const IDS = ['a', 'b', 'c', 'd', 'e'] as const;

type Make = (fields: { id: string; x: number }) => AnyRecord;

const anyRecordOf = (id: string): fc.Arbitrary<AnyRecord> =>
  fc
    .record({ make: fc.constantFrom<Make[]>(aSeat, aTable, aStand), x: fc.integer({ min: -9, max: 9 }) })
    .map(({ make, x }) => make({ id, x }));

const anyDocument: fc.Arbitrary<Document> = fc
  .tuple(...IDS.map((id) => fc.option(anyRecordOf(id))))
  .map((records) => frozen(documentOf(records.filter((record) => record !== null))));

/** A diff that fits a document: some of its records replaced or removed, others added. */
const anyDiffOf = (document: Document): fc.Arbitrary<Diff> =>
  fc.tuple(...IDS.map((id) => fc.option(fc.option(anyRecordOf(id)), { nil: undefined }))).map((wanted) => {
    const changes = IDS.flatMap((id, index) => {
      const after = wanted[index];
      const before = document.records.get(id) ?? null;
      return after === undefined || (before === null && after === null)
        ? []
        : ([[id, { before, after }]] as const);
    });
    return new Map(changes);
  });

const withDiff = anyDocument.chain((document) => anyDiffOf(document).map((diff) => ({ document, diff })));

const withTwoDiffs = withDiff.chain(({ document, diff }) =>
  anyDiffOf(applyDiff(document, diff)).map((second) => ({ document, first: diff, second })),
);

const withThreeDiffs = withTwoDiffs.chain(({ document, first, second }) =>
  anyDiffOf(applyDiff(applyDiff(document, first), second)).map((third) => ({
    document,
    first,
    second,
    third,
  })),
);

describe('the laws of diffs', () => {
  it('a diff and then its inverse give the document back', () => {
    fc.assert(
      fc.property(withDiff, ({ document, diff }) => {
        expect(applyDiff(applyDiff(document, diff), invertDiff(diff))).toEqual(document);
      }),
    );
  });

  it('inverting twice changes nothing', () => {
    fc.assert(
      fc.property(withDiff, ({ diff }) => {
        expect(invertDiff(invertDiff(diff))).toEqual(diff);
      }),
    );
  });

  it('a composed diff does what both do, one after the other', () => {
    fc.assert(
      fc.property(withTwoDiffs, ({ document, first, second }) => {
        expect(applyDiff(document, composeDiffs(first, second))).toEqual(
          applyDiff(applyDiff(document, first), second),
        );
      }),
    );
  });

  it('composing keeps what was before, so that the inverse of the whole is the inverses backwards', () => {
    fc.assert(
      fc.property(withTwoDiffs, ({ first, second }) => {
        expect(invertDiff(composeDiffs(first, second))).toEqual(
          composeDiffs(invertDiff(second), invertDiff(first)),
        );
      }),
    );
  });

  it('composing three does not depend on which two come together first', () => {
    fc.assert(
      fc.property(withThreeDiffs, ({ first, second, third }) => {
        expect(composeDiffs(composeDiffs(first, second), third)).toEqual(
          composeDiffs(first, composeDiffs(second, third)),
        );
      }),
    );
  });

  it('the empty diff changes nothing', () => {
    fc.assert(
      fc.property(withDiff, ({ document, diff }) => {
        expect(applyDiff(document, new Map())).toEqual(document);
        expect(composeDiffs(diff, new Map())).toEqual(diff);
        expect(composeDiffs(new Map(), diff)).toEqual(diff);
      }),
    );
  });

  it('applying leaves the document it starts from as it was', () => {
    fc.assert(
      fc.property(withDiff, ({ document, diff }) => {
        const before = new Map(document.records);
        applyDiff(document, diff);
        expect(document.records).toEqual(before);
      }),
    );
  });
});

describe('sameRecord', () => {
  it('looks at every field and not at their order', () => {
    for (const record of documentOfEveryKind().records.values()) {
      const backwards = Object.fromEntries(Object.entries(record).reverse()) as unknown as AnyRecord;
      expect(sameRecord(record, backwards)).toBe(true);
      expect(sameRecord(record, structuredClone(record))).toBe(true);
      expect(sameRecord(record, { ...record, name: `${record.name}!` })).toBe(false);
    }
  });

  it('tells lists of different length and missing fields apart', () => {
    const [table, seat] = [aTable(), aSeat()];
    expect(sameRecord(table, seat)).toBe(false);
    const { name: _, ...nameless } = table;
    expect(sameRecord(table, nameless as AnyRecord)).toBe(false);
    const stand = aStand();
    expect(sameRecord(stand, { ...stand, sides: [stand.sides[0], stand.sides[0]] })).toBe(false);
  });
});
