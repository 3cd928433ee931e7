/** Page turns of a setup, planned step by step: the turns worker without the worker. */

import type { Document } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import { labelOf } from '#model/document/labels.ts';
import { instanceOf } from '#model/pages/instance/instance-of.ts';
import { planSights, type PlanSight } from '#model/pages/instance/placed-plan.ts';
import { relabelled } from '#model/pages/instance/relabelled.ts';
import type { PlanInstance } from '#model/pages/planner/instance.ts';
import { planning, planNow, type PlanProgress, type PlanResult } from '#model/pages/planner/planner.ts';
import type { Remedy } from '#model/pages/planner/remedies.ts';
import { waysOutOf, type Blocked } from '#model/pages/planner/ways-out.ts';

export type PlannedTurns = Extract<PlanResult, { status: 'planned' }>;

/** Everything in it goes by record ids; sentences are for people. */
export type TurnsAnswer =
  | { readonly kind: 'missing' | 'faulty'; readonly sentences: readonly string[] }
  | {
      readonly kind: 'none';
      readonly proved: boolean;
      readonly instance: PlanInstance;
      readonly remedies: readonly Remedy[];
      /** Who has no plan, with remedies of their own. */
      readonly blocked: readonly Blocked[];
      readonly notes: readonly string[];
    }
  | {
      readonly kind: 'planned';
      readonly instance: PlanInstance;
      readonly result: PlannedTurns;
      /** What the house sees with each plan of the front. */
      readonly sights: readonly (PlanSight | null)[];
      readonly notes: readonly string[];
    };

export function* turnPlanning(
  document: Document,
  setup: Id<'setup'>,
): Generator<PlanProgress, TurnsAnswer, undefined> {
  const asked = instanceOf(document, setup);
  if (!asked.ok) return { kind: 'missing', sentences: asked.missing };
  const { instance, notes } = asked;
  const result = yield* planning(instance);
  switch (result.status) {
    case 'planned': {
      const plans = result.front.map(({ plan }) => plan);
      return {
        kind: 'planned',
        instance,
        result,
        sights: planSights(document, setup, instance, plans),
        notes,
      };
    }
    case 'none': {
      const ways = yield* waysOutOf(instance);
      return { kind: 'none', proved: result.proved, instance, ...ways, notes };
    }
    case 'faulty': {
      // Found before anything is searched, so asking again in people's names costs nothing.
      const named = planNow(relabelled(instance, (id) => labelOf(document, setup, id)));
      return { kind: 'faulty', sentences: named.status === 'faulty' ? named.faults : result.faults };
    }
  }
}
