/** Brings the shares of one target up to date after some records have changed. */

import { EVERYTHING, NOTHING, type Cover } from '../../geometry/shadows/shadows.ts';
import { areaBehind, columnOf, lookBehind, UNFIT, type Backdrop, type LookedAt } from './backdrop.ts';
import { jumpTo } from './candidates.ts';
import { shareFrom, type Work } from './compute-target.ts';
import { aim, castShadow, createKernel, type Kernel } from './pair-kernel.ts';
import { isBetweenSteps, shareOfArea } from './share-steps.ts';
import { indicesOf, type State } from './sight-state.ts';
import { concerns } from './stretches.ts';

export interface Update {
  readonly before: Side;
  readonly after: Side;
  readonly backdrop: Backdrop;
  readonly work: Work;
  /** For the shadows of what moves, while `work` is busy with the rest. */
  readonly kernel: Kernel;
  /** 1 for each place in the target's order of seats that is to be looked at. */
  readonly marked: Uint8Array;
  /** 1 for each occluder of the scene after that belongs to a moving record. */
  readonly isMoving: Uint8Array;
}

interface Side {
  readonly state: State;
  /** Indices of the occluders that belong to a moving record. */
  readonly moving: readonly number[];
}

const kernel = createKernel();

/** `after.backdrop` is the one to use. */
export function createUpdate(before: State, after: State, work: Work): Update {
  const { backdrop } = after;
  if (!backdrop) throw new Error('no backdrop');
  const sideOf = (state: State): Side => ({ state, moving: indicesOf(state.scene, backdrop.records) });
  const update = { before: sideOf(before), after: sideOf(after), backdrop, work, kernel };
  const isMoving = new Uint8Array(after.compiled.occluders.count);
  for (const index of update.after.moving) isMoving[index] = 1;
  return { ...update, isMoving, marked: new Uint8Array(after.scene.seats.length) };
}

export function updateTarget(update: Update, target: number): void {
  const { before, after, marked, backdrop } = update;
  const { compiled, orders, visible } = after.state;
  marked.fill(0);
  mark(marked, before, target);
  mark(marked, after, target);
  const first = marked.indexOf(1);
  if (first < 0) return;
  const last = marked.lastIndexOf(1);
  const { order } = orders[target]!;
  const column = columnOf(backdrop, target, order.length);
  for (let place = first; place <= last; place++) {
    if (marked[place] === 0) continue;
    const share = shareAt(update, { backdrop, column, place }, order[place]!, target);
    if (share !== AS_BEFORE) visible[order[place]! * compiled.targets.length + target] = share;
  }
}

/** Marks the places that a moving occluder may concern. */
function mark(marked: Uint8Array, { state, moving }: Side, target: number): void {
  const stretches = state.stretches[target]!;
  for (const index of moving) {
    marked.fill(1, stretches[4 * index], stretches[4 * index + 1]);
    marked.fill(1, stretches[4 * index + 2], stretches[4 * index + 3]);
  }
}

/** Instead of a share: it is what it was. */
const AS_BEFORE = -1;

function shareAt(update: Update, pair: LookedAt, seat: number, target: number): number {
  const { after, before, kernel, work } = update;
  const { compiled } = after.state;
  // A window without a direction is hidden by nothing, before and after.
  if (!aim(kernel, compiled, seat, target)) return AS_BEFORE;
  const cover = castMoving(kernel, after, target, pair.place);
  if (Number.isNaN(pair.column.area[pair.place])) {
    aim(work.kernel, compiled, seat, target);
    if (cover === NOTHING && castMoving(work.kernel, before, target, pair.place) === NOTHING)
      return AS_BEFORE;
    aim(work.kernel, compiled, seat, target);
    jumpTo(work.candidates, after.state.stretches[target]!, pair.place);
    lookBehind(pair, work.kernel, compiled.occluders, {
      candidates: work.candidates,
      isMoving: update.isMoving,
    });
  }
  if (cover === EVERYTHING) return 0;
  const area = cover === NOTHING ? pair.column.area[pair.place]! : areaBehind(pair, kernel.shadows);
  if (area !== UNFIT && !isBetweenSteps(area)) return shareOfArea(area);
  jumpTo(work.candidates, after.state.stretches[target]!, pair.place);
  return shareFrom(seat, target, compiled, work);
}

/** Casts what moves and may hide the target from the seat at `place`, which the kernel is aimed at. */
function castMoving(kernel: Kernel, { state, moving }: Side, target: number, place: number): Cover {
  const stretches = state.stretches[target]!;
  let cover: Cover = NOTHING;
  for (const index of moving) {
    if (!concerns(stretches, index, place)) continue;
    const one = castShadow(kernel, state.compiled.occluders, index);
    if (one === EVERYTHING) return EVERYTHING;
    if (one !== NOTHING) cover = one;
  }
  return cover;
}
