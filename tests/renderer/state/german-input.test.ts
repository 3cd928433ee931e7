/** What people type in German, and what the program shows in German, is understood; English still is. */

import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { formatAcross, formatDepth, formatLength } from '#model/document/measures.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { german } from '#model/words/german/index.ts';
import { facingWords, readFacing } from '../../../renderer/state/facing-input.ts';
import { ACROSS, DEPTH, readCoordinate, readLength } from '../../../renderer/state/length-input.ts';

beforeEach(() => speakFrom('de', german));
afterEach(speakEnglish);

describe('a length', () => {
  test.each([
    ['2,4 m', 2400],
    ['2.4 m', 2400],
    ['2,4 m + 30 cm', 2700],
    ['3 × 1,25 m', 3750],
    ['10 Zoll', 254],
    ['7 Fuß 6 Zoll', 2286],
    // More than three digits before the point, a nought, or other than three behind it part no thousands.
    ['2400.5', 2400.5],
    ['1.25 m', 1250],
    ['0.125 m', 125],
  ])('%s is %d mm', (typed, expected) => {
    expect(readLength(typed, 'metric')).toMatchObject({ ok: true, millimetres: expect.closeTo(expected, 9) });
  });

  test('is read back as it is written', () => {
    fc.assert(
      fc.property(fc.integer({ min: -50_000, max: 50_000 }), (length) => {
        const reading = readLength(formatLength(length, 'metric'), 'metric');
        expect(reading).toEqual({ ok: true, millimetres: length, side: null });
      }),
    );
  });
});

describe('a coordinate', () => {
  test.each([
    ['820 re', ACROSS, 820],
    ['820 li', ACROSS, -820],
    ['1,2 m links', ACROSS, -1200],
    ['820 SR', ACROSS, -820],
    ['1450 hi', DEPTH, 1450],
    ['1450 Hinten', DEPTH, 1450],
    ['300 vo', DEPTH, -300],
    ['300 vorn', DEPTH, -300],
    ['auf der Mitte', ACROSS, 0],
    ['an der Kante', DEPTH, 0],
    ['at edge', DEPTH, 0],
  ] as const)('%s', (typed, axis, expected) => {
    expect(readCoordinate(typed, 'metric', axis)).toMatchObject({ ok: true, millimetres: expected });
  });

  test('on the side of the other axis is refused', () => {
    expect(readCoordinate('820 hi', 'metric', ACROSS)).toEqual({ ok: false, problem: 'wrongSide' });
    expect(readCoordinate('820 re', 'metric', DEPTH)).toEqual({ ok: false, problem: 'wrongSide' });
  });

  test('is read back as it is written, and so it is in English', () => {
    const readsBack = (at: number) => {
      const [across, depth] = [formatAcross(at, 'metric'), formatDepth(at, 'metric')];
      expect(readCoordinate(across, 'metric', ACROSS)).toMatchObject({ millimetres: at });
      expect(readCoordinate(depth, 'metric', DEPTH)).toMatchObject({ millimetres: at });
    };
    fc.assert(fc.property(fc.integer({ min: -20_000, max: 20_000 }), readsBack));
    speakEnglish();
    fc.assert(fc.property(fc.integer({ min: -20_000, max: 20_000 }), readsBack));
  });
});

describe('a direction', () => {
  test.each([
    ['20 li', -20],
    ['40° nach re', 40],
    ['7,5 Grad nach links', -7.5],
    ['40° nach rechts (vom Saal)', 40],
    ['Saal', 0],
    ['zum Saal', 0],
    ['gerade zum Saal', 0],
    ['hinten', 180],
    ['nach hinten', 180],
    ['links', -90],
    ['nach rechts (vom Saal)', 90],
    ['20 SR', -20],
    ['upstage', 180],
  ])('%s is %d degrees', (typed, facing) => {
    expect(readFacing(typed)).toEqual({ ok: true, facing });
  });

  test.each(['20 hi', '-20 li', '20 li re', 'nach', 'zum'])('%s is not guessed at', (typed) => {
    expect(readFacing(typed)).toEqual({ ok: false, problem: 'unreadable' });
  });

  test('is read back as it is shown', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1799, max: 1800 }), (tenths) => {
        const reading = readFacing(facingWords(tenths / 10));
        expect(reading).toEqual({ ok: true, facing: expect.closeTo(tenths / 10, 9) });
      }),
    );
  });
});
