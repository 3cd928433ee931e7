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

/** The cheapest assignment of the others, key by key. */
export function carriedPairs(before: readonly Unit[], after: readonly Unit[], costs: Costs): Pair[] {
  const keys = [...new Set([...sorted(before), ...sorted(after)].map(({ key }) => key))];
  return keys.flatMap((key) =>
    cheapest(
      sorted(before).filter((unit) => unit.key === key),
      sorted(after).filter((unit) => unit.key === key),
      costs,
    ),
  );
}

/**
 * As many as can be are moved; of those that are left over the ones are struck, or brought, that make the whole cheapest.
 * So the matrix is square: what lacks on the shorter side is storage.
 */
function cheapest(before: readonly Unit[], after: readonly Unit[], costs: Costs): Pair[] {
  const size = Math.max(before.length, after.length);
  if (size === 0) return [];
  const pairAt = (row: number, column: number): Pair => ({
    from: before[row] ?? null,
    to: after[column] ?? null,
  });
  const matrix = Array.from({ length: size }, (_, row) =>
    Array.from({ length: size }, (__, column) => costOf(pairAt(row, column), costs)),
  );
  return munkres(matrix)
    .toSorted(([a], [b]) => a - b)
    .map(([row, column]) => pairAt(row, column));
}

export function costOf({ from, to }: Pair, costs: Costs): number {
  if (from && to) return costs.move(from, to);
  if (from) return costs.strike(from);
  return to ? costs.set(to) : 0;
}

function sorted(units: readonly Unit[]): Unit[] {
  return units.toSorted((a, b) => compareIds(a.id, b.id));
}
