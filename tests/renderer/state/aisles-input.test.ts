import { afterEach, describe, expect, test } from 'vitest';
import { speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { readAisles } from '../../../renderer/state/aisles-input.ts';

afterEach(speakEnglish);

describe('readAisles', () => {
  test.each([
    ['', []],
    ['9 : 1100', [{ afterSeat: 9, width: 1100 }]],
    ['9:1100 mm, 18 : 1.2 m', [1100, 1200].map((width, i) => ({ afterSeat: 9 * (i + 1), width }))],
    // A decimal comma is no end of an aisle.
    ['9 : 1,1 m, 18 : 1,2 m', [1100, 1200].map((width, i) => ({ afterSeat: 9 * (i + 1), width }))],
    ['9 : 1,1 m', [{ afterSeat: 9, width: 1100 }]],
  ])('reads "%s"', (typed, aisles) => {
    expect(readAisles(typed, 'metric')).toEqual(aisles);
    speakFrom('de', {});
    expect(readAisles(typed, 'metric')).toEqual(aisles);
  });

  test('reads feet and inches', () => {
    expect(readAisles(`9 : 3' 6"`, 'imperial')).toEqual([
      { afterSeat: 9, width: expect.closeTo(42 * 25.4, 9) },
    ]);
  });

  test.each(['9', '9 :', ': 1100', '9 : wide', '9 : 1100, 18', '9 : 1100 18 : 1200'])(
    'does not guess at "%s"',
    (typed) => {
      expect(readAisles(typed, 'metric')).toBeNull();
    },
  );
});
