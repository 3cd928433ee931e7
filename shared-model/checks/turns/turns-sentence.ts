/** Kept page plans, in words. */

import { t } from '../../words/say.ts';
import type { Sentence } from '../sentence-parts.ts';

const broken: Sentence = ({ measured, detail }) => {
  const others = measured - 1;
  const worst = String(detail['worst'] ?? '');
  return {
    headline:
      measured === 1
        ? t`The page plan that is kept breaks a rule`
        : t`The page plan that is kept breaks ${measured} rules`,
    text: [worst, othersWords(others)].filter(Boolean).join(' '),
    advice: t`Change the turns or the pages by hand, or plan the page turns again.`,
  };
};

function othersWords(others: number): string {
  if (others < 1) return '';
  return others === 1 ? t`The page turns list the other.` : t`The page turns list the other ${others}.`;
}

export const turnsSentence = { 'turns.broken': broken } as const;
