/**
 * A plan as it runs: every player and every station along time, in plain data. Made anew from the plan, never stored.
 * Times are seconds of the performance, repeats and jumps carried out.
 */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Music } from '../../document/music.ts';
import { scoreOf } from '../../document/parts.ts';
import { performanceOf, type Performance } from '../../score/music/performance.ts';
import type { Interval, Seconds } from '../../score/time-line.ts';
import { barLabels } from '../../score/words/bar-labels.ts';
import { passesOf } from '../../score/words/bar-words.ts';
import type { PlanInstance } from '../planner/instance.ts';
import { needsOf } from '../planner/needs.ts';
import type { Plan, Turn } from '../planner/plan.ts';
import { instrumentSwaps, type InstrumentSwap } from './changes.ts';
import { playerLane, type PlayerLane } from './player-lane.ts';
import { stationLanes, type StationLane } from './station-lane.ts';

/** A bar as it is played. */
export interface RunBar extends Interval {
  /** As printed. */
  readonly label: string;
  /** In a sentence: as of `barLabels`. */
  readonly name: string;
  /** 1: for the first time; counted only where the music itself is known. */
  readonly pass: number;
  /** How often it is played in all. */
  readonly passes: number;
}

export interface Run {
  readonly seconds: Seconds;
  readonly bars: readonly RunBar[];
  readonly players: readonly PlayerLane[];
  readonly stations: readonly StationLane[];
  /** In the order of time. */
  readonly turns: readonly Turn[];
  /** In the order of time. */
  readonly swaps: readonly InstrumentSwap[];
}

/** The concert that the plan is of: from it come passes of repeats and the changes of instrument. */
export interface Ground {
  readonly document: Document;
  readonly setup: Id<'setup'>;
}

export function runOf(instance: PlanInstance, plan: Plan, ground: Ground | null = null): Run {
  const stations = stationLanes(instance, plan);
  const turns = plan.turns.toSorted((a, b) => a.at - b.at);
  const needs = needsOf(instance);
  const players = instance.players.map((player, index) =>
    playerLane({ player, stations, turns, needs: needs.filter((need) => need.player === index) }),
  );
  const music = ground && scoreOf(ground.document, ground.setup)?.music;
  const performance = music ? performanceOf(music) : null;
  const seconds = players.reduce((most, { spans }) => Math.max(most, spans.at(-1)?.to ?? 0), 0);
  return {
    seconds,
    bars: music && performance ? barsPlayed(performance, music) : barsKnown(instance, seconds),
    players,
    stations,
    turns,
    swaps: ground && performance ? swapsOf(ground, performance, players) : [],
  };
}

function barsPlayed({ played, begins }: Performance, music: Music): RunBar[] {
  const nameOf = barLabels(music);
  return passesOf(played).map(({ time, of }, index) => ({
    label: music.bars[played[index] ?? 0]?.number ?? '',
    name: nameOf(played[index] ?? 0),
    pass: time,
    passes: of,
    from: begins[index] ?? 0,
    to: begins[index + 1] ?? 0,
  }));
}

/** From whoever has bars. */
function barsKnown({ players }: PlanInstance, seconds: Seconds): RunBar[] {
  const bars = players.find((player) => (player.bars ?? []).length > 0)?.bars ?? [];
  return bars.map(({ label, from, pass }, index) => ({
    label,
    name: label,
    pass: pass?.time ?? 1,
    passes: pass?.of ?? 1,
    from,
    to: bars[index + 1]?.from ?? Math.max(from, seconds),
  }));
}

function swapsOf(ground: Ground, performance: Performance, players: readonly PlayerLane[]): InstrumentSwap[] {
  return players
    .flatMap(({ player, rests, turns }) =>
      instrumentSwaps({
        ...ground,
        player,
        performance,
        rests,
        busy: turns.map(({ at, seconds }) => ({ from: at, to: at + seconds })),
      }),
    )
    .sort((a, b) => a.at - b.at);
}
