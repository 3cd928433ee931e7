import { expect, it } from 'vitest';
import { planWords } from '../../../../renderer/app/words/plan.ts';

const { summary } = planWords.plan;

it.each([
  ['Trio', 3, 120, 'Trio: 3 items on the platform, 120 places in the house.'],
  ['Trio', 1, 1, 'Trio: 1 item on the platform, 1 place in the house.'],
  ['Trio', 0, 120, 'Trio: Nothing on the platform, 120 places in the house.'],
  ['', 0, 0, 'Nothing on the platform, no places in the house.'],
  ['', 2, 0, '2 items on the platform, no places in the house.'],
] as const)(
  'the plan of "%s" with %d items and %d places is told in a sentence',
  (setup, items, seats, told) => {
    expect(summary(setup, items, seats)).toBe(told);
  },
);
