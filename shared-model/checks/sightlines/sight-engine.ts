/**
 * Keeps the visible shares of a scene and brings them up to date when the scene changes: only the pairs of seat and
 * target on which a changed occluder throws a shadow, before or after, are computed again. The figures are the same
 * bit for bit as those computed from nothing, because each pair is computed by the same steps in the same order.
 */

import { NOTHING } from '../../geometry/shadows/shadows.ts';
import type { Scene } from '../scene.ts';
import { sortSeats, stretchesOf, wedgeOf, type SeatsByBearing, type Stretches } from './bearings.ts';
import { compileScene, type CompiledScene } from './compile-scene.ts';
import { computeTarget, createWork } from './compute-target.ts';
import { aim, castShadow, type Kernel } from './pair-kernel.ts';
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
  orders.forEach((seats, target) => computeTarget({ ...state, seats, target }, work, null));
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
  const marked = new Uint8Array(scene.seats.length);
  orders.forEach((seats, target) => {
    const column = { ...after, seats, target };
    if (changes.targets.has(target)) computeTarget(column, work, null);
    else if (markAffected({ before, after, changes, marked }, work.kernel, target)) {
      computeTarget(column, work, marked);
    }
  });
  return engineOf(after);
}

interface Step {
  readonly before: State;
  readonly after: State;
  readonly changes: SceneChanges;
  /** Set to 1 for each place in the order of seats that has to be computed again. */
  readonly marked: Uint8Array;
}

/** Marks the places from which a changed occluder hides part of a target, before or after. False: none. */
function markAffected({ before, after, changes, marked }: Step, kernel: Kernel, target: number): boolean {
  marked.fill(0);
  const mark = (state: State, index: number): void => {
    for (const place of shadowedPlaces(state, kernel, target, index)) marked[place] = 1;
  };
  for (const index of changes.gone) mark(before, index);
  for (const index of changes.come) mark(after, index);
  return marked.includes(1);
}

/** The places in the order of seats from which an occluder throws a shadow on a target's window. */
function shadowedPlaces(
  { compiled, orders }: State,
  kernel: Kernel,
  target: number,
  index: number,
): number[] {
  const window = compiled.targets[target];
  const seats = orders[target];
  if (!window || !seats || compiled.occluders.owner[index] === window.owner) return [];
  const stretches: Stretches = [0, 0, 0, 0];
  const axis = { x: window.x, y: window.y, margin: window.width / 2 };
  stretchesOf(seats, wedgeOf(compiled.occluders, index, axis), stretches);
  const places: number[] = [];
  for (let half = 0; half < 4; half += 2) {
    for (let place = stretches[half]!; place < stretches[half + 1]!; place++) {
      if (!aim(kernel, compiled, seats.order[place]!, target)) continue;
      if (castShadow(kernel, compiled.occluders, index) !== NOTHING) places.push(place);
    }
  }
  return places;
}
