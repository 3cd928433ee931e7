/** The page plan that the window shows of the setup in view: what the time strip plays and what is printed from. */

import type { Document } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import { judgedPlan } from '#model/pages/kept/judged.ts';
import { keptPlanOf } from '#model/document/parts.ts';
import type { PlanInstance } from '#model/pages/planner/instance.ts';
import type { Plan } from '#model/pages/planner/plan.ts';
import type { Editor } from './editor.svelte.ts';

export interface ShownPlan {
  /** The document that the plan is of. */
  readonly document: Document;
  readonly setup: Id<'setup'>;
  readonly instance: PlanInstance;
  readonly plan: Plan;
}

/**
 * A planned one while it is looked at, else the kept one as the concert is now, else the best that was planned. Null: no
 * plan of this setup is known, or one is kept that cannot be judged now: an older one would not be what is kept.
 * Components may read it in a derived value.
 */
export function shownPlan(editor: Editor): ShownPlan | null {
  const { session, turnPlans } = editor;
  const isKept = keptPlanOf(session.settled, session.setup) !== undefined;
  if (isKept && turnPlans.chosen === null) return keptShown(editor);
  return plannedShown(editor) ?? keptShown(editor);
}

function keptShown({ session }: Editor): ShownPlan | null {
  const { settled, setup } = session;
  const kept = judgedPlan(settled, setup);
  return kept && { document: settled, setup, instance: kept.instance, plan: kept.plan };
}

function plannedShown({ session, turnPlans }: Editor): ShownPlan | null {
  const { state, chosen } = turnPlans;
  if (state.kind !== 'told' || state.setup !== session.setup || state.answer.kind !== 'planned') return null;
  const { instance, result } = state.answer;
  const plan = result.front[chosen ?? 0]?.plan ?? result.plan;
  return { document: state.document, setup: state.setup, instance, plan };
}
