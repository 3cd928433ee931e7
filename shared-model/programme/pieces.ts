/** Tasks with their ways and times, ready to be shared out. */

import type { Span } from '../checks/reach/motion-times.ts';
import { NO_TIME, sumOf } from '../checks/reach/motion-times.ts';
import type { Degrees, Millimetres, Point, Storage } from '../document/records.ts';
import { adjustmentsBetween, turnBetween, type Adjustment } from './changes.ts';
import { handlingTime, heavyCarryTime, walkingTime } from './handling.ts';
import type { Routed } from './routing.ts';
import type { Walk } from './schedule.ts';
import type { Task, Work } from './tasks.ts';
import { carriersOf, type Unit } from './units.ts';
import type { CarryingWays, Way } from './ways/carrying.ts';

/** Where a piece of work begins or ends. */
interface Stop {
  readonly point: Point;
  /** Not on the platform: where, if anybody said. */
  readonly off: { readonly storage: Storage | null } | null;
}

export interface Piece {
  readonly work: Work | 'adjust';
  /** Where it stands before and after; null: away. */
  readonly from: Unit | null;
  readonly to: Unit | null;
  readonly way: Way;
  /** The highest step that two have to get it over; 0: none, or one person carries it. */
  readonly step: Millimetres;
  /** Where it waits or is taken to; null: on the platform, or nobody said. */
  readonly storage: Storage | null;
  /** Degrees anticlockwise from above. */
  readonly turn: Degrees;
  readonly adjustments: readonly Adjustment[];
  readonly crew: 1 | 2;
  readonly time: Span;
  readonly stops: readonly [Stop, Stop];
}

export function pieceOf(task: Task, { way, storage, step }: Routed): Piece {
  const { from, to } = task;
  const unit = from ?? to;
  if (!unit) throw new Error('a task without a thing');
  const start = task.pair.from ?? from;
  const turn = start && to ? turnBetween(start, to) : 0;
  const adjustments = start && to ? adjustmentsBetween(start, to) : [];
  const crew = carriersOf(unit);
  const carrying =
    task.work === 'turn' ? NO_TIME : crew === 2 ? heavyCarryTime(way.length) : walkingTime(way.length);
  const off = { storage };
  return {
    work: task.work === 'turn' && turn === 0 ? 'adjust' : task.work,
    ...{ from, to, way, step, storage, turn, adjustments, crew },
    time: sumOf(handlingTime(task, { turn, adjustments }), carrying),
    stops: [
      { point: from?.spot ?? way.points[0] ?? unit.spot, off: from ? null : off },
      { point: to?.spot ?? way.points.at(-1) ?? unit.spot, off: to ? null : off },
    ],
  };
}

/** The numbers of a piece's two stops. */
export function stopsOf(index: number): { readonly start: number; readonly end: number } {
  return { start: 2 * index, end: 2 * index + 1 };
}

/** Between stops with empty hands: past what stays; between what is set and struck one slips through. */
export function walkOn(pieces: readonly Piece[], ways: CarryingWays): Walk {
  const known = new Map<number, Span>();
  const stopAt = (number: number): Stop | undefined => pieces[number >> 1]?.stops[number % 2 === 0 ? 0 : 1];
  return (from, to) => {
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
