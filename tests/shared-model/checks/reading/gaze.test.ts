import { expect, it } from 'vitest';
import { turnFor } from '#model/checks/reading/gaze.ts';

// Source of the limits: NUREG-0700 rev 3, 11.3.1.2-2, citing MIL-STD-1472G (15 / 35 / 60 degrees).
it.each([
  [0, 'glance'],
  [14.99, 'glance'],
  [15, 'glance'],
  [15.01, 'eyes'],
  [34.99, 'eyes'],
  [35.01, 'head'],
  [59.99, 'head'],
  [60.01, 'body'],
  [180, 'body'],
] as const)('%d degrees to either side is a matter of: %s', (angle, turn) => {
  expect(turnFor(angle)).toBe(turn);
  expect(turnFor(-angle)).toBe(turn);
});
