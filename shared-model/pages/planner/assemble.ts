/** Sketches with every turn given to a hand and a time: the plan. */

import { completeTurn } from './complete-turn.ts';
import type { PlanInstance } from './instance.ts';
import type { Need } from './needs.ts';
import type { Plan, StationPlan, Turn } from './plan.ts';
import { schedule, type Placement } from './schedule.ts';
import type { Sketch, SketchedTurn, StationSketch } from './sketch.ts';

/** A word instead of a plan when the turns of the sketches cannot all be made, or nobody can tell. */
export function assemble(
  instance: PlanInstance,
  needs: readonly Need[],
  sketches: readonly Sketch[],
): Plan | 'impossible' | 'unknown' {
  const pairs = sketches.flatMap(({ stations }) =>
    stations.flatMap((station) => station.turns.map((turn) => ({ station, turn }))),
  );
  const placed = schedule(pairs.map(({ turn }) => turn.job));
  if (typeof placed === 'string') return placed;
  const turns = pairs.flatMap(({ station, turn }, index) => {
    const placement = placed[index];
    return placement ? [turnOf({ instance, needs, station, turn, placement })] : [];
  });
  return {
    stations: sketches
      .flatMap((sketch) => sketch.stations.map((station) => ({ station, sketch })))
      .sort((a, b) => a.station.index - b.station.index)
      .map(({ station, sketch }) => stationPlan(instance, sketch, station)),
    turns: turns.sort((a, b) => a.at - b.at),
  };
}

function stationPlan({ stations }: PlanInstance, { setting }: Sketch, sketch: StationSketch): StationPlan {
  const option = setting[sketch.index];
  const station = stations[sketch.index];
  if (!option || !station) throw new Error('a sketch of a station that is not set');
  return {
    station: station.id,
    kind: option.kind,
    leaves: sketch.views.length - 1,
    pagesAcross: option.across,
    stackSide: sketch.stack,
    views: station.sides.map((_, side) => sketch.views.map((view) => view[side] ?? [])),
  };
}

interface PlacedTurn {
  readonly instance: PlanInstance;
  readonly needs: readonly Need[];
  readonly station: StationSketch;
  readonly turn: SketchedTurn;
  readonly placement: Placement;
}

function turnOf({ instance, needs, station, turn, placement }: PlacedTurn): Turn {
  const { chance, at, window } = placement;
  const owner = instance.stations[station.index];
  const turner = instance.players[chance.player];
  if (!owner || !turner) throw new Error('a turn without a station or a player');
  return completeTurn({
    instance,
    needs,
    station: owner,
    shown: station.views[turn.toState] ?? [],
    turner,
    hand: chance.hand,
    at,
    seconds: chance.seconds,
    fromState: turn.fromState,
    toState: turn.toState,
    liftedFrom: turn.job.liftedFrom,
    window,
  });
}
