/** Kept page plans, in words. */

import type { Sentence } from '../sentence-parts.ts';

const broken: Sentence = ({ measured, detail }) => {
  const others = measured - 1;
  const worst = String(detail['worst'] ?? '');
  return {
    headline: `The page plan that is kept breaks ${measured === 1 ? 'a rule' : `${measured} rules`}`,
    text:
      others > 0
        ? `${worst} The page turns list ${others === 1 ? 'the other' : `the other ${others}`}.`
        : worst,
    advice: 'Change the turns or the pages by hand, or plan the page turns again.',
  };
};

export const turnsSentence = { 'turns.broken': broken } as const;
