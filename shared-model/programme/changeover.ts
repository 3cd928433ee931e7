/**
 * From one setup to the next: what is struck, set, moved, turned and adjusted, in an order that two people can follow.
 * `from` null: the first set-up, all comes from where it waits. `to` null: the last strike.
 */

import type { Span } from '../checks/reach/motion-times.ts';
import { find, setupsOf, type Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import type { Millimetres, Seconds } from '../document/records.ts';
import { carriedPairs, costOf, stayingPairs, type Pair } from './assignment.ts';
import { adjustmentsBetween, turnBetween } from './changes.ts';
import { restsOn } from './hindrances.ts';
import { standingOf } from './moments.ts';
import { bestPerformance, type Rehearsal } from './rehearsal.ts';
import { pieceOf, walkOn, type Piece } from './pieces.ts';
import { costsOf, routeOf, routerOn, sparesOf } from './routing.ts';
import { scheduleOf, type Hands, type Schedule, type Turn } from './schedule.ts';
import { sparesBetween } from './spares.ts';
import { planOf } from './tasks.ts';
import { unitsOf, type Unit } from './units.ts';
import { carryingFloor } from './ways/carrying.ts';

export interface Step extends Omit<Piece, 'crew' | 'time' | 'stops'> {
  /** From 1, in the order in which they are begun. */
  readonly number: number;
  readonly hands: Hands;
  /** Numbers of the steps of the other one that have to be done before this one is begun. */
  readonly after: readonly number[];
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
  /**
   * The sum that the assignment makes least: ways with things in hand past nothing but what stays, mm, and 100 m more for
   * each thing that has none. The ways of the steps lead round what stands at their moments, so their sum is another one.
   */
  readonly carried: Millimetres;
}

export function changeover(document: Document, from: Id<'setup'> | null, to: Id<'setup'> | null): Changeover {
  const before = from ? unitsOf(document, from) : [];
  const after = to ? unitsOf(document, to) : [];
  const anySetup = to ?? from ?? setupsOf(document)[0]?.id;
  if (!anySetup) throw new Error('a document without a setup');
  const { staying, loose } = settled(before, after);
  const kept = staying.flatMap((pair) => pair.from ?? []);
  const floor = carryingFloor(document, anySetup);
  const ways = floor.past(standingOf(kept));
  const router = routerOn(document, ways);
  const costs = costsOf(router);
  const spares = sparesOf(router, sparesBetween(document, [from, to]));
  const pairs = carriedPairs(loose.before, loose.after, { costs, spares });
  const plan = planOf([...staying.filter((pair) => !taskIsNothing(pair)), ...pairs]);
  const pieces = plan.tasks.map((task) => pieceOf(task, routeOf(task, router)));
  const still = staying.filter((pair) => taskIsNothing(pair));
  const rehearsal: Rehearsal = {
    ...{ plan, pieces, floor },
    walk: walkOn(pieces, ways),
    staying: still.flatMap((pair) => pair.from ?? []),
  };
  const { turns, pieces: done, jobs, waitsFor } = bestPerformance(rehearsal);
  const timed = scheduleOf(turns, jobs, rehearsal.walk);
  return {
    from,
    to,
    steps: stepsOf(done, timed.turns, waitsFor),
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
