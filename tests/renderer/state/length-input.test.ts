import { formatLength } from '#model/document/measures.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ACROSS, DEPTH, readCoordinate, readLength } from '../../../renderer/state/length-input.ts';

const millimetres = (typed: string, units: 'metric' | 'imperial' = 'metric'): number => {
  const reading = readLength(typed, units);
  if (!reading.ok) throw new Error(`unreadable: ${typed}`);
  return reading.millimetres;
};

describe('readLength', () => {
  // One inch is 25.4 mm and one foot twelve inches, exactly (international yard and pound agreement, 1959).
  it.each([
    ['820', 820],
    ['820 mm', 820],
    ['2.4 m', 2400],
    ['2,4 m', 2400],
    ['30cm', 300],
    ['1 in', 25.4],
    ['1"', 25.4],
    ["7'", 2133.6],
    ['7\' 6"', 2286],
    ["7'6", 2286],
    ['7\u2019 6\u201d', 2286],
    ['2\'-8 1/4"', 819.15],
    ['2 ft 8 in', 812.8],
    ['2.4 m + 30 cm', 2700],
    ['1 m - 5', 995],
    ['3 × 90 cm', 2700],
    ['3x90', 270],
    ['90 cm * 3 + 4', 2704],
    ['2 × 7\' 6" - 1 m', 3572],
    ['2.4 m ÷ 2 · 3', 3600],
    ['-1.5 × 2 m', -3000],
    ['-120', -120],
    ['\u2212120', -120],
    [' 0 ', 0],
  ])('reads %s as %d mm in a metric document', (typed, expected) => {
    expect(millimetres(typed)).toBeCloseTo(expected, 9);
  });

  it('takes a bare figure as inches in an imperial document', () => {
    expect(millimetres('10', 'imperial')).toBeCloseTo(254, 9);
    expect(millimetres("-7' 6", 'imperial')).toBeCloseTo(-2286, 9);
  });

  it.each([
    '',
    '  ',
    'abc',
    '2..4',
    '2 4',
    '1 m 2 m',
    '12 km',
    '1e3',
    'NaN',
    '1 +',
    '3 ×',
    '3 × 2 × 90 cm',
    '90 cm × 3 cm',
    '3 × -2',
    '2 m × 3 4',
    '1 m ÷ 0',
    '--',
    '3 1/',
    `${'9'.repeat(99)}`,
  ])('refuses "%s"', (typed) => {
    expect(readLength(typed, 'metric')).toEqual({ ok: false, problem: 'unreadable' });
  });

  it('refuses a division by nothing', () => {
    expect(readLength('1 1/0"', 'metric').ok).toBe(false);
  });

  it('takes a fraction alone, and does not guess what 8-1/4 means', () => {
    expect(millimetres('7/8"', 'imperial')).toBeCloseTo(22.225, 9);
    expect(millimetres('-3/4"', 'imperial')).toBeCloseTo(-19.05, 9);
    expect(millimetres('2\' 1/2"', 'imperial')).toBeCloseTo(622.3, 9);
    expect(readLength('8-1/4"', 'imperial').ok).toBe(false);
    expect(readLength('1\' 8-1/4"', 'imperial').ok).toBe(false);
    expect(readLength('1/0"', 'imperial').ok).toBe(false);
  });

  it('reads back whatever the tool itself writes', () => {
    fc.assert(
      fc.property(fc.integer({ min: -50_000, max: 50_000 }), (length) => {
        expect(millimetres(formatLength(length, 'metric'))).toBe(length);
        // Feet and inches are written to the nearest quarter of an inch.
        const imperial = millimetres(formatLength(length, 'imperial'), 'imperial');
        expect(Math.abs(imperial - length)).toBeLessThanOrEqual(25.4 / 8 + 1e-6);
      }),
    );
  });

  it('answers for any text, and quickly', () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 200 }),
        (typed) => typeof readLength(typed, 'metric').ok === 'boolean',
      ),
    );
    const begun = performance.now();
    readLength("1'".repeat(50_000), 'metric');
    expect(performance.now() - begun).toBeLessThan(50);
  });
});

describe('readCoordinate', () => {
  it('stays on its side when neither side nor sign is typed', () => {
    const across = (typed: string, now: number) => readCoordinate(typed, 'metric', ACROSS, now);
    expect(across('820', -936)).toMatchObject({ ok: true, millimetres: -820 });
    expect(across('1.2 m - 20 cm', -936)).toMatchObject({ ok: true, millimetres: -1000 });
    expect(across('820', 936)).toMatchObject({ ok: true, millimetres: 820 });
    expect(across('820', 0)).toMatchObject({ ok: true, millimetres: 820 });
    expect(across('+820', -936)).toMatchObject({ ok: true, millimetres: 820 });
    expect(across('820 SL', -936)).toMatchObject({ ok: true, millimetres: 820 });
    expect(across('-820', 936)).toMatchObject({ ok: true, millimetres: -820 });
    expect(across('-820', -936)).toMatchObject({ ok: true, millimetres: -820 });
    expect(across('0', -936)).toMatchObject({ ok: true, millimetres: 0 });
  });

  it('takes the side after the figure', () => {
    expect(readCoordinate('820 SR', 'metric', ACROSS)).toMatchObject({ ok: true, millimetres: -820 });
    expect(readCoordinate('820 sl', 'metric', ACROSS)).toMatchObject({ ok: true, millimetres: 820 });
    expect(readCoordinate('1.2 m DS', 'metric', DEPTH)).toMatchObject({ ok: true, millimetres: -1200 });
  });

  it('takes the words for nought', () => {
    expect(readCoordinate('on centre', 'metric', ACROSS)).toMatchObject({ ok: true, millimetres: 0 });
    expect(readCoordinate('at edge', 'imperial', DEPTH)).toMatchObject({ ok: true, millimetres: 0 });
  });

  it('refuses a side of the other axis', () => {
    expect(readCoordinate('820 US', 'metric', ACROSS)).toEqual({ ok: false, problem: 'wrongSide' });
  });
});
