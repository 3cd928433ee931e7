import { describe, expect, it } from 'vitest';
import { housePlaces } from '#model/document/seating.ts';
import { documentOf, type Document } from '#model/document/document.ts';
import { readDocument } from '#model/file-format/read.ts';
import { writeDocument } from '#model/file-format/write.ts';
import { recordOf } from '../../helpers/build.ts';
import { documentBeforeStock, documentOfEveryKind } from '../document/every-kind.ts';
import { demoText, fixtureNames, fixtureText } from './fixtures.ts';
import { schemaErrors } from './validator.ts';

const read = (text: string): Document => {
  const result = readDocument(text);
  if (!result.ok) throw new Error(result.problem.message);
  return result.document;
};

describe('the demo concert', () => {
  it('is read without a note and accepted by the JSON Schema', () => {
    expect(readDocument(demoText())).toMatchObject({ ok: true, notes: [] });
    expect(schemaErrors(demoText())).toBe('');
  });
});

describe('files of older versions', () => {
  it.each(fixtureNames('old'))('%s is brought up to date with a note, and written as any other', (name) => {
    const result = readDocument(fixtureText('old', name));
    if (!result.ok) throw new Error(result.problem.message);
    expect(result.notes).toEqual([expect.stringMatching(/^The file was of version \d and has been brought/)]);
    const written = writeDocument(result.document);
    expect(schemaErrors(written)).toBe('');
    expect(readDocument(written)).toEqual({ ...result, notes: [], quiet: [] });
    expect(result.quiet).toEqual(result.notes);
  });
});

describe('good files', () => {
  it.each(fixtureNames('good'))(
    '%s is read without a note, accepted by the JSON Schema, and written stably',
    (name) => {
      const text = fixtureText('good', name);
      expect(readDocument(text)).toMatchObject({ ok: true, notes: [] });
      expect(schemaErrors(text)).toBe('');
      const written = writeDocument(read(text));
      expect(schemaErrors(written)).toBe('');
      expect(read(written)).toEqual(read(text));
      expect(writeDocument(read(written))).toBe(written);
    },
  );

  it('reads files from before staff sizes and pairs of players, and takes neither as known', () => {
    const document = read(fixtureText('old', 'version-1-first.standlines'));
    expect(recordOf(document, 'setup-1', 'setup').needNotSee).toEqual([]);
    expect(recordOf(document, 'stand-1', 'stand').sides.map(({ staffSize }) => staffSize)).toEqual([
      null,
      null,
    ]);
  });

  // The golden files are kept for ever: later versions must still read them.
  it('reads version 1 as it was first written: everybody walks', () => {
    const player = { ...recordOf(documentBeforeStock(), 'player-3', 'player'), chair: null } as const;
    // There was no music then, and no plan of its pages.
    const others = [...documentBeforeStock().records.values()].filter(
      ({ kind }) => kind !== 'score' && kind !== 'pagePlan',
    );
    const walking = documentOf([...others, { ...player, mobility: 'walks' }]);
    expect(read(fixtureText('old', 'version-1.standlines'))).toEqual(walking);
  });

  it('reads version 2 as it was first written: no part had a PDF, no plan was kept', () => {
    const score = recordOf(documentBeforeStock(), 'score-1', 'score');
    const before = { ...score, music: { ...score.music, afterJump: null }, pdfs: [null] };
    const records = new Map([...documentBeforeStock().records, [score.id, before]]);
    records.delete('pagePlan-1');
    expect(read(fixtureText('old', 'version-2.standlines'))).toEqual({ records });
  });

  it('reads version 3 as it was first written: no stock, no variants, no underlay', () => {
    expect(read(fixtureText('old', 'version-3.standlines'))).toEqual(documentBeforeStock());
  });

  it('reads version 4 as it was first written, and writes it to the byte', () => {
    const text = fixtureText('good', 'version-4.standlines');
    expect(read(text)).toEqual(documentOfEveryKind());
    expect(writeDocument(documentOfEveryKind())).toBe(text);
  });

  it('fills in what a file written by hand leaves out', () => {
    const document = read(fixtureText('good', 'by-hand.standlines'));
    expect(recordOf(document, 'concert', 'concert').limits).toEqual({
      seesWell: 0.9,
      houseShare: 0.75,
      edgeDistance: 600,
      routeWidth: 915,
    });
    expect(recordOf(document, 'player-1', 'player')).toMatchObject({
      chair: null,
      facing: 0,
      person: {
        population: 'pooled',
        size: { by: 'anyone' },
        shoes: 25,
        measured: { eyeHeight: null, shoulderHeight: null, armLength: null },
      },
    });
    expect(recordOf(document, 'stalls', 'seatBlock')).toMatchObject({
      facing: 180,
      aisles: [],
      firstRow: 'A',
    });
    expect(recordOf(document, 'stand-1', 'stand').sides).toEqual([
      {
        reader: 'player-1',
        pagesAcross: 2,
        pageWidth: 210,
        pageHeight: 297,
        staffSize: null,
        turned: false,
        freeTime: null,
      },
    ]);
  });

  it('may have no seats at all', () => {
    expect(housePlaces(read(fixtureText('good', 'empty-house.standlines')))).toEqual([]);
    expect(housePlaces(read(fixtureText('good', 'no-house.standlines')))).toEqual([]);
  });

  it('may start with a byte order mark', () => {
    const text = fixtureText('good', 'by-hand.standlines');
    expect(read(`\uFEFF${text}`)).toEqual(read(text));
  });

  it('may name a model that the catalogue does not have, which is noted', () => {
    const text = fixtureText('good', 'by-hand.standlines').replace('"oboe"', '"oboe-of-glass"');
    const result = readDocument(text);
    expect(result).toMatchObject({
      ok: true,
      notes: [
        'instrument "instrument-1": the catalogue has no model "oboe-of-glass"; it is taken for a usual one.',
      ],
    });
  });
});
