/** What happens to a player's paper and hands, one thing after the other. */

import type { PlanView, Turn } from '../../pages/planner/plan.ts';
import type { InstrumentSwap } from '../../pages/running/changes.ts';
import type { Run } from '../../pages/running/run.ts';
import type { Seconds } from '../../score/time-line.ts';
import type { PlannedPaper } from './order.ts';
import { paperOf, statesAfter, viewIn, type OwnPaper } from './own-paper.ts';

/** What lies on one of his stands. */
export interface Shown {
  readonly station: string;
  readonly view: PlanView;
  /** It has just been turned. */
  readonly isNew: boolean;
}

export type Moment =
  | { readonly kind: 'beginning'; readonly shown: readonly Shown[] }
  | {
      readonly kind: 'turn';
      readonly turn: Turn;
      /** Among all turns of the plan, from 1. */
      readonly number: number;
      readonly shown: readonly Shown[];
    }
  | { readonly kind: 'swap'; readonly swap: InstrumentSwap };

/** In the order of time; a change of instrument comes after a turn at the same moment. */
export function momentsOf(planned: PlannedPaper, run: Run, player: string): Moment[] {
  const paper = paperOf(planned, player);
  const turns = run.turns
    .map((turn, index) => ({ turn, number: index + 1 }))
    .filter(({ turn }) => concerns(turn, player, paper));
  const own = turns.map(({ turn, number }, index): Moment => {
    const before = turns.slice(0, index + 1).map((one) => one.turn);
    return { kind: 'turn', turn, number, shown: shownAfter(paper, before) };
  });
  const swaps = run.swaps.flatMap((swap): Moment[] =>
    swap.player === player ? [{ kind: 'swap', swap }] : [],
  );
  const all = [...own, ...swaps];
  return [
    { kind: 'beginning', shown: shownAfter(paper, []) },
    ...all.toSorted((a, b) => timeOf(a) - timeOf(b)),
  ];
}

function concerns({ player, station }: Turn, who: string, paper: readonly OwnPaper[]): boolean {
  return player === who || paper.some(({ plan }) => plan.station === station);
}

function timeOf(moment: Moment): Seconds {
  if (moment.kind === 'beginning') return -Infinity;
  return moment.kind === 'turn' ? moment.turn.at : moment.swap.at;
}

function shownAfter(paper: readonly OwnPaper[], turns: readonly Turn[]): Shown[] {
  const states = statesAfter(paper, turns);
  const last = turns.at(-1);
  return paper.map((own, index) => ({
    station: own.plan.station,
    view: viewIn(own, states[index] ?? 0),
    isNew: last === undefined || last.station === own.plan.station,
  }));
}
