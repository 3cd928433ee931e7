/** The kept page plan of the setup in view: kept, begun, let go, and its pins. */

import { dropPlan, keepPlan } from '#model/commands/page-plan.ts';
import { addPin, removePins } from '#model/commands/plan-pins.ts';
import { addTurn } from '#model/commands/plan-turns.ts';
import { asId } from '#model/document/ids.ts';
import type { KeptPin } from '#model/document/kept-plan.ts';
import { scoreOf } from '#model/document/parts.ts';
import { keptOf } from '#model/pages/kept/plan-of.ts';
import type { JudgedPlan } from '#model/pages/kept/judged.ts';
import { nextTurn } from '#model/pages/kept/next-turn.ts';
import { placeAt } from '#model/score/music/places.ts';
import type { Plan } from '#model/pages/planner/plan.ts';
import { performanceOf } from '#model/score/music/performance.ts';
import type { Editor } from '../../state/editor.svelte.ts';
import { focusOnNew } from '../looking.ts';

/** Keeps a plan and shows it as the kept one. Its times are those of the music that it was planned for. */
export function keepPlanned(editor: Editor, plan: Plan): void {
  const { session, turnPlans } = editor;
  const planned = turnPlans.state.kind === 'told' ? turnPlans.state.document : session.settled;
  const score = scoreOf(planned, session.setup);
  if (!score) return;
  const kept = keptOf(plan, performanceOf(score.music));
  if (editor.carryOut(keepPlan(session.settled, { setup: session.setup, ...kept }))) lookAtKept(editor);
}

export function startEmptyPlan(editor: Editor): void {
  const { settled, setup } = editor.session;
  if (editor.carryOut(keepPlan(settled, { setup, stations: [], turns: [] }))) lookAtKept(editor);
}

/** What is planned stays to be looked at. */
export function letPlanGo(editor: Editor): void {
  const { settled, setup } = editor.session;
  editor.carryOut(dropPlan(settled, { setup }));
  focusOnNew(() => 'turns');
}

function lookAtKept({ turnPlans }: Editor): void {
  turnPlans.chosen = null;
  focusOnNew(() => 'turns');
}

/** The index of the new turn; null: it was refused. */
export function addNextTurn(
  editor: Editor,
  { instance, performance, plan }: JudgedPlan,
  station: string,
): number | null {
  const { settled, setup } = editor.session;
  const next = nextTurn(instance, plan, station);
  if (!next) return null;
  const turn = {
    station: asId<'stand'>(station),
    player: asId<'player'>(next.player),
    hand: next.hand,
    place: placeAt(performance, next.at),
    direction: 'forward',
  } as const;
  if (!editor.carryOut(addTurn(settled, { setup, turn }))) return null;
  return plan.turns.filter(({ at }) => placeAt(performance, at) <= turn.place).length;
}

/** A pin, or taken out what holds the same. */
export function togglePin(editor: Editor, pin: KeptPin, holding: readonly number[]): void {
  const { settled, setup } = editor.session;
  const outcome =
    holding.length > 0 ? removePins(settled, { setup, pins: holding }) : addPin(settled, { setup, pin });
  editor.carryOut(outcome);
}
