import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDocument } from '#model/file-format/read.ts';
import { writeDocument } from '#model/file-format/write.ts';
import { documentOfEveryKind } from '../document/every-kind.ts';

const TEXT = writeDocument(documentOfEveryKind());

/** A text is read or refused, never thrown at; what is read can be written and read again. */
function readsOrRefuses(text: string): 'read' | 'refused' {
  const result = readDocument(text);
  if (!result.ok) {
    expect(result.problem.message).toMatch(/^[^\n\r]{10,}\.$/);
    return 'refused';
  }
  const written = writeDocument(result.document);
  const again = readDocument(written);
  expect(again.ok && again.document).toEqual(result.document);
  return 'read';
}

describe('any text at all', () => {
  it('is refused when it is a good file cut off at any of its places', () => {
    const step = Math.ceil(TEXT.length / 400);
    let tried = 0;
    // The last character is the line feed after the closing brace, which a file may lack.
    for (let length = 0; length < TEXT.length - 1; length += step, tried++) {
      expect(readsOrRefuses(TEXT.slice(0, length)), `cut at ${length}`).toBe('refused');
    }
    expect(tried).toBeGreaterThan(200);
  });

  it('with a few characters changed', () => {
    const tally = { read: 0, refused: 0 };
    const edit = fc.record({
      at: fc.nat({ max: TEXT.length }),
      remove: fc.nat({ max: 12 }),
      put: fc.oneof(
        fc.string({ maxLength: 4, unit: 'binary' }),
        fc.constantFrom(
          '"',
          '{',
          '}',
          '[',
          ']',
          ',',
          ':',
          '-',
          '0',
          '1e999',
          'null',
          'NaN',
          '"__proto__":1,',
          '\u0000',
          '\ud800',
        ),
      ),
    });
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 3 }), (edits) => {
        let text = TEXT;
        for (const { at, remove, put } of edits) text = text.slice(0, at) + put + text.slice(at + remove);
        tally[readsOrRefuses(text)]++;
      }),
      { numRuns: 2000 },
    );
    expect(tally.read).toBeGreaterThan(10);
    expect(tally.refused).toBeGreaterThan(500);
  });

  it('as arbitrary JSON, bare and in the place of the records, of a record or of a field', () => {
    const records = (JSON.parse(TEXT) as { records: Record<string, unknown>[] }).records;
    const file = (inner: unknown): string =>
      JSON.stringify({ format: 'standlines', version: 4, records: inner });
    const spoilt = fc
      .record({ at: fc.nat({ max: records.length - 1 }), field: fc.nat({ max: 40 }), value: fc.jsonValue() })
      .map(({ at, field, value }) => {
        const record = records[at] ?? {};
        const key = Object.keys(record)[field % Object.keys(record).length] ?? 'id';
        return file(records.map((other) => (other === record ? { ...record, [key]: value } : other)));
      });
    const anything = fc.oneof(
      fc.json(),
      fc.string({ unit: 'binary' }),
      fc.jsonValue().map((value) => JSON.stringify({ format: 'standlines', version: value, records })),
      fc.jsonValue().map(file),
      fc.array(fc.jsonValue()).map((values) => file([...records, ...values])),
      spoilt,
    );
    fc.assert(
      fc.property(anything, (text) => {
        readsOrRefuses(text);
      }),
      { numRuns: 2000 },
    );
  });
});
