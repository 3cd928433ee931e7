/** Which page plan the window shows: one that is looked at, the kept one as the concert is now, or the best. */

import { expect, it } from 'vitest';
import { keepPlan } from '#model/commands/page-plan.ts';
import { remove } from '#model/commands/remove.ts';
import { keptPlanOf } from '#model/document/parts.ts';
import { addPaper } from '#model/commands/plan-paper.ts';
import { applyDiff } from '#model/document/diff.ts';
import type { Document } from '#model/document/document.ts';
import { instanceOf } from '#model/pages/instance/instance-of.ts';
import { planNow } from '#model/pages/planner/planner.ts';
import type { Editor } from '../../../renderer/state/editor.svelte.ts';
import { shownPlan } from '../../../renderer/state/shown-plan.ts';
import { aDocument, aPlayer, aScore, aStand, MUSIC, SETUP, SIDE } from '../../helpers/build.ts';

const oboe = aPlayer();
const desk = aStand({ y: 1500, sides: [{ ...SIDE, reader: oboe.id }] });
const BEFORE = aDocument(oboe, desk, aScore({ players: [oboe.id], music: MUSIC }));

function after(document: Document, outcome: ReturnType<typeof keepPlan>): Document {
  if (!outcome.ok) throw new Error(outcome.reason);
  return applyDiff(document, outcome.diff);
}
const EMPTY = after(BEFORE, keepPlan(BEFORE, { setup: SETUP, stations: [], turns: [] }));
const KEPT = after(EMPTY, addPaper(EMPTY, { setup: SETUP, stand: desk.id }));

const asked = instanceOf(BEFORE, SETUP);
const result = asked.ok ? planNow(asked.instance) : null;
if (!asked.ok || result?.status !== 'planned') throw new Error('no plan');
const told = {
  kind: 'told',
  document: BEFORE,
  setup: SETUP,
  answer: { kind: 'planned', instance: asked.instance, result, sights: [], notes: [] },
} as const;

/** As much of an editor as is asked. */
function shown(settled: Document, state: object, chosen: number | null) {
  const editor = { session: { settled, setup: SETUP }, turnPlans: { state, chosen } };
  return shownPlan(editor as unknown as Editor);
}

it('is none while nothing is kept or planned', () => {
  expect(shown(BEFORE, { kind: 'idle' }, null)).toBeNull();
});

it('is the best that was planned, of the document it was planned for', () => {
  expect(shown(BEFORE, told, null)).toMatchObject({ plan: result.plan, document: BEFORE });
});

it('is no older planned one while a plan is kept that cannot be judged', () => {
  const removed = remove(KEPT, { ids: [desk.id] });
  if (!removed.ok) throw new Error(removed.reason);
  const without = applyDiff(KEPT, removed.diff);
  expect(keptPlanOf(without, SETUP)).toBeDefined();
  expect(shown(without, told, null)).toBeNull();
  expect(shown(without, told, 0)?.plan).toBe(result.front[0]?.plan);
});

it('is the kept one, of the document as it is now, unless a planned one is looked at', () => {
  const kept = shown(KEPT, told, null);
  expect(kept?.document).toBe(KEPT);
  expect(kept?.plan.stations).toMatchObject([
    {
      station: desk.id,
      kind: 'book',
      views: [
        [
          [null, null],
          [null, null],
        ],
      ],
    },
  ]);
  expect(shown(KEPT, { kind: 'idle' }, null)).toEqual(kept);
  expect(shown(KEPT, told, 0)?.plan).toBe(result.front[0]?.plan);
});
