/** All that is told of a turn, from what was decided about it. */

import type { Interval, Seconds } from '../../score/time-line.ts';
import type { SideIndex } from '../bindings/binding.ts';
import {
  barAt,
  MOMENT,
  type Hand,
  type PlanInstance,
  type PlanPlayer,
  type PlanStation,
} from './instance.ts';
import type { Need } from './needs.ts';
import type { AtPage, PlanView, Turn } from './plan.ts';

export interface DecidedTurn {
  readonly instance: PlanInstance;
  readonly needs: readonly Need[];
  readonly station: PlanStation;
  /** What each side of the station shows afterwards. */
  readonly shown: readonly PlanView[];
  readonly turner: PlanPlayer;
  readonly hand: Hand;
  readonly at: Seconds;
  readonly seconds: Seconds;
  readonly fromState: number;
  readonly toState: number;
  readonly liftedFrom: SideIndex;
  /** As `Turn.window`. */
  readonly window: Interval;
}

export function completeTurn(decided: DecidedTurn): Turn {
  const { instance, needs, station, shown, turner, window, at, seconds } = decided;
  const { hand, fromState, toState, liftedFrom } = decided;
  const bar = barAt(turner, at);
  const readers = station.sides.flatMap(({ reader }) => (reader === null ? [] : [reader]));
  return {
    station: station.id,
    player: turner.id,
    hand,
    at,
    seconds,
    direction: toState > fromState ? 'forward' : 'back',
    fromState,
    toState,
    liftedFrom,
    bar: bar?.label ?? null,
    pass: bar?.pass ?? null,
    readers: readers.map((reader) => atPage(instance, needs, reader, at)),
    window,
    margin: window.to - window.from - seconds,
    servesPartner: station.sides.some(
      ({ reader }, side) =>
        reader !== null && reader !== turner.id && (shown[side] ?? []).some((page) => page !== null),
    ),
  };
}

/** Where a player's part is at a time: on a page that he goes on with, or between two. */
function atPage(instance: PlanInstance, needs: readonly Need[], reader: string, time: Seconds): AtPage {
  const index = instance.players.findIndex(({ id }) => id === reader);
  const player = instance.players[index];
  const own = needs.filter((need) => need.player === index);
  const last = own.findLast(({ from }) => from <= time + MOMENT);
  const next = own.find(({ to }) => to > time + MOMENT);
  return {
    player: reader,
    page: last?.page ?? null,
    during: last !== undefined && last.page === next?.page,
    bar: player ? (barAt(player, time)?.label ?? null) : null,
  };
}
