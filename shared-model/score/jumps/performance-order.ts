/** Play order of a score, with what there is to remark about it. */

import type { Remark } from '../remark.ts';
import type { BackwardRepeat, Score } from '../score.ts';
import { endingsOf } from './endings.ts';
import { jumpPlan } from './jump-plan.ts';
import { movementsOf, movementStarts } from './movements.ts';
import { unfold, type Course } from './unfold.ts';

export interface OrderOptions {
  /** Make repeats again after D.C. or D.S.; as a rule players leave them out. */
  readonly repeatsAfterJump: boolean;
}

export interface PerformanceOrder {
  /** Bars in the order in which they are played. */
  readonly order: Int32Array;
  /** The same with the other choice about repeats after jumps; null: nothing depends on it. */
  readonly otherwise: Int32Array | null;
  readonly movementStarts: readonly number[];
  /** A jump leads somewhere that nothing in the score tells. */
  readonly ambiguous: boolean;
  readonly remarks: readonly Remark[];
}

/** Throws `Refusal` where repeats of repeats go on beyond all music. */
export function performanceOrder(score: Score, options: OrderOptions): PerformanceOrder {
  const starts = movementStarts(score.bars);
  const { endings, remarks: ofEndings } = endingsOf(score);
  const plan = jumpPlan(score, movementsOf(starts, score.bars.length));
  const course: Course = {
    bars: score.bars.length,
    movementStarts: starts,
    forward: new Set(score.barlines.forward.map(({ bar }) => bar)),
    backward: backwardByBar(score.barlines.backward),
    endings,
    plan,
    ...options,
  };
  const { order, nested } = unfold(course);
  const otherwise = unfoldOtherwise(course, order);
  return {
    order,
    otherwise,
    movementStarts: starts,
    ambiguous: plan.ambiguous,
    remarks: [
      ...ofEndings,
      ...plan.remarks,
      ...openRepeats(course),
      ...nested.slice(0, 1).map((bar) => ({ code: 'repeat.nested', bar }) as const),
      ...afterJumps(course, order, otherwise),
    ],
  };
}

/** Parts print the same repeat; the one that says most is taken. */
function backwardByBar(signs: readonly BackwardRepeat[]): Map<number, BackwardRepeat> {
  const byBar = new Map<number, BackwardRepeat>();
  for (const sign of signs) {
    const before = byBar.get(sign.bar);
    const times = sign.times === null ? (before?.times ?? null) : Math.max(sign.times, before?.times ?? 0);
    byBar.set(sign.bar, { ...sign, times, afterJump: sign.afterJump || before?.afterJump === true });
  }
  return byBar;
}

/** A repeat that begins and never ends. */
function openRepeats({ forward, backward, movementStarts: starts, bars }: Course): Remark[] {
  const begins = new Set(starts);
  let endsBehind = false;
  let open: number | null = null;
  for (let bar = bars - 1; bar >= 0; bar -= 1) {
    endsBehind ||= backward.has(bar);
    if (forward.has(bar) && !endsBehind) open = bar;
    if (begins.has(bar)) endsBehind = false;
  }
  return open === null ? [] : [{ code: 'repeat.open', bar: open }];
}

function unfoldOtherwise(course: Course, order: Int32Array): Int32Array | null {
  if (course.plan.jumps.size === 0) return null;
  const other = unfold({ ...course, repeatsAfterJump: !course.repeatsAfterJump }).order;
  const isSame = other.length === order.length && other.every((bar, index) => bar === order[index]);
  return isSame ? null : other;
}

function afterJumps(course: Course, order: Int32Array, otherwise: Int32Array | null): Remark[] {
  if (course.plan.jumps.size === 0) return [];
  const told = [...course.backward.values()].find(({ afterJump }) => afterJump);
  if (told) return [{ code: 'repeat.afterJump', bar: told.bar }];
  if (course.repeatsAfterJump || !otherwise) return [];
  const [first] = course.plan.jumps.keys();
  const count = otherwise.length - order.length;
  return count > 0 ? [{ code: 'jump.repeatsLeftOut', bar: first ?? null, count }] : [];
}
