/** Sketches with every turn given to a hand and a time: the plan. */

import type { SideIndex } from '../bindings/binding.ts';
import { barAt, MOMENT, type PlanInstance } from './instance.ts';
import type { Need } from './needs.ts';
import type { AtPage, Plan, StationPlan, Turn } from './plan.ts';
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
  const readers = owner.sides.flatMap(({ reader }) => (reader === null ? [] : [reader]));
  const shown = station.views[turn.toState] ?? [];
  return {
    station: owner.id,
    player: turner.id,
    hand: chance.hand,
    at,
    seconds: chance.seconds,
    direction: turn.toState > turn.fromState ? 'forward' : 'back',
    fromState: turn.fromState,
    toState: turn.toState,
    liftedFrom: turn.job.liftedFrom,
    bar: barAt(turner, at),
    readers: readers.map((reader) => atPage(instance, needs, reader, at)),
    window,
    margin: window.to - window.from - chance.seconds,
    servesPartner: owner.sides.some(
      ({ reader }, side) =>
        reader !== null &&
        reader !== turner.id &&
        (shown[side as SideIndex] ?? []).some((page) => page !== null),
    ),
  };
}

/** Where a player's part is at a time: on a page that he goes on with, or between two. */
export function atPage(instance: PlanInstance, needs: readonly Need[], reader: string, time: number): AtPage {
  const index = instance.players.findIndex(({ id }) => id === reader);
  const player = instance.players[index];
  const own = needs.filter((need) => need.player === index);
  const last = own.findLast(({ from }) => from <= time + MOMENT);
  const next = own.find(({ to }) => to > time + MOMENT);
  return {
    player: reader,
    page: last?.page ?? null,
    during: last !== undefined && last.page === next?.page,
    bar: player ? barAt(player, time) : null,
  };
}
