// The inch is 25.4 mm exactly and the foot 12 inches (international yard and pound agreement of 1959).
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  formatAcross,
  formatApart,
  formatBare,
  formatDepth,
  formatFacing,
  formatLength,
  formatPosition,
} from '#model/document/measures.ts';

const FOOT = 304.8;

describe('lengths', () => {
  it.each([
    [820, '820 mm'],
    [0.4, '0 mm'],
    [-820.4, '-820 mm'],
  ])('%d is %s', (length, words) => expect(formatLength(length, 'metric')).toBe(words));

  it.each([
    [FOOT, `1'-0"`],
    [2 * FOOT + 8.25 * 25.4, `2'-8 1/4"`],
    [FOOT - 0.1, `1'-0"`],
    [25.4 / 2, `1/2"`],
    [22.11, `7/8"`],
    [22.25, `7/8"`],
    [10.25 * 25.4, `10 1/4"`],
    [-10.25 * 25.4, `-10 1/4"`],
    [11.9 * 25.4, `11 7/8"`],
    [-3 * FOOT, `-3'-0"`],
    [-1, `0"`],
    [0, `0"`],
  ])('%d mm is %s', (length, words) => expect(formatLength(length, 'imperial')).toBe(words));

  it('are within an eighth of an inch when read back from feet and inches', () => {
    fc.assert(
      fc.property(fc.double({ min: -100_000, max: 100_000, noNaN: true }), (length) => {
        fc.pre(Math.abs(length) >= FOOT);
        const match = /^(-?)(\d+)'-(\d+)(?: (\d)\/(\d))?"$/.exec(formatLength(length, 'imperial'));
        if (!match) throw new Error(formatLength(length, 'imperial'));
        const [, sign, feet, inches, over = '0', under = '1'] = match;
        expect(Number(inches)).toBeLessThan(12);
        const read = (Number(feet) * 12 + Number(inches) + Number(over) / Number(under)) * 25.4;
        expect(Math.abs((sign === '-' ? -read : read) - length)).toBeLessThanOrEqual(25.4 / 8 + 1e-6);
      }),
    );
  });

  it('have no minus before a zero in tables', () => {
    expect(formatBare(-0.2, 'metric')).toBe('0');
    expect(formatBare(-0.2, 'imperial')).toBe(`0'-0"`);
  });
});

describe('positions', () => {
  it('are told from the centre line and the front edge', () => {
    expect(formatPosition({ x: 820, y: 1450 }, 'metric')).toBe('820 SL, 1450 US');
    expect(formatPosition({ x: -820, y: -300 }, 'metric')).toBe('820 SR, 300 DS');
    expect(formatPosition({ x: -2 * FOOT, y: FOOT }, 'imperial')).toBe(`2'-0" SR, 1'-0" US`);
  });

  it('say so when they are on a line', () => {
    expect(formatAcross(0.4, 'metric')).toBe('on centre');
    expect(formatDepth(-0.4, 'metric')).toBe('at edge');
    expect(formatAcross(3, 'imperial')).toBe('on centre');
    expect(formatAcross(4, 'imperial')).toBe(`0'-0 1/4" SL`);
  });
});

describe('facings', () => {
  it.each([
    [0, 'straight at the house'],
    [360, 'straight at the house'],
    [-0.4, 'straight at the house'],
    [20, '20° towards SL'],
    [-20.4, '20° towards SR'],
    [270, '90° towards SR'],
    [180, 'upstage'],
    [-180, 'upstage'],
    [179.6, 'upstage'],
    [540, 'upstage'],
  ])('%d is %s', (facing, words) => expect(formatFacing(facing)).toBe(words));
});

describe('lengths that are compared', () => {
  it.each([
    [[900, 915], 'metric', ['900 mm', '915 mm']],
    [[914.6, 915], 'metric', ['914.6 mm', '915 mm']],
    [[914.96, 915], 'metric', ['914.96 mm', '915 mm']],
    [[914.4, 914.4], 'metric', ['914 mm', '914 mm']],
    [[900, 914.4], 'imperial', [`2'-11 1/2"`, `3'-0"`]],
    [[914, 914.4], 'imperial', [`2'-11 31/32"`, `3'-0"`]],
    [[914.6, 915], 'imperial', [`3'-0"`, `3'-0 1/32"`]],
    [[590, 600], 'imperial', [`1'-11 1/4"`, `1'-11 1/2"`]],
    [[22.11, 25.4], 'imperial', [`3/4"`, `1"`]],
    [[-50.8, 320], 'imperial', [`-2"`, `1'-0 1/2"`]],
  ] as const)('%s in %s are %s', (lengths, units, words) => {
    expect(formatApart(lengths, units)).toEqual(words);
  });
});
