/** The turns of a kept page plan, by hand. */

import type { Id } from '../document/ids.ts';
import type { KeptTurn } from '../document/kept-plan.ts';
import type { PagePlanRecord } from '../document/records.ts';
import { t } from '../words/say.ts';
import { refuse, type Command } from './command.ts';
import { changePlan, inOrder, type OfSetup } from './page-plan.ts';

type Direction = 'forward' | 'back';

/** What is decided about a turn; which leaf it moves follows from the turns before it. */
export type TurnChoice = Omit<KeptTurn, 'fromState' | 'toState'> & { readonly direction: Direction };

export interface AddTurn extends OfSetup {
  readonly turn: TurnChoice;
}

export const addTurn: Command<AddTurn> = (document, { setup, turn }) =>
  changePlan(document, setup, t`add a page turn`, (plan) => {
    if (!plan.stations.some(({ station }) => station === turn.station))
      return refuse(t`Put paper on that stand first.`);
    return withTurns(plan, [...plan.turns, stated(turn)]);
  });

/** A turn of the kept plan by its index, in the order of their places. */
export interface OfTurn extends OfSetup {
  readonly turn: number;
}

export interface ChangeTurn extends OfTurn {
  readonly fields: Partial<TurnChoice>;
}

export const changeTurn: Command<ChangeTurn> = (document, { setup, turn, fields }) =>
  changePlan(document, setup, t`change a page turn`, (plan) => {
    const known = plan.turns[turn];
    if (!known) return refuse(t`That turn is not there any more.`);
    const { fromState, toState, ...kept } = known;
    const direction: Direction = toState > fromState ? 'forward' : 'back';
    return withTurns(plan, plan.turns.with(turn, stated({ ...kept, direction, ...fields })));
  });

export const removeTurn: Command<OfTurn> = (document, { setup, turn }) =>
  changePlan(document, setup, t`remove a page turn`, (plan) =>
    plan.turns[turn]
      ? withTurns(
          plan,
          plan.turns.filter((_, index) => index !== turn),
        )
      : refuse(t`That turn is not there any more.`),
  );

function stated({ direction, ...turn }: TurnChoice): KeptTurn {
  return {
    ...turn,
    ...(direction === 'forward' ? { fromState: 0, toState: 1 } : { fromState: 1, toState: 0 }),
  };
}

/**
 * Leaf after leaf: each turn begins with the leaves that the one before it at its stand left turned. One back that
 * finds none to take back stays as it is, for the judge to tell.
 */
function withTurns(plan: PagePlanRecord, turns: readonly KeptTurn[]): PagePlanRecord {
  const states = new Map<Id<'stand'>, number>();
  return {
    ...plan,
    turns: inOrder(turns).map((turn) => {
      const isForward = turn.toState > turn.fromState;
      const before = states.get(turn.station) ?? 0;
      const fromState = isForward ? before : Math.max(1, before);
      const toState = isForward ? fromState + 1 : fromState - 1;
      states.set(turn.station, toState);
      return { ...turn, fromState, toState };
    }),
  };
}
