/**
 * From one setup to the next: what is struck, set, moved, turned and adjusted, in an order that two people can follow.
 * `from` null: the first set-up, all comes from where it waits. `to` null: the last strike.
 */

import type { Span } from '../checks/reach/motion-times.ts';
import { NO_TIME, sumOf } from '../checks/reach/motion-times.ts';
import { find, setupsOf, type Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import type { Degrees, Point, Seconds, Storage } from '../document/records.ts';
import { carriedPairs, costOf, stayingPairs, type Costs, type Pair } from './assignment.ts';
import { adjustmentsBetween, turnBetween, type Adjustment } from './changes.ts';
import { handlingTime, heavyCarryTime, walkingTime } from './handling.ts';
import { restsOn } from './hindrances.ts';
import { schedule, type Hands, type Schedule, type Turn } from './schedule.ts';
import { storagesFor } from './storing.ts';
import { planOf, type Task, type Work } from './tasks.ts';
import { carriersOf, girthOf, unitsOf, type Unit } from './units.ts';
import { carryingWays, type CarryingWays, type Way } from './ways/carrying.ts';

export interface Step {
  /** From 1, in the order in which they are begun. */
  readonly number: number;
  readonly hands: Hands;
  /** Numbers of the steps of the other one that have to be done before this one is begun. */
  readonly after: readonly number[];
  readonly work: Work | 'adjust';
  /** Where it stands before and after; null: away. */
  readonly from: Unit | null;
  readonly to: Unit | null;
  readonly way: Way;
  /** Where it waits or is taken to; null: on the platform, or nobody said. */
  readonly storage: Storage | null;
  /** Degrees anticlockwise from above. */
  readonly turn: Degrees;
  readonly adjustments: readonly Adjustment[];
  /** Seconds from the beginning. */
  readonly begins: Seconds;
  readonly ends: Seconds;
}

export interface Changeover {
  readonly from: Id<'setup'> | null;
  readonly to: Id<'setup'> | null;
  readonly steps: readonly Step[];
  /** Everything else that is of both setups: nobody touches it. */
  readonly stays: readonly { readonly from: Unit; readonly to: Unit }[];
  readonly time: Span;
  readonly through: Schedule['through'];
  /** The time there is; null: not known. */
  readonly available: Seconds | null;
  /** Way under way with things in hand, mm: the sum that the assignment makes least. */
  readonly carried: number;
}

export function changeover(document: Document, from: Id<'setup'> | null, to: Id<'setup'> | null): Changeover {
  const before = from ? unitsOf(document, from) : [];
  const after = to ? unitsOf(document, to) : [];
  const anySetup = to ?? from ?? setupsOf(document)[0]?.id;
  if (!anySetup) throw new Error('a document without a setup');
  const { staying, loose } = settled(before, after);
  const still = staying.filter((pair) => taskIsNothing(pair));
  const ways = carryingWays(document, anySetup, still.flatMap(obstaclesOf));
  const router = routerOn(document, ways);
  const costs = costsOf(router);
  const pairs = carriedPairs(loose.before, loose.after, costs);
  const plan = planOf([...staying.filter((pair) => !taskIsNothing(pair)), ...pairs]);
  const jobs = plan.tasks.map((task) => workOf(task, router));
  const timed = schedule(
    jobs.map((job, index) => ({
      crew: job.crew,
      start: 2 * index,
      end: 2 * index + 1,
      time: job.time,
      waitsFor: plan.waitsFor[index] ?? [],
    })),
    walkOn(jobs, ways),
  );
  return {
    from,
    to,
    steps: stepsOf(jobs, timed.turns, plan.waitsFor),
    stays: still.flatMap(({ from: a, to: b }) => (a && b ? [{ from: a, to: b }] : [])),
    time: timed.time,
    through: timed.through,
    available: availableBefore(document, to),
    carried: pairs.reduce((sum, pair) => sum + costOf(pair, costs), 0),
  };
}

function stepsOf(
  pieces: readonly Piece[],
  turns: readonly Turn[],
  waitsFor: readonly (readonly number[])[],
): Step[] {
  const numbers = new Map(turns.map(({ job }, index) => [job, index + 1]));
  const handsOf = new Map(turns.map(({ job, hands }) => [job, hands]));
  return turns.flatMap(({ job, ...turn }, index): Step[] => {
    const piece = pieces[job];
    if (!piece) return [];
    const { crew: _crew, time: _time, stops: _stops, ...step } = piece;
    const others = (waitsFor[job] ?? []).filter((other) => handsOf.get(other) !== turn.hands);
    const after = others.flatMap((other) => numbers.get(other) ?? []).sort((a, b) => a - b);
    return [{ number: index + 1, after, ...turn, ...step }];
  });
}

/** A variant has the time of what it is a variant of. */
function availableBefore(document: Document, to: Id<'setup'> | null): Seconds | null {
  const setup = find(document, to);
  return (find(document, setup?.variantOf ?? null) ?? setup)?.changeTime ?? null;
}

interface Settled {
  /** The same spot before and after; some are turned or adjusted there. */
  readonly staying: readonly Pair[];
  readonly loose: { readonly before: readonly Unit[]; readonly after: readonly Unit[] };
}

/** Nothing stays on what goes away from under it. */
function settled(before: readonly Unit[], after: readonly Unit[]): Settled {
  let staying = stayingPairs(before, after);
  for (;;) {
    const stays = new Set(staying.map(({ from }) => from));
    const leaving = before.filter((unit) => !stays.has(unit));
    const firm = staying.filter(({ from }) => !leaving.some((lower) => from && restsOn(from, lower)));
    if (firm.length === staying.length) break;
    staying = firm;
  }
  const kept = new Set(staying.flatMap(({ from, to }) => [from, to]));
  return {
    staying,
    loose: {
      before: before.filter((unit) => !kept.has(unit)),
      after: after.filter((unit) => !kept.has(unit)),
    },
  };
}

function taskIsNothing({ from, to }: Pair): boolean {
  return (
    from !== null && to !== null && turnBetween(from, to) === 0 && adjustmentsBetween(from, to).length === 0
  );
}

/** Levels are stepped on; all else is gone round. */
function obstaclesOf({ from }: Pair) {
  if (!from || from.thing.item === 'riser') return [];
  return [{ owner: from.record.id, outline: from.outline }];
}

interface Routed {
  readonly way: Way;
  readonly storage: Storage | null;
}

interface Router {
  readonly across: (from: Unit, to: Unit) => Routed;
  readonly away: (unit: Unit) => Routed;
}

function routerOn(document: Document, ways: CarryingWays): Router {
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

function costsOf({ across, away }: Router): Costs {
  return {
    move: (from, to) => costOfWay(across(from, to).way),
    strike: (from) => costOfWay(away(from).way),
    set: (to) => costOfWay(away(to).way),
  };
}

interface Stop {
  readonly point: Point;
  /** Not on the platform: where, if anybody said. */
  readonly off: { readonly storage: Storage | null } | null;
}

interface Piece extends Omit<Step, 'number' | 'hands' | 'after' | 'begins' | 'ends'> {
  readonly crew: 1 | 2;
  readonly time: Span;
  readonly stops: readonly [Stop, Stop];
}

function workOf(task: Task, router: Router): Piece {
  const { from, to } = task;
  const unit = from ?? to;
  if (!unit) throw new Error('a task without a thing');
  const { way, storage } = routeOf(task, router);
  const start = task.pair.from ?? from;
  const turn = start && to ? turnBetween(start, to) : 0;
  const adjustments = start && to ? adjustmentsBetween(start, to) : [];
  const crew = carriersOf(unit);
  const carrying =
    task.work === 'turn' ? NO_TIME : crew === 2 ? heavyCarryTime(way.length) : walkingTime(way.length);
  const off = { storage };
  return {
    work: task.work === 'turn' && turn === 0 ? 'adjust' : task.work,
    ...{ from, to, way, storage, turn, adjustments, crew },
    time: sumOf(handlingTime(task, { turn, adjustments }), carrying),
    stops: [
      { point: from?.spot ?? way.points[0] ?? unit.spot, off: from ? null : off },
      { point: to?.spot ?? way.points.at(-1) ?? unit.spot, off: to ? null : off },
    ],
  };
}

/** Ways away are found from the platform; what comes goes the other way round. */
function routeOf({ from, to }: Task, router: Router): Routed {
  if (from && to) return router.across(from, to);
  if (from) return router.away(from);
  if (!to) throw new Error('a task without a thing');
  const { way, storage } = router.away(to);
  return { way: { ...way, points: way.points.toReversed() }, storage };
}

/** Between stops with empty hands. */
function walkOn(pieces: readonly Piece[], ways: CarryingWays) {
  const known = new Map<number, Span>();
  const stopAt = (number: number): Stop | undefined => pieces[number >> 1]?.stops[number % 2 === 0 ? 0 : 1];
  return (from: number | null, to: number): Span => {
    if (from === null) return NO_TIME;
    const key = from * 2 * pieces.length + to;
    const time = known.get(key) ?? walkingTime(distanceBetween(stopAt(from), stopAt(to), ways));
    known.set(key, time);
    return time;
  };
}

function distanceBetween(a: Stop | undefined, b: Stop | undefined, ways: CarryingWays): number {
  if (!a || !b) throw new Error('no such stop');
  if (a.off && b.off) return Math.hypot(a.point.x - b.point.x, a.point.y - b.point.y);
  if (a.off) return ways.away(b.point, a.off.storage, 0).length;
  if (b.off) return ways.away(a.point, b.off.storage, 0).length;
  return ways.between(a.point, b.point, 0).length;
}
