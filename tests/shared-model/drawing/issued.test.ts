import { dayOf } from '#model/drawing/issued.ts';
import { expect, it } from 'vitest';

it('the day of issue is that of the calendar here, also just before and after midnight', () => {
  expect(dayOf(new Date(2026, 2, 7, 0, 0, 1))).toBe('2026-03-07');
  expect(dayOf(new Date(2026, 11, 31, 23, 59, 59))).toBe('2026-12-31');
});
