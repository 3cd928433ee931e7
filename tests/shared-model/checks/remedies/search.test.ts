/** The search for the least amount: laws that hold whatever it searches. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { smallestChange } from '#model/checks/remedies/search.ts';

const STEPS = { coarse: 40, fine: 5, most: 400 };

describe('where more is never worse', () => {
  it('the amount is the smallest round one that is enough, over all ways', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 600 }), { minLength: 1, maxLength: 5 }), (enough) => {
        const found = smallestChange(
          [...enough.keys()],
          STEPS,
          (way, amount) => amount >= (enough[way] ?? 0),
        );
        const least = Math.ceil(Math.min(...enough) / 5) * 5;
        expect(found?.amount ?? null).toBe(least <= 400 ? least : null);
        if (found) expect(enough[found.way]).toBeLessThanOrEqual(least);
      }),
    );
  });

  it('of ways that are equally good the first is taken', () => {
    expect(smallestChange(['a', 'b', 'c'], STEPS, (way, amount) => way !== 'a' && amount >= 70)).toEqual({
      way: 'b',
      amount: 70,
    });
  });
});

it('whatever passes: what is found passes, and one fine step less does not', () => {
  const passing = fc.uniqueArray(fc.integer({ min: 1, max: 80 }), { maxLength: 80 });
  fc.assert(
    fc.property(passing, (steps) => {
      const passes = (_: string, amount: number): boolean => steps.includes(amount / 5);
      const found = smallestChange(['only'], STEPS, passes);
      if (!found) {
        // Then no coarse step passes.
        expect(steps.filter((step) => step % 8 === 0)).toEqual([]);
        return;
      }
      expect(passes('only', found.amount)).toBe(true);
      expect(passes('only', found.amount - 5)).toBe(false);
    }),
  );
});

it('nothing is found in nothing, and the last step is the greatest round amount', () => {
  expect(smallestChange([], STEPS, () => true)).toBeNull();
  expect(smallestChange([1], { ...STEPS, most: 4.9 }, () => true)).toBeNull();
  expect(smallestChange([1], { ...STEPS, most: 93 }, (_, amount) => amount >= 90)).toEqual({
    way: 1,
    amount: 90,
  });
});

it('trials are few: each way at most once a coarse step, and halvings between two of them', () => {
  let trials = 0;
  smallestChange([1, 2, 3], STEPS, (_, amount) => {
    trials++;
    return amount >= 395;
  });
  // Ten coarse steps; then three halvings for the first way, and one look at each other way.
  expect(trials).toBeLessThanOrEqual(3 * 9 + 1 + 3 + 2);
});
