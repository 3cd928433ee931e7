/** By which way each thing goes, and to which of the places where it may wait. */

import type { Document } from '../document/document.ts';
import type { Millimetres, Storage } from '../document/records.ts';
import type { Costs, Spares } from './assignment.ts';
import { storagesFor } from './storing.ts';
import type { Task } from './tasks.ts';
import { carriersOf, girthOf, isRolled, type Unit } from './units.ts';
import type { CarryingWays, Manner, Way } from './ways/carrying.ts';

export interface Routed {
  readonly way: Way;
  readonly storage: Storage | null;
  /** The highest step on its way, of what two carry or roll; 0: none, or it is light. */
  readonly step: Millimetres;
}

type Route = Omit<Routed, 'step'>;

export interface Router {
  readonly across: (from: Unit, to: Unit) => Route;
  readonly away: (unit: Unit) => Route;
  readonly stepFor: (task: Task, way: Way) => Millimetres;
}

export function routerOn(document: Document, ways: CarryingWays): Router {
  const known = new Map<Unit, Route>();
  const away = (unit: Unit): Route => {
    const places = storagesFor(document, unit.thing);
    const routes = (places.length > 0 ? places : [null]).map((storage) => ({
      storage,
      way: wayOff(unit, storage, ways),
    }));
    const [first, ...rest] = routes;
    if (!first) throw new Error('no way away');
    return rest.reduce((best, next) => (costOfWay(next.way) < costOfWay(best.way) ? next : best), first);
  };
  return {
    across: (from, to) => ({ way: wayAcross(from, to, ways), storage: null }),
    away: (unit) => {
      const routed = known.get(unit) ?? away(unit);
      known.set(unit, routed);
      return routed;
    },
    stepFor: (task, way) => stepFor(task, way, ways),
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
export function routeOf(task: Task, router: Router): Routed {
  const { way, storage } = routeBetween(task, router);
  return { way, storage, step: router.stepFor(task, way) };
}

function routeBetween({ from, to }: Task, { across, away }: Router): Route {
  if (from && to) return across(from, to);
  if (from) return away(from);
  if (!to) throw new Error('a task without a thing');
  const { way, storage } = away(to);
  return { way: reversed(way), storage };
}

/** The same task's way past other things, to or from the place where it waits. */
export function routeAgain(task: Task, storage: Storage | null, ways: CarryingWays): Routed {
  const way = wayAgain(task, storage, ways);
  return { way, storage, step: stepFor(task, way, ways) };
}

function wayAgain({ from, to }: Task, storage: Storage | null, ways: CarryingWays): Way {
  if (from && to) return wayAcross(from, to, ways);
  const unit = from ?? to;
  if (!unit) throw new Error('a task without a thing');
  const way = wayOff(unit, storage, ways);
  return from ? way : reversed(way);
}

function wayAcross(from: Unit, to: Unit, { between }: CarryingWays): Way {
  return between(from.spot, to.spot, girthOf(from), mannerOf(from));
}

function wayOff(unit: Unit, storage: Storage | null, { away }: CarryingWays): Way {
  return away(unit.spot, storage, girthOf(unit), mannerOf(unit));
}

function mannerOf(unit: Unit): Manner {
  return isRolled(unit) ? 'rolled' : 'carried';
}

function stepFor({ work, from, to }: Task, way: Way, { stepOn }: CarryingWays): Millimetres {
  const unit = from ?? to;
  if (work === 'turn' || !unit || carriersOf(unit) === 1) return 0;
  return stepOn(from ? way : reversed(way));
}

function reversed(way: Way): Way {
  return { ...way, points: way.points.toReversed() };
}
