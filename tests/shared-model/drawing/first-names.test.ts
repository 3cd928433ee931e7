import { expect, test } from 'vitest';
import { firstNames } from '#model/drawing/sheet/first-names.ts';

test('few names are all told, of many the first', () => {
  expect(firstNames(['S1', 'S2'])).toBe('S1, S2');
  expect(firstNames(['1', '2', '3', '4', '5', '6'])).toBe('1, 2, 3, 4, 5, 6');
  expect(firstNames(['1', '2', '3', '4', '5', '6', '7', '8'])).toBe('1, 2, 3, 4, 5, 6 and 2 more');
});
