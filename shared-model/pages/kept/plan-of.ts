/** A kept plan as the planner would tell it: everything that follows from what was decided is worked out anew. */

import type { Id } from '../../document/ids.ts';
import type { KeptPin, KeptStation, KeptTurn } from '../../document/kept-plan.ts';
import type { PagePlanRecord } from '../../document/records.ts';
import type { Performance } from '../../score/music/performance.ts';
import { completeTurn } from '../planner/complete-turn.ts';
import { sightsOf, type Sight } from '../planner/in-view.ts';
import type { Pin, PlanInstance, PlanPlayer, PlanStation } from '../planner/instance.ts';
import { needsOf, type Need } from '../planner/needs.ts';
import { liftedFrom, type Plan, type StationPlan, type Turn } from '../planner/plan.ts';
import { placeAt, timeAt } from '../../score/music/places.ts';
import { turnWindow } from './turn-window.ts';

type Kept = Pick<PagePlanRecord, 'stations' | 'turns'>;

/** Turns stay in their order. Of a stand or a player that is not in the instance any more nothing is known but the name. */
export function planOf(instance: PlanInstance, kept: Kept, performance: Performance): Plan {
  const stations: readonly StationPlan[] = kept.stations;
  const bare = kept.turns.map((turn) => bareTurn(turn, { instance, stations, performance }));
  const needs = needsOf(instance);
  const sights = sightsOf(instance, { stations, turns: bare });
  return { stations, turns: bare.map((turn) => told(turn, { instance, stations, needs, sights })) };
}

/** Its paper and its turns as they can be kept. */
export function keptOf({ stations, turns }: Plan, performance: Performance): Kept {
  return {
    stations: stations.map((own): KeptStation => ({ ...own, station: own.station as Id<'stand'> })),
    turns: turns.map(({ station, player, hand, at, fromState, toState }): KeptTurn => ({
      station: station as Id<'stand'>,
      player: player as Id<'player'>,
      hand,
      place: placeAt(performance, at),
      fromState,
      toState,
    })),
  };
}

/** Pins on the clock, in the same order. */
export function pinsOf(pins: readonly KeptPin[], performance: Performance): Pin[] {
  return pins.map((pin) =>
    pin.kind === 'page'
      ? pin
      : { ...pin, from: timeAt(performance, pin.from), to: timeAt(performance, pin.to) },
  );
}

interface Bare {
  readonly instance: PlanInstance;
  readonly stations: readonly StationPlan[];
  readonly performance: Performance;
}

/** With its time and what it needs; where nobody's hand gets to the leaf that is not known, and 0. */
function bareTurn(turn: KeptTurn, { instance, stations, performance }: Bare): Turn {
  const own = stations.find(({ station }) => station === turn.station);
  const direction = turn.toState > turn.fromState ? 'forward' : 'back';
  const side = own ? liftedFrom(own, direction) : 0;
  const reach = (instance.stations.find(({ id }) => id === turn.station)?.reach ?? []).filter(
    (one) => one.player === turn.player && one.hand === turn.hand && one.side === side,
  );
  const seconds = reach.reduce((least, one) => Math.min(least, one.seconds), Infinity);
  const at = timeAt(performance, turn.place);
  const { station, player, hand, fromState, toState } = turn;
  return {
    ...{ station, player, hand, at, direction, fromState, toState, liftedFrom: side },
    seconds: Number.isFinite(seconds) ? seconds : 0,
    bar: null,
    pass: null,
    readers: [],
    window: { from: at, to: at },
    margin: 0,
    servesPartner: false,
  };
}

interface Played {
  readonly instance: PlanInstance;
  readonly stations: readonly StationPlan[];
  readonly needs: readonly Need[];
  readonly sights: readonly Sight[];
}

function told(turn: Turn, played: Played): Turn {
  const { instance, stations, needs, sights } = played;
  const station: PlanStation | undefined = instance.stations.find(({ id }) => id === turn.station);
  const turner: PlanPlayer | undefined = instance.players.find(({ id }) => id === turn.player);
  const own = stations.find((one) => one.station === turn.station);
  if (!station || !turner || !own) return turn;
  const shownIn = (state: number) => own.views.map((states) => states[state] ?? []);
  const window = turnWindow({
    ...{ instance, needs, sights, turner, hand: turn.hand, station: station.id },
    span: { from: turn.at, to: turn.at + turn.seconds },
    around: [shownIn(turn.fromState), shownIn(turn.toState)],
  });
  return completeTurn({ ...turn, instance, needs, station, turner, window, shown: shownIn(turn.toState) });
}
