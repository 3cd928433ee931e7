/** What differs between two scenes, as far as the visible shares can tell. */

import type { Occluder, Scene, SeatPoint, Target } from '../scene.ts';

export interface SceneChanges {
  /** Indices of targets whose window changed. */
  readonly targets: ReadonlySet<number>;
  /** Indices, in the scene before, of occluders that are gone or were different. */
  readonly gone: readonly number[];
  /** Indices, in the scene after, of occluders that are new or are different now. */
  readonly come: readonly number[];
}

/**
 * Null when the scenes are too different to compare: other seats, other targets, or occluders in another order (the
 * order decides the last bit of a sum).
 */
export function changesBetween(before: Scene, after: Scene): SceneChanges | null {
  if (!sameList(before.seats, after.seats, sameEye)) return null;
  if (!sameList(before.targets, after.targets, (a, b) => a.id === b.id)) return null;
  const places = placesById(before.occluders);
  if (places === null || placesById(after.occluders) === null) return null;
  const kept = new Set<number>();
  const come: number[] = [];
  let latest = -1;
  for (const [index, occluder] of after.occluders.entries()) {
    const place = places.get(occluder.id);
    if (place !== undefined) {
      if (place < latest) return null;
      latest = place;
    }
    const earlier = place === undefined ? undefined : before.occluders[place];
    if (place !== undefined && earlier && sameOccluder(earlier, occluder)) kept.add(place);
    else come.push(index);
  }
  const gone = [...before.occluders.keys()].filter((place) => !kept.has(place));
  return { targets: changedTargets(before.targets, after.targets), gone, come };
}

function sameList<T>(a: readonly T[], b: readonly T[], same: (a: T, b: T) => boolean): boolean {
  return a.length === b.length && a.every((item, index) => same(item, b[index] as T));
}

function sameEye(a: SeatPoint, b: SeatPoint): boolean {
  return a.x === b.x && a.y === b.y && a.z === b.z;
}

/** Null when an id occurs twice. */
function placesById(occluders: readonly Occluder[]): Map<string, number> | null {
  const places = new Map(occluders.map(({ id }, place) => [id, place]));
  return places.size === occluders.length ? places : null;
}

function changedTargets(before: readonly Target[], after: readonly Target[]): Set<number> {
  const changed = new Set<number>();
  after.forEach((b, index) => {
    const a = before[index];
    const same = a && a.x === b.x && a.y === b.y && a.z0 === b.z0 && a.z1 === b.z1 && a.width === b.width;
    if (!same) changed.add(index);
  });
  return changed;
}

function sameOccluder(a: Occluder, b: Occluder): boolean {
  if (a === b) return true;
  if (a.owner !== b.owner) return false;
  if (a.kind === 'quad' && b.kind === 'quad') {
    return sameList(a.corners, b.corners, sameNumbers);
  }
  if (a.kind === 'box' && b.kind === 'box') {
    return a.yaw === b.yaw && sameNumbers(a.center, b.center) && sameNumbers(a.size, b.size);
  }
  if (a.kind === 'capsule' && b.kind === 'capsule') {
    return a.x === b.x && a.y === b.y && a.z0 === b.z0 && a.z1 === b.z1 && a.r === b.r;
  }
  return false;
}

function sameNumbers(a: readonly number[], b: readonly number[]): boolean {
  return a.every((value, index) => value === b[index]);
}
