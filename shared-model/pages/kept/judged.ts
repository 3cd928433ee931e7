/** The kept plan of a setup as the concert is now, judged by the rules that the planner's plans keep. */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { PagePlanRecord } from '../../document/records.ts';
import { keptPlanOf, scoreOf } from '../../document/parts.ts';
import { performanceOf, type Performance } from '../../score/music/performance.ts';
import { instanceOf } from '../instance/instance-of.ts';
import type { PlanInstance } from '../planner/instance.ts';
import { judgePlan, type Judgement } from '../planner/judge.ts';
import type { Plan } from '../planner/plan.ts';
import { planOf } from './plan-of.ts';

export interface JudgedPlan {
  readonly record: PagePlanRecord;
  readonly instance: PlanInstance;
  readonly performance: Performance;
  /** Its turns and stations in the order of the record. */
  readonly plan: Plan;
  readonly judgement: Judgement;
}

/** Null: no plan is kept, or there is nothing to plan (`instanceOf` says what is missing). Asked again of the same document it costs nothing. */
export function judgedPlan(document: Document, setup: Id<'setup'>): JudgedPlan | null {
  const known = JUDGED.get(document.records) ?? new Map<string, JudgedPlan | null>();
  JUDGED.set(document.records, known);
  const before = known.get(setup);
  if (before !== undefined) return before;
  const judged = judge(document, setup);
  known.set(setup, judged);
  return judged;
}

const JUDGED = new WeakMap<Document['records'], Map<string, JudgedPlan | null>>();

function judge(document: Document, setup: Id<'setup'>): JudgedPlan | null {
  const record = keptPlanOf(document, setup);
  const score = scoreOf(document, setup);
  if (!record || !score) return null;
  const asked = instanceOf(document, setup);
  if (!asked.ok) return null;
  const performance = performanceOf(score.music);
  const { instance } = asked;
  const plan = planOf(instance, record, performance);
  return { record, instance, performance, plan, judgement: judgePlan(instance, plan) };
}
