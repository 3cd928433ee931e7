/** What paper says of a plan that does not keep every rule. */

import { msgid, ngettext } from '../../words/say.ts';
import type { PlanInstance } from './instance.ts';
import { judgePlan } from './judge.ts';
import type { Plan } from './plan.ts';

export interface PlanOfInstance {
  readonly instance: PlanInstance;
  readonly plan: Plan;
}

export function brokenRules({ instance, plan }: PlanOfInstance): number {
  return judgePlan(instance, plan).violations.length;
}

/** One sentence for whoever has the print alone; null: every rule is kept. */
export function brokenRulesWords(planned: PlanOfInstance): string | null {
  const count = brokenRules(planned);
  if (count === 0) return null;
  return ngettext(
    msgid`This plan breaks ${count} rule; see the page turns in the editor.`,
    `This plan breaks ${count} rules; see the page turns in the editor.`,
    count,
  );
}
