/** What is seen and done at one moment of a run. */

import type { Seconds } from '../../score/time-line.ts';
import type { PlanView, Turn } from '../planner/plan.ts';
import type { InstrumentSwap } from './changes.ts';
import type { PlayerLane } from './player-lane.ts';
import type { PagePlace } from './player-lane.ts';
import type { Run, RunBar } from './run.ts';
import type { StationLane } from './station-lane.ts';
import { holding, lastBegun } from './stretches.ts';

export interface SideNow {
  readonly reader: string | null;
  /** While a leaf is in motion: what lay there before, which nobody can read. */
  readonly view: PlanView;
  /** Which place of the view is being read; null: none. */
  readonly reading: number | null;
}

export interface StationNow {
  readonly station: string;
  readonly state: number;
  /** What sets a leaf in motion. */
  readonly turn: Turn | null;
  readonly sides: readonly SideNow[];
}

export interface PlayerNow {
  readonly player: string;
  /** The page that he is on; null before the beginning, and after the end. */
  readonly page: number | null;
  /** Where it lies before him; null: it does not. */
  readonly place: PagePlace | null;
  /** He plays nothing. */
  readonly rests: boolean;
  /** His page is not before him though he plays from it. */
  readonly lost: boolean;
}

export interface RunMoment {
  readonly bar: RunBar | null;
  readonly players: readonly PlayerNow[];
  readonly stations: readonly StationNow[];
  readonly turns: readonly Turn[];
  readonly swaps: readonly InstrumentSwap[];
}

/** An end is no longer in what ends there. */
export function momentAt(run: Run, time: Seconds): RunMoment {
  const players = run.players.map((lane) => playerAt(lane, time));
  return {
    bar: holding(run.bars, time),
    players,
    stations: run.stations.map((lane) => stationAt(lane, players, time)),
    turns: run.players.flatMap(({ turns }) => turns.filter((turn) => isUnderWay(turn, time))),
    swaps: run.swaps.filter((swap) => isUnderWay(swap, time)),
  };
}

/** Whether nothing that is told has changed. Both are of one run, of which they hold the pieces. */
export function isSameMoment(a: RunMoment, b: RunMoment): boolean {
  return (
    a.bar === b.bar &&
    isAlike(a.turns, b.turns, isOne) &&
    isAlike(a.swaps, b.swaps, isOne) &&
    isAlike(a.players, b.players, isSamePlayer) &&
    isAlike(a.stations, b.stations, isSameStation)
  );
}

function isAlike<T>(a: readonly T[], b: readonly T[], isSame: (one: T, other: T) => boolean): boolean {
  return a.length === b.length && a.every((one, index) => isSame(one, b[index] as T));
}

const isOne = <T>(one: T, other: T): boolean => one === other;

function isSamePlayer(a: PlayerNow, b: PlayerNow): boolean {
  return a.page === b.page && a.place === b.place && a.rests === b.rests && a.lost === b.lost;
}

/** What is read there, the players tell. */
function isSameStation(a: StationNow, b: StationNow): boolean {
  return a.state === b.state && a.turn === b.turn;
}

function playerAt({ player, spans, rests }: PlayerLane, time: Seconds): PlayerNow {
  const span = holding(spans, time);
  return {
    player,
    page: span?.page ?? null,
    place: span?.place ?? null,
    rests: holding(rests, time) !== null,
    lost: span !== null && span.needed && span.place === null,
  };
}

function stationAt(
  { station, bound, sides, spans }: StationLane,
  players: readonly PlayerNow[],
  time: Seconds,
): StationNow {
  const { state = 0, turn = null } = spans[Math.max(0, lastBegun(spans, time))] ?? {};
  return {
    station,
    state,
    turn,
    sides: sides.map(({ reader }, side) => ({
      reader,
      view: bound.views[side]?.[state] ?? [],
      reading: readIn(players, station, side),
    })),
  };
}

function readIn(players: readonly PlayerNow[], station: string, side: number): number | null {
  const found = players.find(({ place }) => place?.station === station && place.side === side);
  return found?.place?.slot ?? null;
}

function isUnderWay({ at, seconds }: { at: Seconds; seconds: Seconds | null }, time: Seconds): boolean {
  return seconds !== null && time >= at && time < at + seconds;
}
