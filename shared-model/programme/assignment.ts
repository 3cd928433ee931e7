/** Which thing of the one setup becomes which of the next, so that the least is carried. */

import munkres from 'munkres';
import { compareIds } from '../document/ids.ts';
import { adjustmentsBetween, isSameSpot, turnBetween } from './changes.ts';
import type { Unit } from './units.ts';

/** `from` null: it is brought. `to` null: it is taken away. */
export interface Pair {
  readonly from: Unit | null;
  readonly to: Unit | null;
}

/** Costs of carrying, in mm or anything else that adds up; not negative, finite. */
export interface Costs {
  readonly move: (from: Unit, to: Unit) => number;
  readonly strike: (from: Unit) => number;
  readonly set: (to: Unit) => number;
}

/**
 * Where a thing would be brought from, and how many are sure to wait there; null: nobody can tell. One place has the same
 * count whichever of its things is asked for.
 */
export type Spares = (to: Unit) => { readonly place: string; readonly count: number } | null;

/** What already stands where the next setup has its like stays there; that never costs more than another choice. */
export function stayingPairs(before: readonly Unit[], after: readonly Unit[]): Pair[] {
  const left = new Map<string, Unit[]>();
  for (const unit of sorted(before)) left.set(unit.key, [...(left.get(unit.key) ?? []), unit]);
  return sorted(after).flatMap((to): Pair[] => {
    const alike = left.get(to.key) ?? [];
    const [from] = alike
      .filter((each) => isSameSpot(each, to))
      .sort((a, b) => workBetween(a, to) - workBetween(b, to));
    if (!from) return [];
    alike.splice(alike.indexOf(from), 1);
    return [{ from, to }];
  });
}

function workBetween(from: Unit, to: Unit): number {
  return adjustmentsBetween(from, to).length + (turnBetween(from, to) === 0 ? 0 : 1);
}

/** The cheapest assignment of the others, key by key. Without spares as many as can be are moved. */
export function carriedPairs(
  before: readonly Unit[],
  after: readonly Unit[],
  { costs, spares = () => null }: { readonly costs: Costs; readonly spares?: Spares },
): Pair[] {
  const keys = [...new Set([...sorted(before), ...sorted(after)].map(({ key }) => key))];
  return keys.flatMap((key) => {
    const olds = sorted(before).filter((unit) => unit.key === key);
    const news = sorted(after).filter((unit) => unit.key === key);
    return cheapest(olds, news, { costs, spares });
  });
}

/** What a new thing may come from: one that stands, a place that holds a spare one, or (null, null) wherever it can be had. */
interface Source {
  readonly from: Unit | null;
  readonly place: string | null;
}

/**
 * Every old thing is moved or struck, every new one moved or brought. Where more will stand than stand, so many have to be
 * brought, wherever from; each further one comes from a place that holds a spare one, and another is struck for it. So the
 * matrix is square: on either side what lacks is storage.
 */
function cheapest(
  before: readonly Unit[],
  after: readonly Unit[],
  { costs, spares }: { readonly costs: Costs; readonly spares: Spares },
): Pair[] {
  const needed = Math.max(0, after.length - before.length);
  const sources: Source[] = [
    ...before.map((from) => ({ from, place: null })),
    ...Array.from({ length: needed }, () => ({ from: null, place: null })),
    ...placesWithSpares(before, after, spares).map((place) => ({ from: null, place })),
  ];
  if (sources.length === 0) return [];
  const placeOf = after.map((to) => spares(to)?.place ?? null);
  const costAt = ({ from, place }: Source, column: number): number => {
    const to = after[column] ?? null;
    if (place === null || !to) return costOf({ from, to }, costs);
    return placeOf[column] === place ? costs.set(to) + RATHER_MOVED : NEVER;
  };
  const matrix = sources.map((source) => sources.map((_, column) => costAt(source, column)));
  return munkres(matrix)
    .toSorted(([a], [b]) => a - b)
    .map(([row, column]): Pair => ({ from: sources[row]?.from ?? null, to: after[column] ?? null }))
    .filter(({ from, to }) => from !== null || to !== null);
}

/** Of two that cost the same, one move is done sooner than a strike and a set. */
const RATHER_MOVED = 1e-5;
/** More than all ways together. */
const NEVER = 1e9;

/** Each place as often as a spare one can be of use there. */
function placesWithSpares(before: readonly Unit[], after: readonly Unit[], spares: Spares): string[] {
  const uses = new Map<string, { count: number; most: number }>();
  for (const { place, count } of after.flatMap((to) => spares(to) ?? []))
    uses.set(place, { most: count, count: (uses.get(place)?.count ?? 0) + 1 });
  return [...uses].flatMap(([place, { count, most }]) =>
    Array.from({ length: Math.min(count, most, before.length) }, () => place),
  );
}

export function costOf({ from, to }: Pair, costs: Costs): number {
  if (from && to) return costs.move(from, to);
  if (from) return costs.strike(from);
  return to ? costs.set(to) : 0;
}

function sorted(units: readonly Unit[]): Unit[] {
  return units.toSorted((a, b) => compareIds(a.id, b.id));
}
