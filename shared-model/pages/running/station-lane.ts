/** A station through the performance: which state it is in, and when a leaf is in motion. */

import type { Interval } from '../../score/time-line.ts';
import type { PlanInstance, PlanSide } from '../planner/instance.ts';
import type { Plan, StationPlan, Turn } from '../planner/plan.ts';

export interface StateSpan extends Interval {
  /** Leaves turned; while one is in motion, those turned before. */
  readonly state: number;
  /** What sets the leaf in motion; null: all lies still. */
  readonly turn: Turn | null;
}

export interface StationLane {
  readonly station: string;
  readonly bound: StationPlan;
  readonly sides: readonly PlanSide[];
  /** Without gaps, the first from -Infinity, the last to Infinity. */
  readonly spans: readonly StateSpan[];
}

/** One for each station that the plan uses and the instance has, in the order of the plan. */
export function stationLanes(instance: PlanInstance, { stations, turns }: Plan): StationLane[] {
  return stations.flatMap((bound) => {
    const sides = instance.stations.find(({ id }) => id === bound.station)?.sides;
    const own = turns.filter(({ station }) => station === bound.station);
    return sides ? [{ station: bound.station, bound, sides, spans: spansOf(own) }] : [];
  });
}

/** Of a broken plan, in which a turn begins before another is over, the later one begins when that is over. */
function spansOf(turns: readonly Turn[]): StateSpan[] {
  const spans: StateSpan[] = [];
  let [state, from] = [0, -Infinity];
  for (const turn of turns.toSorted((a, b) => a.at - b.at)) {
    const begins = Math.max(from, turn.at);
    const ends = Math.max(begins, turn.at + turn.seconds);
    spans.push({ state, from, to: begins, turn: null }, { state, from: begins, to: ends, turn });
    [state, from] = [turn.toState, ends];
  }
  return [...spans, { state, from, to: Infinity, turn: null }].filter((span) => span.to > span.from);
}
