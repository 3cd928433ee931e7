/** By which way each thing goes, and to which of the places where it may wait. */

import type { Document } from '../document/document.ts';
import type { Storage } from '../document/records.ts';
import type { Costs, Spares } from './assignment.ts';
import { storagesFor } from './storing.ts';
import type { Task } from './tasks.ts';
import { girthOf, type Unit } from './units.ts';
import type { CarryingWays, Way } from './ways/carrying.ts';

export interface Routed {
  readonly way: Way;
  readonly storage: Storage | null;
}

export interface Router {
  readonly across: (from: Unit, to: Unit) => Routed;
  readonly away: (unit: Unit) => Routed;
}

export function routerOn(document: Document, ways: CarryingWays): Router {
  const known = new Map<Unit, Routed>();
  const away = (unit: Unit): Routed => {
    const places = storagesFor(document, unit.thing);
    const routes = (places.length > 0 ? places : [null]).map((storage) => ({
      storage,
      way: ways.away(unit.spot, storage, girthOf(unit)),
    }));
    const [first, ...rest] = routes;
    if (!first) throw new Error('no way away');
    return rest.reduce((best, next) => (costOfWay(next.way) < costOfWay(best.way) ? next : best), first);
  };
  return {
    across: (from, to) => ({ way: ways.between(from.spot, to.spot, girthOf(from)), storage: null }),
    away: (unit) => {
      const routed = known.get(unit) ?? away(unit);
      known.set(unit, routed);
      return routed;
    },
  };
}

/** What has no way is taken only where nothing else will do: as if it were a hundred metres longer. */
const NO_WAY = 100_000;

export function costOfWay({ length, ease }: Way): number {
  return length + (ease === 'none' ? NO_WAY : 0);
}

export function costsOf({ across, away }: Router): Costs {
  return {
    move: (from, to) => costOfWay(across(from, to).way),
    strike: (from) => costOfWay(away(from).way),
    set: (to) => costOfWay(away(to).way),
  };
}

/** Things are brought from the place with the shortest way; `countAt`: how many are sure to wait there. */
export function sparesOf({ away }: Router, countAt: (unit: Unit, storage: Storage | null) => number): Spares {
  return (to) => {
    const { storage } = away(to);
    return storage && { place: storage.id, count: countAt(to, storage) };
  };
}

/** The way of a task. Ways away are found from the platform; what comes goes the other way round. */
export function routeOf({ from, to }: Task, router: Router): Routed {
  if (from && to) return router.across(from, to);
  if (from) return router.away(from);
  if (!to) throw new Error('a task without a thing');
  const { way, storage } = router.away(to);
  return { way: reversed(way), storage };
}

/** The same task's way past other things, to or from the place where it waits. */
export function wayAgain({ from, to }: Task, storage: Storage | null, ways: CarryingWays): Way {
  if (from && to) return ways.between(from.spot, to.spot, girthOf(from));
  const unit = from ?? to;
  if (!unit) throw new Error('a task without a thing');
  const way = ways.away(unit.spot, storage, girthOf(unit));
  return from ? way : reversed(way);
}

function reversed(way: Way): Way {
  return { ...way, points: way.points.toReversed() };
}
