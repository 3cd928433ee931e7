/** What the whole house sees of each player: the figures a director asks for first. */

import type { HouseFigure } from '../report.ts';
import type { Scene } from '../scene.ts';
import { bandOf } from './bands.ts';
import { lossesByRecord } from './losses.ts';

/**
 * One figure a target of the scene, in its order. `visible` is row-major as `visibleShares` gives it; `seesWell` is the
 * share of the window (0..1) from which on a place counts as seeing the player well. A house without places sees
 * everybody: shares 1, no worst place (`seat` is empty).
 */
export function houseFigures(scene: Scene, visible: Float64Array, seesWell: number): HouseFigure[] {
  const losses = lossesByRecord(scene);
  return scene.targets.map(({ id }, target) => {
    const shares = sharesOf(scene, visible, target);
    return {
      player: id,
      seenWell: shareOfPlaces(shares, seesWell),
      median: medianOf(shares),
      worst: worstOf(scene, shares),
      bands: countBands(shares),
      coveredBy: losses[target] ?? [],
    };
  });
}

/** The shares of one target, seat by seat. */
export function sharesOf(scene: Scene, visible: Float64Array, target: number): Float64Array {
  const targets = scene.targets.length;
  return Float64Array.from(scene.seats, (_, seat) => visible[seat * targets + target] ?? 0);
}

/** A share within this of the limit meets it: rounding must not turn 90 % into 89.99 %. */
const ROUNDING = 1e-9;

/** Of the places with these shares, how many (0..1) see at least `seesWell`; 1 when there is none. */
export function shareOfPlaces(shares: Float64Array, seesWell: number): number {
  if (shares.length === 0) return 1;
  let seeing = 0;
  for (const share of shares) if (share >= seesWell - ROUNDING) seeing++;
  return seeing / shares.length;
}

function medianOf(shares: Float64Array): number {
  if (shares.length === 0) return 1;
  const sorted = shares.slice().sort();
  const upper = sorted[sorted.length >> 1] ?? 1;
  const lower = sorted[(sorted.length - 1) >> 1] ?? 1;
  return (lower + upper) / 2;
}

/** The first of the places that see least. */
function worstOf(scene: Scene, shares: Float64Array): HouseFigure['worst'] {
  let worst = { seat: '', share: 1 };
  scene.seats.forEach(({ id }, seat) => {
    const share = shares[seat] ?? 1;
    if (worst.seat === '' || share < worst.share) worst = { seat: id, share };
  });
  return worst;
}

function countBands(shares: Float64Array): HouseFigure['bands'] {
  const counts: [number, number, number, number, number] = [0, 0, 0, 0, 0];
  for (const share of shares) counts[bandOf(share)]++;
  return counts;
}
