import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { documentOf } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import { KINDS } from '#model/file-format/schema.ts';
import { writeDocument } from '#model/file-format/write.ts';
import { aDocument, aPlayer, aStand, anInstrument } from '../../helpers/build.ts';
import { documentOfEveryKind } from '../document/every-kind.ts';

describe('writing', () => {
  it('gives the same bytes whatever the order of records and fields', () => {
    const records = [...documentOfEveryKind().records.values()];
    const text = writeDocument(documentOfEveryKind());
    fc.assert(
      fc.property(fc.shuffledSubarray(records, { minLength: records.length }), (shuffled) => {
        const backwards = shuffled.map(
          (record) => Object.fromEntries(Object.entries(record).reverse()) as unknown as typeof record,
        );
        expect(writeDocument(documentOf(backwards))).toBe(text);
      }),
      { numRuns: 30 },
    );
  });

  it('puts the venue first, then kind by kind, numbered ids in the order of their numbers', () => {
    const text = writeDocument(
      aDocument(aStand({ id: asId('stand-10') }), aStand({ id: asId('stand-9') }), aPlayer()),
    );
    const ids = [...text.matchAll(/^ {6}"id": "([^"]*)"/gm)].map(([, id]) => id);
    expect(ids).toEqual([
      'concert-1',
      'platform-1',
      'door-1',
      'stalls',
      'setup-1',
      'player-1',
      'stand-9',
      'stand-10',
    ]);
  });

  it('ends in one line feed and has no carriage return', () => {
    const text = writeDocument(documentOfEveryKind());
    expect(text).toMatch(/[^\n]\n$/);
    expect(text).not.toContain('\r');
    expect(text.startsWith('{\n  "format": "standlines",\n  "version": 4,\n  "records": [\n    {\n')).toBe(
      true,
    );
  });

  it('covers every kind of record', () => {
    const kinds = new Set([...documentOfEveryKind().records.values()].map(({ kind }) => kind));
    expect([...kinds].sort()).toEqual([...KINDS].sort());
  });

  // JSON would write null for these, and for the free time null means something.
  it.each([Infinity, NaN])('refuses %s, which JSON would change in silence', (freeTime) => {
    expect(() => writeDocument(aDocument(aPlayer(), anInstrument({ freeTime })))).toThrow(
      /instrument-1\.freeTime/,
    );
  });

  it('refuses a document that could not be opened again', () => {
    expect(() => writeDocument(aDocument(anInstrument()))).toThrow(/there is no record of that id/);
    expect(() => writeDocument(aDocument(aStand({ name: '\ud800' })))).toThrow(/stand-1\.name/);
  });
});
