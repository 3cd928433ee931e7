/** The stands that a player reads from, from his left to his right. */

import type { SideIndex } from '../../pages/bindings/binding.ts';
import type { PlanStation } from '../../pages/planner/instance.ts';
import type { PlanView, StationPlan, Turn } from '../../pages/planner/plan.ts';
import type { PlannedPaper } from './order.ts';

export interface OwnPaper {
  readonly plan: StationPlan;
  readonly station: PlanStation;
  readonly side: SideIndex;
}

/** Also when none of his pages is on the paper there. */
export function paperOf({ instance, plan }: PlannedPaper, player: string): OwnPaper[] {
  const found = plan.stations.flatMap((own): OwnPaper[] => {
    const station = instance.stations.find(({ id }) => id === own.station);
    const sides = station?.sides ?? [];
    return station
      ? sides.flatMap(({ reader }, side) =>
          reader === player ? [{ plan: own, station, side: side as SideIndex }] : [],
        )
      : [];
  });
  return found.toSorted((a, b) => positionOf(a) - positionOf(b));
}

function positionOf({ station, side }: OwnPaper): number {
  return station.sides[side]?.position ?? 0;
}

/** What he sees there after so many leaves. */
export function viewIn({ plan, side }: OwnPaper, state: number): PlanView {
  return plan.views[side]?.[state] ?? [];
}

/** Where each of his stations is after the turns given. */
export function statesAfter(paper: readonly OwnPaper[], turns: readonly Turn[]): number[] {
  return paper.map(({ plan }) => {
    const last = turns.findLast(({ station }) => station === plan.station);
    return last?.toState ?? 0;
  });
}
