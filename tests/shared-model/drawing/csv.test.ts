/**
 * RFC 4180 as an independent parser reads it (`papaparse` 5.7.1, MIT). What begins a formula: OWASP, "CSV Injection",
 * and ASVS 1.2.10, as kept in the project's notes on hostile input.
 */

import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { csvText, type CsvCell } from '#model/drawing/csv.ts';
import { inventoryRows, markRows } from '#model/drawing/csv-tables.ts';
import { asId, type Id } from '#model/document/ids.ts';
import {
  aConcert,
  aDocument,
  aLamp,
  anInstrument,
  aPlayer,
  aSetup,
  aStand,
  aStock,
  SETUP,
  SIDE,
} from '../../helpers/build.ts';
import '../../helpers/seed.ts';

const PLAIN = { byteOrderMark: false };

function reread(text: string): string[][] {
  const { data, errors } = Papa.parse<string[]>(text, { delimiter: ',', newline: '\r\n' });
  expect(errors).toEqual([]);
  // Every line ends with its line break, so the parser sees an empty one behind the last.
  expect(data.at(-1)).toEqual(['']);
  return data.slice(0, -1);
}

describe('csvText', () => {
  it('is read back cell by cell, quotes, commas and line breaks included', () => {
    const rows: CsvCell[][] = [
      ['Mark', 'Name', 'x'],
      ['P1', 'said "so", then\r\nleft', -812.5],
      ['', 'Dvořák 張', null],
    ];
    expect(reread(csvText(rows, PLAIN))).toEqual([
      ['Mark', 'Name', 'x'],
      ['P1', 'said "so", then\r\nleft', '-812.5'],
      ['', 'Dvořák 張', ''],
    ]);
  });

  it.each([
    '=1+1',
    '+1',
    '-1',
    '@SUM(A1)',
    '\t=1',
    '\r=1',
    '\n=1',
    '\u0000=1',
    ' =1',
    '＝1',
    '-',
    '=cmd|"/c calc"!A1',
  ])('makes %j text', (hostile) => {
    expect(reread(csvText([[hostile]], PLAIN))).toEqual([[`'${hostile}`]]);
  });

  it('leaves numbers numbers, whatever their sign, without exponents', () => {
    expect(csvText([[-5, 1e-9, -0, 1234567.8912, 0.1 + 0.2]], PLAIN)).toBe('-5,0,0,1234567.891,0.3\r\n');
    expect(() => csvText([[Infinity]], PLAIN)).toThrow(/finite/);
  });

  it('has a byte order mark when asked for one', () => {
    expect([...Buffer.from(csvText([['x']], { byteOrderMark: true }))].slice(0, 3)).toEqual([
      0xef, 0xbb, 0xbf,
    ]);
    expect(csvText([['x']], PLAIN)).toBe('"x"\r\n');
  });

  it('never begins a text cell like a formula, and loses nothing of it', () => {
    const cell = fc.string({ unit: 'grapheme' });
    fc.assert(
      fc.property(fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1 }), (rows) => {
        const read = reread(csvText(rows, PLAIN));
        rows.forEach((cells, row) => {
          cells.forEach((wanted, column) => {
            const found = read[row]?.[column] ?? 'missing';
            expect([wanted, `'${wanted}`]).toContain(found);
            expect(found).not.toMatch(/^[\s\u0000]*[=+\-@＝＋－＠]/);
          });
        });
      }),
    );
  });
});

describe('markRows', () => {
  it('has the exact figures as numbers beside the words of the crew', () => {
    const document = aDocument(
      aPlayer({ name: '=HYPERLINK("x")', x: -820.5, y: 1450, facing: -20 }),
      aStand({ x: 0, y: 900, facing: 180, lip: 815, tilt: 65 }),
      aLamp({ x: 1000, y: 2000, cable: [{ x: 1500, y: 2000 }] }),
    );
    const [titles, ...rows] = reread(csvText(markRows(document, SETUP), PLAIN));
    expect(titles?.length).toBe(14);
    for (const row of rows) expect(row).toHaveLength(14);
    expect(rows[0]).toEqual([
      'P1',
      `'=HYPERLINK("x") (player)`,
      '821 SR',
      '1450 US',
      '-820.5',
      '1450',
      '-20',
      '',
      '',
      'stands',
      'Trio',
      'Test concert',
      '',
      '',
    ]);
    expect(rows[1]?.slice(2, 9)).toEqual(['on centre', '900 US', '0', '900', '180', '815', '65']);
    expect(rows[3]?.slice(0, 6)).toEqual(['', 'Socket of L1', '1500 SL', '2000 US', '1500', '2000']);
  });
});

describe('markRows of a concert', () => {
  it('says directions in one range, and in every row of which piece, day and revision it is', () => {
    const document = aDocument(
      aConcert({ name: 'Evening', date: '2027-03-14', revision: 'B' }),
      aPlayer({ facing: 250 }),
      aStand({ facing: -115 }),
    );
    const [, ...rows] = markRows(document, SETUP);
    expect(rows.map((row) => row[6])).toEqual([-110, -115]);
    for (const row of rows) expect(row.slice(10)).toEqual(['Trio', 'Evening', '2027-03-14', 'B']);
  });
});

describe('inventoryRows', () => {
  it('counts what each setup needs, and the most at once', () => {
    const other = aSetup({ id: 'setup-2', name: '', order: 2 });
    const document = aDocument(
      other,
      aPlayer(),
      anInstrument(),
      aStand(),
      aStand({ id: 'stand-2', form: 'backToBack', sides: [SIDE, SIDE] }),
      aStand({ id: 'stand-3', setup: asId('setup-2') }),
      aStand({ id: 'stand-4', setup: null }),
    );
    const rows = inventoryRows(document);
    expect(rows[0]).toEqual([
      'What',
      'Most at once',
      'Venue has',
      'Borrowed',
      'Missing',
      'Trio',
      'Setup 2',
      'Concert',
      'Date',
      'Revision',
    ]);
    // A back-to-back pair is two stands; what stays for the whole concert is needed in both.
    expect(rows.find(([what]) => String(what).includes('stand'))?.slice(1, 7)).toEqual([
      ...[4, null, null, null],
      ...[4, 2],
    ]);
    expect(
      rows
        .find(([what]) => what === 'B-flat clarinet' || String(what).toLowerCase().includes('clarinet'))
        ?.slice(1, 7),
    ).toEqual([1, null, null, null, 1, 0]);
  });

  it('tells what the venue has, what is borrowed, and what is missing in the programme', () => {
    const [second, version] = [asId<'setup'>('setup-2'), asId<'setup'>('setup-3')];
    const stands = (count: number, setup: Id<'setup'>) =>
      Array.from({ length: count }, (_, index) => aStand({ id: `stand-${setup}-${index}`, setup }));
    const document = aDocument(
      aSetup({ id: 'setup-2', name: 'Second', order: 2 }),
      // A version is only tried: what it would lack is not missed.
      aSetup({ id: 'setup-3', name: 'Wide', order: 3, variantOf: second }),
      ...[...stands(3, asId('setup-1')), ...stands(5, second), ...stands(9, version)],
      aStock({ item: 'stand', model: '', owned: 2, borrowed: 1 }),
    );
    const [titles = [], ...rows] = inventoryRows(document);
    expect(titles.slice(5)).toEqual(['Trio', 'Second', 'Concert', 'Date', 'Revision']);
    // The model is not said, so those three fill in for any: 5 - 3 are missing in the second piece.
    expect(rows[0]?.slice(1, 7)).toEqual([5, 0, 0, 2, 3, 5]);
    const { model } = aStand();
    const exact = aDocument(
      ...stands(4, asId('setup-1')),
      aStock({ item: 'stand', model, owned: 2, borrowed: 1 }),
    );
    expect(inventoryRows(exact)[1]?.slice(1, 6)).toEqual([4, 2, 1, 1, 4]);
  });
});
