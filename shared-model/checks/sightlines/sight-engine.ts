/**
 * Keeps the visible shares of a scene and brings them up to date when the scene changes: only the pairs of seat and
 * target on which a changed occluder throws a shadow, before or after, are computed again. The figures are the same
 * bit for bit as those computed from nothing, because each pair is computed by the same steps in the same order.
 */

import { EVERYTHING, NOTHING } from '../../geometry/shadows/shadows.ts';
import { uncoveredShare } from '../../geometry/shadows/uncovered.ts';
import type { Scene } from '../scene.ts';
import { sortSeats, stretchesOf, wedgeOf, type SeatsByBearing, type Stretches } from './bearings.ts';
import { createCandidates, moveTo, startTarget, type Candidates } from './candidates.ts';
import { compileScene, type CompiledScene } from './compile-scene.ts';
import { aim, castShadow, createKernel, type Kernel } from './pair-kernel.ts';
import { changesBetween, type SceneChanges } from './scene-changes.ts';

export interface SightEngine {
  /** The share of target t that seat s sees is at `s * targets + t`. Computed when the engine is made. */
  readonly visible: Float64Array;
  /** The engine of another scene, using of this one what still holds. This one stays as it is. */
  update(scene: Scene): SightEngine;
}

interface State {
  readonly scene: Scene;
  readonly compiled: CompiledScene;
  readonly orders: readonly SeatsByBearing[];
  readonly visible: Float64Array;
}

export function createSightEngine(scene: Scene): SightEngine {
  const compiled = compileScene(scene);
  const orders = compiled.targets.map(({ x, y }) => sortSeats(compiled, x, y));
  const state = {
    scene,
    compiled,
    orders,
    visible: new Float64Array(scene.seats.length * scene.targets.length),
  };
  const work = createWork(compiled);
  compiled.targets.forEach((_, target) => computeTarget(state, work, target, null));
  return engineOf(state);
}

function engineOf(state: State): SightEngine {
  return { visible: state.visible, update: (scene) => updated(state, scene) };
}

function updated(before: State, scene: Scene): SightEngine {
  const changes = changesBetween(before.scene, scene);
  if (changes === null) return createSightEngine(scene);
  const compiled = compileScene(scene);
  const orders = compiled.targets.map((target, index) => {
    const known = before.orders[index];
    return known && !changes.targets.has(index) ? known : sortSeats(compiled, target.x, target.y);
  });
  const after: State = { scene, compiled, orders, visible: before.visible.slice() };
  const work = createWork(compiled);
  compiled.targets.forEach((_, target) => {
    if (changes.targets.has(target)) computeTarget(after, work, target, null);
    else if (markAffected(before, after, changes, work, target))
      computeTarget(after, work, target, work.marked);
  });
  return engineOf(after);
}

/** Room to work in. */
interface Work {
  readonly kernel: Kernel;
  readonly candidates: Candidates;
  /** 1 for each place in the order of seats that has to be computed again. */
  readonly marked: Uint8Array;
}

function createWork(compiled: CompiledScene): Work {
  return {
    kernel: createKernel(),
    candidates: createCandidates(compiled),
    marked: new Uint8Array(compiled.eyes.x.length),
  };
}

/** Computes one target's share from every seat, or from those at the marked places only. */
function computeTarget(state: State, work: Work, target: number, marked: Uint8Array | null): void {
  const { compiled, visible } = state;
  const { candidates, kernel } = work;
  const seats = state.orders[target];
  if (!seats) throw new Error(`no target ${target}`);
  startTarget(candidates, compiled, target, seats);
  for (let place = 0; place < seats.order.length; place++) {
    moveTo(candidates, place);
    if (marked !== null && marked[place] === 0) continue;
    const seat = seats.order[place]!;
    visible[seat * compiled.targets.length + target] = shareOf(kernel, compiled, candidates, seat, target);
  }
}

function shareOf(
  kernel: Kernel,
  compiled: CompiledScene,
  candidates: Candidates,
  seat: number,
  target: number,
): number {
  if (!aim(kernel, compiled, seat, target)) return 1;
  for (let i = 0; i < candidates.count; i++) {
    if (castShadow(kernel, compiled.occluders, candidates.list[i]!) === EVERYTHING) return 0;
  }
  return uncoveredShare(kernel.shadows);
}

/** Marks the places from which a changed occluder hides part of a target, before or after. False: none. */
function markAffected(
  before: State,
  after: State,
  changes: SceneChanges,
  work: Work,
  target: number,
): boolean {
  work.marked.fill(0);
  let any = false;
  for (const index of changes.gone) any = markShadowed(before, work, target, index) || any;
  for (const index of changes.come) any = markShadowed(after, work, target, index) || any;
  return any;
}

function markShadowed(
  { compiled, orders }: State,
  { kernel, marked }: Work,
  target: number,
  index: number,
): boolean {
  const window = compiled.targets[target];
  const seats = orders[target];
  if (!window || !seats || compiled.occluders.owner[index] === window.owner) return false;
  const stretches: Stretches = [0, 0, 0, 0];
  stretchesOf(
    seats,
    wedgeOf(compiled.occluders, index, { x: window.x, y: window.y, margin: window.width / 2 }),
    stretches,
  );
  let any = false;
  for (let half = 0; half < 4; half += 2) {
    for (let place = stretches[half]!; place < stretches[half + 1]!; place++) {
      if (marked[place] === 1 || !aim(kernel, compiled, seats.order[place]!, target)) continue;
      if (castShadow(kernel, compiled.occluders, index) === NOTHING) continue;
      marked[place] = 1;
      any = true;
    }
  }
  return any;
}
