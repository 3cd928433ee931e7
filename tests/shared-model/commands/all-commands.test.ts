import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyDiff } from '#model/document/diff.ts';
import { documentOfEveryKind } from '../document/every-kind.ts';
import { frozen } from '../document/freeze.ts';
import { answerOf, anyNumbers } from './any-command.ts';
import { checkLaws } from './check-laws.ts';

describe('any command after any others', () => {
  it('keeps the laws: it changes nothing itself, can be taken back, and leaves a document that can be saved', () => {
    const tally = { done: 0, empty: 0, refused: 0 };
    fc.assert(
      fc.property(fc.array(anyNumbers, { minLength: 1, maxLength: 12 }), (steps) => {
        let document = frozen(documentOfEveryKind());
        for (const numbers of steps) {
          const outcome = answerOf(document, numbers);
          checkLaws(document, outcome);
          if (!outcome.ok) tally.refused++;
          else if (outcome.diff.size === 0) tally.empty++;
          else tally.done++;
          if (outcome.ok) document = frozen(applyDiff(document, outcome.diff));
        }
      }),
      { numRuns: 120 },
    );
    // So that the property is about something: each of the answers has to come up.
    expect(tally.done).toBeGreaterThan(150);
    expect(tally.refused).toBeGreaterThan(50);
    expect(tally.empty).toBeGreaterThan(2);
  });

  it('answers the same to the same question', () => {
    fc.assert(
      fc.property(anyNumbers, (numbers) => {
        const document = frozen(documentOfEveryKind());
        expect(answerOf(document, numbers)).toEqual(answerOf(document, numbers));
      }),
      { numRuns: 300 },
    );
  });
});
