/**
 * Keeps the visible shares of a scene and brings them up to date when the scene changes: only the pairs of seat and
 * target that a changed record concerns, before or after, are looked at again, and of those only the changed record's own
 * shadows are cast anew while it is moved about (backdrop.ts). The figures are the same bit for bit as those computed from
 * nothing: shares go in steps that are much wider than rounding, and a pair that lies too near to the middle between two
 * steps is computed from nothing (share-steps.ts).
 */

import type { Occluder, Scene } from '../scene.ts';
import { createBackdrop, forgetTargets, type Backdrop } from './backdrop.ts';
import { sortSeats } from './bearings.ts';
import { compileScene, recompileShapes } from './compile-scene.ts';
import { computeTarget, createWork, type TargetColumn } from './compute-target.ts';
import { changesBetween, type SceneChanges } from './scene-changes.ts';
import { indicesOf, type State } from './sight-state.ts';
import { allStretches, placeStretches } from './stretches.ts';
import { createUpdate, updateTarget } from './update-target.ts';

export interface SightEngine {
  /** The share of target t that seat s sees is at `s * targets + t`. Computed when the engine is made. */
  readonly visible: Float64Array;
  /** The engine of another scene, using of this one what still holds. This one stays as it is. */
  update(scene: Scene): SightEngine;
}

export function createSightEngine(scene: Scene): SightEngine {
  const compiled = compileScene(scene);
  const orders = compiled.targets.map(({ x, y }) => sortSeats(compiled, x, y));
  const stretches = orders.map((seats, target) => allStretches(compiled, target, seats));
  const visible = new Float64Array(scene.seats.length * scene.targets.length);
  const state: State = { scene, compiled, orders, stretches, visible, backdrop: null };
  const work = createWork(compiled);
  for (const target of orders.keys()) computeTarget(columnOf(state, target), work);
  return engineOf(state);
}

function engineOf(state: State): SightEngine {
  return { visible: state.visible, update: (scene) => updated(state, scene) };
}

function columnOf({ compiled, orders, stretches, visible }: State, target: number): TargetColumn {
  const [seats, places] = [orders[target], stretches[target]];
  if (!seats || !places) throw new Error(`no target ${target}`);
  return { compiled, seats, stretches: places, target, visible };
}

function updated(before: State, scene: Scene): SightEngine {
  const changes = changesBetween(before.scene, scene);
  if (changes === null) return createSightEngine(scene);
  // Also for a further change from this same state, as when one thing is tried in several places.
  before.backdrop = backdropFor(before, scene, changes);
  const after: State = {
    scene,
    ...recompiled(before, { scene, changes, records: before.backdrop.records }),
    visible: before.visible.slice(),
    backdrop: forgetTargets(before.backdrop, changes.targets),
  };
  const work = createWork(after.compiled);
  const update = createUpdate(before, after, work);
  for (const target of after.orders.keys()) {
    if (changes.targets.has(target)) computeTarget(columnOf(after, target), work);
    else updateTarget(update, target);
  }
  return engineOf(after);
}

/** The one that is known, as long as it leaves away all that has changed now. */
function backdropFor({ scene, backdrop }: State, after: Scene, { gone, come }: SceneChanges): Backdrop {
  const recordsOf = (occluders: readonly Occluder[], indices: readonly number[]) =>
    indices.flatMap((index) => occluders[index]?.record ?? []);
  const changed = [...recordsOf(scene.occluders, gone), ...recordsOf(after.occluders, come)];
  if (backdrop && changed.every((record) => backdrop.records.has(record))) return backdrop;
  return createBackdrop(new Set(changed), after.targets.length);
}

interface Changed {
  readonly scene: Scene;
  readonly changes: SceneChanges;
  /** All occluders that may be different now belong to one of these records. */
  readonly records: ReadonlySet<string>;
}

type Compiled = Pick<State, 'compiled' | 'orders' | 'stretches'>;

/** Takes over what has not changed. */
function recompiled(before: State, changed: Changed): Compiled {
  const { scene, changes, records } = changed;
  if (changes.targets.size > 0 || !isInPlace(before.scene, changed)) return compiledAnew(before, changed);
  const indices = indicesOf(scene, records);
  const compiled = recompileShapes(before.compiled, scene, indices);
  const stretches = before.orders.map((seats, target) => {
    const copy = before.stretches[target]?.slice() ?? allStretches(compiled, target, seats);
    for (const index of indices) placeStretches(copy, compiled, { target, seats, index });
    return copy;
  });
  return { compiled, orders: before.orders, stretches };
}

function compiledAnew(before: State, { scene, changes }: Changed): Compiled {
  const compiled = compileScene(scene);
  const orders = compiled.targets.map(({ x, y }, target) => {
    const known = before.orders[target];
    return known && !changes.targets.has(target) ? known : sortSeats(compiled, x, y);
  });
  const stretches = orders.map((seats, target) => allStretches(compiled, target, seats));
  return { compiled, orders, stretches };
}

/** Whether occluders have only changed their shapes: none has come or gone, and none belongs to somebody else. */
function isInPlace(before: Scene, { scene, changes: { gone, come } }: Changed): boolean {
  return (
    gone.length === come.length &&
    gone.every(
      (index, i) => index === come[i] && before.occluders[index]?.owner === scene.occluders[index]?.owner,
    )
  );
}
