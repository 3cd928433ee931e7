/** The table of what people type for lengths: what each is read as, and what is not guessed at. */

import fc from 'fast-check';
import { afterEach, describe, expect, test } from 'vitest';
import { formatAcross, formatDepth, formatLength, type Units } from '#model/document/measures.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { german } from '#model/words/german/index.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { plainFigure } from '../../../renderer/state/figure.ts';
import { ACROSS, DEPTH, readCoordinate, readLength } from '../../../renderer/state/length-input.ts';

type Spoken = 'en' | 'de';

const speak = (spoken: Spoken): void => (spoken === 'de' ? speakFrom('de', german) : speakEnglish());

afterEach(speakEnglish);

/** Millimetres, the two readings of what is not guessed at, or null for what is not read. */
function read(typed: string, units: Units): number | string | null {
  const reading = readLength(typed, units);
  if (reading.ok) return Math.round(reading.millimetres * 1e6) / 1e6;
  return reading.problem === 'ambiguous' ? reading.readings.join(' | ') : null;
}

const INCH = 25.4;
const FOOT = 12 * INCH;

describe('in both languages and both systems', () => {
  // One inch is 25.4 mm and one foot twelve inches, exactly (international yard and pound agreement, 1959).
  const table: readonly [string, number | null][] = [
    ['1 200 mm', 1200],
    ['1\u00a0200 mm', 1200],
    ['1\u202f200 mm', 1200],
    ['1\u2009200,5 mm', 1200.5],
    ['12 000 000 mm', 12_000_000],
    ['1.200.000 mm', 1_200_000],
    ['1,200,000 mm', 1_200_000],
    ['1.200,5 mm', 1200.5],
    ['1,200.5 mm', 1200.5],
    ['1,2 m', 1200],
    ['1.2 m', 1200],
    ['0.125 m', 125],
    ['0,125 m', 125],
    [',5 m', 500],
    ['2 m 30', 2300],
    ['2m30', 2300],
    ['2 m 05', 2050],
    ['2 m 305', 2305],
    ['1 m 20 cm', 1200],
    ['1 m 20 cm 5 mm', 1205],
    ['20 cm 5', 205],
    ['2 metres 30 centimetres', 2300],
    ['2 Meter 30 Zentimeter', 2300],
    ['30 millimeters', 30],
    ["7'6", 7.5 * FOOT],
    ['7\u2032 6\u2033', 7.5 * FOOT],
    ["7' 6''", 7.5 * FOOT],
    ['7\'-6"', 7.5 * FOOT],
    ['7\'-6 1/2"', 7.5 * FOOT + INCH / 2],
    ['7 ft 6', 7.5 * FOOT],
    ['7 feet 6 inches', 7.5 * FOOT],
    ['7 Fuß 6 Zoll', 7.5 * FOOT],
    ['1/2 in', INCH / 2],
    ['½ in', INCH / 2],
    ['½"', INCH / 2],
    ['2½ in', 2.5 * INCH],
    ['2 ¼ in', 2.25 * INCH],
    ['2 ⅛ in', 2.125 * INCH],
    ['1⁄2 in', INCH / 2],
    ['½ m', 500],
    ['2.4 m + 30 cm', 2700],
    ['7\' 6" + 1 m', 7.5 * FOOT + 1000],
    ['2.4 m / 2', 1200],
    ['3 × 2 m 30', 6900],
    ["7' - 2'", 5 * FOOT],
    ["7'-2'", 5 * FOOT],
    ["2'-8 + 1 in", 2 * FOOT + 9 * INCH],
    ['1,2,3 mm', null],
    ['1 20 mm', null],
    ['12 34', null],
    ['1.2.3 m', null],
    ['30 cm 2 m', null],
    ['2 m 3000', null],
    ['20 cm 50', null],
    ["7' 30", null],
    ["1'200", null],
    ['5 min', null],
    ['5 mx', null],
    ['1 km', null],
    ['½½ in', null],
    ['left', null],
  ];

  test.each(table)('%s is %s', (typed, expected) => {
    for (const spoken of ['en', 'de'] as const) {
      speak(spoken);
      for (const units of ['metric', 'imperial'] as const)
        expect(read(typed, units), `${spoken}, ${units}`).toEqual(
          expected === null ? null : expect.closeTo(expected, 6),
        );
    }
  });
});

describe('what depends on the language or the units', () => {
  const table: readonly [Spoken, Units, string, number | string][] = [
    // A figure alone.
    ['en', 'metric', '820', 820],
    ['en', 'imperial', '90', 90 * INCH],
    ['en', 'metric', '1 200', 1200],
    ['de', 'metric', '1\u202f200', 1200],
    // Thousands by the language's own mark; the other language's mark is asked about.
    ['de', 'metric', '1.200', 1200],
    ['de', 'metric', '1.200 mm', 1200],
    ['de', 'metric', '1.200 re', 1200],
    ['en', 'metric', '1,200', 1200],
    ['en', 'metric', '1,200 mm', 1200],
    ['en', 'metric', '1.200', '1.2 mm | 1200 mm'],
    ['en', 'metric', '1.200 mm', '1.2 mm | 1200 mm'],
    ['de', 'metric', '1,200', '1,2 mm | 1200 mm'],
    ['de', 'metric', '1,200 mm li', '1,2 mm li | 1200 mm li'],
    // Nobody knows whether thousands of metres are meant.
    ['en', 'metric', '2.400 m', 2400],
    ['de', 'metric', '2,400 m', 2400],
    ['de', 'metric', '2.400 m', '2,4 m | 2400 m'],
    ['en', 'metric', '2,400 m', '2.4 m | 2400 m'],
    ['en', 'metric', '1 m + 2,400 cm', '1 m + 2.4 cm | 1 m + 2400 cm'],
    // Decimal inches are common in English.
    ['en', 'imperial', '7.125', 7.125 * INCH],
    ['en', 'imperial', '7.125 in', 7.125 * INCH],
    ['de', 'imperial', '7,125 Zoll', 7.125 * INCH],
    ['de', 'imperial', '7.125', '7,125 in | 7125 in'],
    ['en', 'imperial', '7\' 1,125"', "7' 1.125 in | 7' 1125 in"],
    // A bare figure with decimals is more likely metres than parts of a millimetre.
    ['en', 'metric', '1.2', '1.2 m | 1.2 mm'],
    ['de', 'metric', '1,2', '1,2 m | 1,2 mm'],
    ['en', 'metric', '1,2 SL', '1.2 m SL | 1.2 mm SL'],
    ['de', 'metric', '1,2 re', '1,2 m re | 1,2 mm re'],
    ['en', 'metric', '12.5', '12.5 m | 12.5 mm'],
    ['en', 'metric', '1 m + 1.5', '1 m + 1.5 m | 1 m + 1.5 mm'],
    ['en', 'metric', '½', '0.5 m | 0.5 mm'],
    ['de', 'metric', '2 1/2', '2,5 m | 2,5 mm'],
    ['en', 'metric', '819.5', 819.5],
    ['en', 'imperial', '7.5', 7.5 * INCH],
    ['en', 'imperial', '2 1/2', 2.5 * INCH],
    // One digit behind metres.
    ['en', 'metric', '2 m 5', '2 m 5 cm | 2 m 50 cm'],
    ['de', 'imperial', '2 m 5', '2 m 5 cm | 2 m 50 cm'],
    // A hyphen that may join or subtract.
    ['en', 'imperial', '7-6', '7\' 6" | 7" - 6"'],
    ['en', 'metric', '1200-50', 1150],
    ['en', 'metric', '7-6', 1],
    ['en', 'imperial', '8-1/4', '8 1/4" | 8" - 1/4"'],
    ['en', 'metric', '8-1/4"', '8 1/4" | 8" - 1/4"'],
    ['en', 'imperial', '7\' - 6"', '7\' 6" | 7 ft - 6 in'],
    ['en', 'imperial', '7 ft - 6 in', 6.5 * FOOT],
  ];

  test.each(table)('%s, %s: %s is %s', (spoken, units, typed, expected) => {
    speak(spoken);
    expect(read(typed, units)).toEqual(typeof expected === 'number' ? expect.closeTo(expected, 6) : expected);
  });

  test('each of the two readings leaves no doubt', () => {
    for (const [spoken, units, typed, expected] of table) {
      if (typeof expected === 'number') continue;
      speak(spoken);
      for (const reading of expected.split(' | '))
        expect([typed, read(reading, units)]).toEqual([typed, expect.any(Number)]);
    }
  });
});

describe('a coordinate', () => {
  test('asks where metres are likely, and never becomes a millimetre', () => {
    expect(readCoordinate('1,2 SL', 'metric', ACROSS)).toEqual({
      ok: false,
      problem: 'ambiguous',
      readings: ['1.2 m SL', '1.2 mm SL'],
    });
  });

  test('with a side and a minus is on neither side', () => {
    expect(readCoordinate('-820 SR', 'metric', ACROSS)).toEqual({ ok: false, problem: 'unreadable' });
  });
});

describe('what the program writes is read back', () => {
  const anything = fc.record({
    length: fc.integer({ min: -200_000, max: 200_000 }),
    units: fc.constantFrom('metric', 'imperial'),
    spoken: fc.constantFrom('en', 'de'),
  } as const);

  test('as a length and as a coordinate, to the part that is written', () => {
    fc.assert(
      fc.property(anything, ({ length, units, spoken }) => {
        speak(spoken);
        // Feet and inches are written to the nearest quarter of an inch.
        const near = units === 'metric' ? 0 : INCH / 8 + 1e-6;
        const isNear = (found: number | string | null) =>
          typeof found === 'number' && Math.abs(found - length) <= near;
        expect(isNear(read(formatLength(length, units), units)), formatLength(length, units)).toBe(true);
        const across = readCoordinate(formatAcross(length, units), units, ACROSS);
        const depth = readCoordinate(formatDepth(length, units), units, DEPTH);
        expect(isNear(across.ok ? across.millimetres : null), formatAcross(length, units)).toBe(true);
        expect(isNear(depth.ok ? depth.millimetres : null), formatDepth(length, units)).toBe(true);
      }),
    );
  });

  test('and a millimetre is a millimetre with any blank between thousands', () => {
    const blank = fc.constantFrom(' ', '\u00a0', '\u202f', '\u2009');
    fc.assert(
      fc.property(fc.integer({ min: 1000, max: 999_999 }), blank, (length, between) => {
        const typed = String(length).replace(/(?<=\d)(?=\d{3}$)/, between);
        expect(read(typed, 'metric')).toBe(length);
      }),
    );
  });

  test('nothing that is read can be read otherwise: a figure of metres is what it says', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99_999 }), fc.constantFrom('.', ','), (centimetres, mark) => {
        const typed = `${Math.floor(centimetres / 100)}${mark}${String(centimetres % 100).padStart(2, '0')} m`;
        expect(read(typed, 'metric')).toBeCloseTo(centimetres * 10, 6);
      }),
    );
  });
});

describe('a plain number', () => {
  test.each([
    ['en', '1.125', 1.125],
    ['en', '1,125', null],
    ['de', '1,125', 1.125],
    ['de', '1.125', null],
    ['en', '2,5', 2.5],
    ['de', '2.5', 2.5],
    ['en', '1 200', 1200],
    ['en', '', null],
    ['en', '5 s', null],
  ] as const)('%s: %s is %s', (spoken, typed, expected) => {
    speak(spoken);
    expect(plainFigure(typed)).toBe(expected);
  });
});
