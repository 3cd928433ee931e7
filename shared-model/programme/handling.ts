/**
 * How long it takes to walk, carry, set and adjust. Walking goes by published speeds; bending and rising by MTM-1 (from
 * memory). What else hands do is marked: common practice, no source.
 */

import {
  motionTime,
  NO_TIME,
  sumOf,
  walkingSeconds,
  walkTime,
  type Span,
} from '../checks/reach/motion-times.ts';
import { BEND_AND_RISE, START, WALKING } from '../checks/reach/published.ts';
import type { Degrees, Millimetres, StockItem } from '../document/records.ts';
import { t } from '../words/say.ts';
import type { Adjustment } from './changes.ts';
import type { Task } from './tasks.ts';
import { carriersOf, type Unit } from './units.ts';

const span = (least: number, usual: number, most: number): Span => ({ least, usual, most });

/** Nearer than this nobody walks. Common practice, no source. */
const WITHIN_REACH: Millimetres = 300;

/** With empty hands, or with what one person carries. */
export function walkingTime(distance: Millimetres): Span {
  return distance < WITHIN_REACH ? NO_TIME : walkTime(distance);
}

/**
 * Two who carry something heavy go at the slow published pace, at best at the usual one; at worst they stop halfway, which
 * doubles it (common practice, no source).
 */
export function heavyCarryTime(distance: Millimetres): Span {
  return {
    least: START.usual + walkingSeconds(distance, WALKING.usual),
    usual: START.slow + walkingSeconds(distance, WALKING.slow),
    most: 2 * (START.slow + walkingSeconds(distance, WALKING.slow)),
  };
}

/** To bend for a light thing and rise with it, or to set it down. */
const STOOP = motionTime(BEND_AND_RISE);

/** Finding its mark on the floor, and looking whether it stands right. Common practice, no source. */
const FIND_MARK = span(2, 4, 10);

/**
 * To make something heavy ready to go, and again to leave it safe: brakes, legs, covers, a word to each other. Seconds at
 * either end. Common practice, no source.
 */
const HEAVY: Readonly<Partial<Record<StockItem, Span>>> = {
  piano: span(20, 45, 120),
  largeInstrument: span(10, 20, 60),
  riser: span(15, 30, 90),
};
const HEAVY_OTHERWISE = span(8, 15, 45);

/** In place, without walking. Common practice, no source. */
const TURN_LIGHT = span(1, 3, 8);
const TURN_HEAVY = span(10, 25, 90);

/** Common practice, no source. */
const ADJUST: Readonly<Record<Adjustment['what'], Span>> = {
  lip: span(3, 6, 15),
  tilt: span(2, 3, 8),
  height: span(3, 6, 20),
  lid: span(6, 12, 30),
  cable: span(15, 30, 90),
};

/** A lamp's plug and cable: to pull and coil it, or to lay and cover it. Common practice, no source. */
const CABLE = ADJUST.cable;

interface SetAnew {
  readonly turn: Degrees;
  readonly adjustments: readonly Adjustment[];
}

/** Everything that hands do in a task but carrying, with what is set anew at its end. */
export function handlingTime(task: Task, { turn, adjustments }: SetAnew): Span {
  const unit = task.from ?? task.to;
  if (!unit) return NO_TIME;
  const adjusting = adjustments.map(({ what }) => ADJUST[what]);
  if (task.work === 'turn') return sumOf(...(turn === 0 ? [] : [turning(unit)]), ...adjusting);
  const ends = [endTime(unit), endTime(unit)];
  const marked = task.to ? [FIND_MARK] : [];
  const unplugged = task.work === 'move' || !hasCable(unit) ? [] : [CABLE];
  return sumOf(...ends, ...marked, ...unplugged, ...adjusting);
}

function turning(unit: Unit): Span {
  return carriersOf(unit) === 2 ? TURN_HEAVY : TURN_LIGHT;
}

function endTime(unit: Unit): Span {
  return carriersOf(unit) === 2 ? (HEAVY[unit.thing.item] ?? HEAVY_OTHERWISE) : STOOP;
}

function hasCable({ settings }: Unit): boolean {
  return (settings.cable?.length ?? 0) > 0;
}

/** What the times rest on, for everyone who reads them. */
export function timeSources(): string {
  return [
    t`Walking: 1.07 m/s (TxDOT Roadway Design Manual), from 0.82 to 1.31 m/s (Murtagh et al., Sports Med 2020), with a start for each walk.`,
    t`Bending and rising: MTM-1, from memory. Brakes, marks, cables and adjusting: common practice, no source. Each walks once for each thing.`,
  ].join(' ');
}
