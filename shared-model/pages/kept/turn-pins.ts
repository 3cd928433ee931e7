/** Pins on turns of a kept plan. */

import { asId } from '../../document/ids.ts';
import type { KeptTurnPin } from '../../document/kept-plan.ts';
import type { Interval } from '../../score/time-line.ts';
import { MOMENT } from '../planner/instance.ts';
import type { Turn } from '../planner/plan.ts';
import type { JudgedPlan } from './judged.ts';
import { placeAt, timeAt } from '../../score/music/places.ts';

/** Indices of the pins that ask for this turn. */
export function pinsOnTurn({ record, performance }: JudgedPlan, turn: Turn): number[] {
  return record.pins.flatMap((pin, index) => {
    if (pin.kind !== 'turn' || pin.station !== turn.station || pin.player !== turn.player) return [];
    const window = { from: timeAt(performance, pin.from), to: timeAt(performance, pin.to) };
    return holds(window, turn) ? [index] : [];
  });
}

/**
 * Holds the turn where it is: the planner begins a turn as soon as it may, so only a turn that another one delays comes
 * later, in the same rest. One that has no time there is held at its own time and nowhere else.
 */
export function turnPin({ performance }: JudgedPlan, turn: Turn): KeptTurnPin {
  const { station, player, window, at, seconds } = turn;
  const to = holds(window, turn) ? window.to : at + seconds;
  return {
    kind: 'turn',
    station: asId(station),
    player: asId(player),
    from: placeAt(performance, at),
    to: placeAt(performance, to),
  };
}

function holds({ from, to }: Interval, { at, seconds }: Turn): boolean {
  return from <= at + MOMENT && to >= at + seconds - MOMENT;
}
