/**
 * The rules, applied to any plan, made by the planner or by hand. Nothing here comes from the search: a plan is played
 * through from its own turns and views.
 */

import type { Interval, Seconds } from '../../score/time-line.ts';
import { stretchesOf } from './chances.ts';
import { costOf, meets, sightsOf } from './in-view.ts';
import { limitsOf, MOMENT, type Pin, type PlanInstance, type PlanStation } from './instance.ts';
import { needsOf } from './needs.ts';
import { placesATurn } from './options.ts';
import { liftedFrom, type Plan, type PlanCost, type StationPlan, type Turn } from './plan.ts';

/** A rule that is broken. `turn` counts from 0 in the order of the plan. */
export type Violation =
  | {
      readonly code: 'page-not-in-view';
      readonly player: string;
      readonly page: number;
      readonly from: Seconds;
      readonly to: Seconds;
    }
  | { readonly code: 'unknown-station'; readonly station: string }
  | { readonly code: 'station-twice'; readonly station: string }
  | { readonly code: 'too-many-stations'; readonly stations: number; readonly most: number }
  | { readonly code: 'binding-not-allowed'; readonly station: string }
  | {
      readonly code: 'too-wide';
      readonly station: string;
      readonly side: number;
      readonly pages: number;
      readonly width: number;
    }
  | { readonly code: 'views-do-not-fit'; readonly station: string; readonly side: number }
  | { readonly code: 'no-such-page'; readonly station: string; readonly page: number }
  | { readonly code: 'out-of-reach'; readonly turn: number }
  | { readonly code: 'hand-not-free'; readonly turn: number }
  | { readonly code: 'turn-too-short'; readonly turn: number; readonly needed: Seconds }
  | { readonly code: 'two-turns-at-once'; readonly turn: number; readonly other: number }
  | { readonly code: 'wrong-state'; readonly turn: number }
  | { readonly code: 'wrong-side'; readonly turn: number }
  | { readonly code: 'pin-lost'; readonly pin: Pin };

export interface Judgement {
  /** Empty: the plan keeps every rule. */
  readonly violations: readonly Violation[];
  readonly cost: PlanCost;
}

export function judgePlan(instance: PlanInstance, plan: Plan): Judgement {
  const needs = needsOf(instance);
  const sights = sightsOf(instance, plan);
  const unseen = needs.flatMap((need): Violation[] => {
    const player = instance.players[need.player]?.id ?? '';
    const isMet = meets(need, player, sights).length > 0;
    return isMet
      ? []
      : [{ code: 'page-not-in-view', player, page: need.page, from: need.start, to: need.to }];
  });
  return {
    violations: [
      ...setViolations(instance, plan),
      ...plan.stations.flatMap((own) => stationViolations(instance, own)),
      ...plan.turns.flatMap((turn, index) => turnViolations(instance, plan, turn, index)),
      ...togetherViolations(plan),
      ...stateViolations(plan),
      ...unseen,
      ...(instance.pins ?? []).flatMap((pin) =>
        keepsPin(plan, pin) ? [] : [{ code: 'pin-lost', pin } as const],
      ),
    ],
    cost: costOf(instance, plan, needs),
  };
}

function setViolations(instance: PlanInstance, { stations }: Plan): Violation[] {
  const { maxStations } = limitsOf(instance);
  const twice = stations.filter(
    ({ station }, index) => stations.findIndex((own) => own.station === station) < index,
  );
  const many: Violation[] =
    stations.length > maxStations
      ? [{ code: 'too-many-stations', stations: stations.length, most: maxStations }]
      : [];
  return [...many, ...twice.map(({ station }): Violation => ({ code: 'station-twice', station }))];
}

function stationViolations({ players, stations }: PlanInstance, own: StationPlan): Violation[] {
  const station = stations.find(({ id }) => id === own.station);
  if (!station) return [{ code: 'unknown-station', station: own.station }];
  const found: Violation[] = isAllowed(station, own)
    ? []
    : [{ code: 'binding-not-allowed', station: own.station }];
  for (const [side, { reader, width }] of station.sides.entries()) {
    const pages = own.pagesAcross[side] ?? 0;
    const views = own.views[side] ?? [];
    if (reader !== null && pages > width)
      found.push({ code: 'too-wide', station: own.station, side, pages, width });
    const isWhole = views.length === own.leaves + 1 && views.every((view) => view.length === pages);
    if (!isWhole || !hangsTogether(own, views))
      found.push({ code: 'views-do-not-fit', station: own.station, side });
    const most = players.find(({ id }) => id === reader)?.pages ?? 0;
    for (const page of views.flat())
      if (page !== null && !(Number.isInteger(page) && page >= 1 && page <= most))
        found.push({ code: 'no-such-page', station: own.station, page });
  }
  return found;
}

/** Of a concertina what a turn leaves in view is the same paper as before, farther left. */
function hangsTogether(own: StationPlan, views: StationPlan['views'][number]): boolean {
  const step = placesATurn({ kind: own.kind, across: own.pagesAcross });
  return views.every((view, state) =>
    (views[state - 1]?.slice(step) ?? []).every((page, slot) => page === view[slot]),
  );
}

/**
 * Of a ridge booklet both sides are as wide; a book shows one reader two pages, a concertina two or more; loose pages have no
 * leaves.
 */
function isAllowed({ sides, bindings }: PlanStation, { kind, leaves, pagesAcross }: StationPlan): boolean {
  if (!bindings.includes(kind) || leaves < 0) return false;
  if (kind === 'ridge') return sides.length === 2 && pagesAcross[0] === pagesAcross[1];
  if (kind === 'loose') return leaves === 0;
  const [across = 0] = pagesAcross;
  return sides.length === 1 && (kind === 'concertina' ? across >= 2 : across === 2);
}

function turnViolations(instance: PlanInstance, plan: Plan, turn: Turn, index: number): Violation[] {
  const station = instance.stations.find(({ id }) => id === turn.station);
  const own = plan.stations.find((candidate) => candidate.station === turn.station);
  const player = instance.players.find(({ id }) => id === turn.player);
  if (!station || !own || !player) return [{ code: 'unknown-station', station: turn.station }];
  const found: Violation[] = [];
  const side = liftedFrom(own, turn.direction);
  if (turn.liftedFrom !== side) found.push({ code: 'wrong-side', turn: index });
  const reach = station.reach.filter(
    (one) => one.player === turn.player && one.hand === turn.hand && one.side === side,
  );
  const needed = reach.reduce((least, { seconds }) => Math.min(least, seconds), Infinity);
  if (reach.length === 0) found.push({ code: 'out-of-reach', turn: index });
  else if (turn.seconds < needed - MOMENT) found.push({ code: 'turn-too-short', turn: index, needed });
  if (!stretchesOf(player, turn.hand).some((stretch) => contains(stretch, spanOf(turn))))
    found.push({ code: 'hand-not-free', turn: index });
  return found;
}

function spanOf({ at, seconds }: Turn): Interval {
  return { from: at, to: at + seconds };
}

function contains(outer: Interval, inner: Interval): boolean {
  return outer.from <= inner.from + MOMENT && outer.to >= inner.to - MOMENT;
}

function togetherViolations({ turns }: Plan): Violation[] {
  return turns.flatMap((turn, index) =>
    turns.slice(index + 1).flatMap((other, later): Violation[] => {
      const shared = turn.player === other.player || turn.station === other.station;
      const [a, b] = [spanOf(turn), spanOf(other)];
      const overlap = a.from < b.to - MOMENT && b.from < a.to - MOMENT;
      return shared && overlap ? [{ code: 'two-turns-at-once', turn: index, other: index + 1 + later }] : [];
    }),
  );
}

/** Leaf after leaf: a turn begins in the state that the one before it left, and leads to the next or the one before. */
function stateViolations({ stations, turns }: Plan): Violation[] {
  return stations.flatMap(({ station, leaves }) => {
    let state = 0;
    const own = [...turns.entries()]
      .filter(([, turn]) => turn.station === station)
      .sort(([, a], [, b]) => a.at - b.at);
    return own.flatMap(([index, { direction, fromState, toState }]): Violation[] => {
      const isRight = fromState === state && toState === state + (direction === 'forward' ? 1 : -1);
      state = toState;
      return isRight && toState >= 0 && toState <= leaves ? [] : [{ code: 'wrong-state', turn: index }];
    });
  });
}

function keepsPin({ stations, turns }: Plan, pin: Pin): boolean {
  if (pin.kind === 'turn')
    return turns.some(
      (turn) => turn.station === pin.station && turn.player === pin.player && contains(pin, spanOf(turn)),
    );
  const view = stations.find(({ station }) => station === pin.station)?.views[pin.side]?.[pin.state] ?? [];
  return pin.slot === null ? view.includes(pin.page) : view[pin.slot] === pin.page;
}
