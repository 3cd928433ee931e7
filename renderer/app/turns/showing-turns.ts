/** The page turns under the plan: shown, planned, and found on the plan. */

import { keptPlanOf } from '#model/document/parts.ts';
import type { Turn } from '#model/pages/planner/plan.ts';
import type { Editor } from '../../state/editor.svelte.ts';
import { focusOnNew, lookAt } from '../looking.ts';

/** What was never planned, or not as the concert is now, is planned at once; a plan that is kept is shown as it is. */
export function toggleTurns(editor: Editor): void {
  const { view, session, turnPlans } = editor;
  view.turns = !view.turns;
  if (!view.turns) return;
  const { state } = turnPlans;
  const isKept = keptPlanOf(session.settled, session.setup) !== undefined;
  const isNew = state.kind !== 'idle' && state.setup === session.setup && state.document === session.settled;
  if (!isNew && !isKept) planTurns(editor);
  focusOnNew(() => 'turns');
}

export function planTurns({ session, turnPlans }: Editor): void {
  turnPlans.plan(session.settled, session.setup);
}

/** Selects who turns, and the stand, and brings both into the view. */
export function showTurn(editor: Editor, { player, station }: Turn): void {
  showRecords(editor, [player, station]);
}

/** Those of them that are there. */
export function showRecords(editor: Editor, records: readonly string[]): void {
  const ids = records.filter((id) => editor.session.settled.records.has(id));
  editor.session.select(ids);
  lookAt(editor, null, ids);
}
