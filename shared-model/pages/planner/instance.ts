/** What there is to plan: who reads which pages when, who is free to turn, and where paper may be set. Times are seconds. */

import type { Interval, PageReading, Seconds, TimeLine } from '../../score/time-line.ts';
import type { Pass } from '../../score/words/bar-words.ts';
import type { BindingKind, SideIndex } from '../bindings/binding.ts';

export type Hand = 'left' | 'right';

/** A stretch in which a player has hands to spare. */
export interface FreeWindow extends Interval {
  readonly hands: readonly Hand[];
  /** He plays nothing, so he needs no page either. */
  readonly silent: boolean;
}

/** A bar as it is played: a repeated bar is listed each time. */
export interface PlayedBar {
  /** As printed in the part; as of `barLabels` where that does not tell which bar it is. */
  readonly label: string;
  /** Left out: not known, or played once. */
  readonly pass?: Pass;
  readonly from: Seconds;
}

export interface PlanPlayer {
  readonly id: string;
  /** Pages of his part; a part of no pages belongs to somebody who only turns. */
  readonly pages: number;
  /** In the order of the performance; a repeat lists a page again. */
  readonly readings: readonly PageReading[];
  readonly free: readonly FreeWindow[];
  readonly bars?: readonly PlayedBar[];
  /** How long before it is read a page must be in view; without it the length of the bar before, or 2 s if there is none. */
  readonly lookAhead?: Seconds;
}

/** Where one reader's pages stand at a station. */
export interface PlanSide {
  /** null: nobody reads here. */
  readonly reader: string | null;
  /** Pages that fit side by side. */
  readonly width: number;
  /** The reader's sides from his left to his right are in the order of this number. */
  readonly position: number;
}

/** Somebody's hand gets to a leaf that lies on a side, and takes it over to the other one. */
export interface StationReach {
  readonly player: string;
  readonly hand: Hand;
  /** The side on which the leaf lies before it is turned. Of a single desk: 0. */
  readonly side: SideIndex;
  /** From the moment the hand is free to the moment it is free again. */
  readonly seconds: Seconds;
}

/** One desk, or two back to back, that stand there or may be set there. */
export interface PlanStation {
  readonly id: string;
  /** Among stations that serve equally well the one with the lowest number is set first. */
  readonly order: number;
  readonly sides: readonly [PlanSide] | readonly [PlanSide, PlanSide];
  readonly bindings: readonly BindingKind[];
  readonly reach: readonly StationReach[];
}

export interface PlanLimits {
  readonly maxStations: number;
  /** States the search may look at before it stops and says how far it got. */
  readonly maxStates: number;
}

/** This page is printed there. */
export interface PagePin {
  readonly kind: 'page';
  readonly station: string;
  readonly side: SideIndex;
  readonly state: number;
  /** From the reader's left; null: anywhere in the view. */
  readonly slot: number | null;
  readonly page: number;
}

/** There is a turn at this station, by this player, wholly within this window. */
export interface TurnPin extends Interval {
  readonly kind: 'turn';
  readonly station: string;
  readonly player: string;
}

export type Pin = PagePin | TurnPin;

export interface PlanInstance {
  readonly players: readonly PlanPlayer[];
  readonly stations: readonly PlanStation[];
  readonly limits?: Partial<PlanLimits>;
  readonly pins?: readonly Pin[];
}

export const USUAL_LIMITS: PlanLimits = { maxStations: 12, maxStates: 3_000_000 };

/** Of a player without bars. */
const USUAL_LOOK_AHEAD: Seconds = 2;

/** Two moments nearer than this are one: far less than a hand could notice, far more than rounding adds up to. */
export const MOMENT: Seconds = 1e-6;

export const BOTH_HANDS: readonly Hand[] = ['left', 'right'];

export function limitsOf(instance: PlanInstance): PlanLimits {
  return { ...USUAL_LIMITS, ...instance.limits };
}

/** A player as his time line has him, free with both hands wherever he is silent. */
export function playerOf(id: string, timeLine: TimeLine, bars: readonly PlayedBar[] = []): PlanPlayer {
  return {
    id,
    pages: timeLine.readings.reduce((most, { page }) => Math.max(most, page), 0),
    readings: timeLine.readings,
    free: timeLine.silences.map(({ from, to }) => ({ from, to, hands: BOTH_HANDS, silent: true })),
    bars,
  };
}

/** How long before `time` a page has to be in view for what is read from then on. */
export function lookAheadAt(player: PlanPlayer, time: Seconds): Seconds {
  if (player.lookAhead !== undefined) return player.lookAhead;
  const bars = player.bars ?? [];
  const index = lastBarBefore(bars, time);
  const [bar, next] = [bars[index], bars[index + 1]];
  return bar ? (next?.from ?? time) - bar.from || USUAL_LOOK_AHEAD : USUAL_LOOK_AHEAD;
}

/** The bar that is being played at `time`; null: not known. */
export function barAt(player: PlanPlayer, time: Seconds): PlayedBar | null {
  const bars = player.bars ?? [];
  return bars[lastBarBefore(bars, time + 2 * MOMENT)] ?? null;
}

/** Index of the last bar that begins before `time`, by halving; -1: none. */
function lastBarBefore(bars: readonly PlayedBar[], time: Seconds): number {
  let [low, high] = [0, bars.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((bars[middle]?.from ?? Infinity) < time - MOMENT) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}
