/** How a kept plan stands with the rules: as lines of plain text, and as plain data. */

import { t } from '../../words/say.ts';
import { planPlain, plain, type Plain } from '../planner/plan-json.ts';
import { violationSubjects, violationWords } from '../planner/violation-words.ts';
import { planWords, shortCostWords, type NameOf } from '../planner/words.ts';
import type { JudgedPlan } from './judged.ts';

/** What it is, and which rules it breaks. */
export function keptWords(kept: JudgedPlan, nameOf: NameOf): string[] {
  return [...rulesWords(kept, nameOf), ...planWords(kept.instance, kept.plan, nameOf)];
}

function rulesWords(kept: JudgedPlan, nameOf: NameOf): string[] {
  const { violations, cost } = kept.judgement;
  const figures = shortCostWords(cost);
  if (violations.length === 0) return [t`The kept plan keeps every rule: ${figures}`];
  return [
    brokenWords(figures, violations.length),
    ...violations.map((violation) => `  ${violationWords(violation, kept, nameOf)}`),
  ];
}

function brokenWords(figures: string, count: number): string {
  return count === 1
    ? t`The kept plan (${figures}) breaks a rule:`
    : t`The kept plan (${figures}) breaks ${count} rules:`;
}

/** `plan`, `cost`, `keepsRules`, and of each rule that is broken its code, its details, its subjects' ids and a sentence; null: none is kept. */
export function keptJson(kept: JudgedPlan | null, nameOf: NameOf): Plain {
  if (!kept) return null;
  const { violations, cost } = kept.judgement;
  return {
    plan: planPlain(kept.plan),
    cost: plain(cost),
    keepsRules: violations.length === 0,
    violations: violations.map((violation) => ({
      ...(plain(violation) as object),
      subjects: violationSubjects(violation, kept),
      words: violationWords(violation, kept, nameOf),
    })),
  };
}
