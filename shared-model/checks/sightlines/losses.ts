/** Who hides whom: what each record alone takes away from each player. */

import type { HouseFigure } from '../report.ts';
import type { Occluder, Scene } from '../scene.ts';
import { visibleShares } from './visible-shares.ts';

type Losses = HouseFigure['coveredBy'];

/** Losses under this share of a window are not worth naming. */
const NEGLIGIBLE = 1e-6;

/**
 * For each target the records that cover it, worst first: the mean over the house of the share of its window that the
 * record would cover if nothing else stood there. Shadows overlap, so these may add up to more than what is lost in all.
 */
export function lossesByRecord(scene: Scene): Losses[] {
  const losses = scene.targets.map((): { record: string; loss: number }[] => []);
  if (scene.seats.length === 0) return losses;
  for (const [record, occluders] of occludersByRecord(scene)) {
    meanLosses({ ...scene, occluders }).forEach((loss, target) => {
      if (loss > NEGLIGIBLE) losses[target]?.push({ record, loss });
    });
  }
  for (const list of losses) list.sort((a, b) => b.loss - a.loss || (a.record < b.record ? -1 : 1));
  return losses;
}

function occludersByRecord(scene: Scene): Map<string, Occluder[]> {
  const byRecord = new Map<string, Occluder[]>();
  for (const occluder of scene.occluders) {
    const known = byRecord.get(occluder.record);
    if (known) known.push(occluder);
    else byRecord.set(occluder.record, [occluder]);
  }
  return byRecord;
}

function meanLosses(scene: Scene): number[] {
  const targets = scene.targets.length;
  const sums = new Array<number>(targets).fill(0);
  const visible = visibleShares(scene);
  for (let pair = 0; pair < visible.length; pair++) {
    const target = pair % targets;
    sums[target] = (sums[target] ?? 0) + 1 - (visible[pair] ?? 1);
  }
  return sums.map((sum) => sum / scene.seats.length);
}
