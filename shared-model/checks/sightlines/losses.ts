/** Who hides whom: what each record alone takes away from each player. */

import { EVERYTHING } from '../../geometry/shadows/shadows.ts';
import { uncoveredInCrowd } from '../../geometry/shadows/crowd.ts';
import type { Scene } from '../scene.ts';
import { sortSeats } from './bearings.ts';
import { createCandidates, moveTo, startTarget, type Candidates } from './candidates.ts';
import { compileScene, type CompiledScene } from './compile-scene.ts';
import { allStretches } from './stretches.ts';
import { aim, castShadow, createKernel, type Kernel } from './pair-kernel.ts';

export interface RecordLoss {
  readonly record: string;
  /** Mean over the house of the share of the window (0..1) that it would cover if nothing else stood there. */
  readonly loss: number;
}

/** Losses under this share of a window are not worth naming. */
const NEGLIGIBLE = 1e-6;

/**
 * For each target the records that cover it, worst first. Shadows overlap, so these may add up to more than what is
 * lost in all.
 */
export function lossesByRecord(scene: Scene): RecordLoss[][] {
  const { sorted, records, recordOf } = groupedByRecord(scene);
  const compiled = compileScene(sorted);
  const kernel = createKernel();
  const candidates = createCandidates(compiled);
  return scene.targets.map((window, target) => {
    const seats = sortSeats(compiled, window.x, window.y);
    const sums = new Float64Array(records.length);
    startTarget(candidates, allStretches(compiled, target, seats));
    for (let place = 0; place < seats.order.length; place++) {
      moveTo(candidates, place);
      if (!aim(kernel, compiled, seats.order[place]!, target)) continue;
      addLosses(sums, { kernel, compiled, candidates, recordOf });
    }
    return ranked(records, sums, scene.seats.length);
  });
}

interface Grouped {
  /** The scene with all occluders of a record next to each other. */
  readonly sorted: Scene;
  readonly records: readonly string[];
  /** The number of each occluder's record. */
  readonly recordOf: Int32Array;
}

function groupedByRecord(scene: Scene): Grouped {
  const records = [...new Set(scene.occluders.map(({ record }) => record))];
  const numbers = new Map(records.map((record, number) => [record, number]));
  const numberOf = (record: string): number => numbers.get(record) ?? -1;
  const occluders = [...scene.occluders].sort((a, b) => numberOf(a.record) - numberOf(b.record));
  const recordOf = Int32Array.from(occluders, ({ record }) => numberOf(record));
  return { sorted: { ...scene, occluders }, records, recordOf };
}

interface Pair {
  readonly kernel: Kernel;
  readonly compiled: CompiledScene;
  readonly candidates: Candidates;
  readonly recordOf: Int32Array;
}

/** Adds what each record hides of the pair that the kernel is aimed at. */
function addLosses(sums: Float64Array, { kernel, compiled, candidates, recordOf }: Pair): void {
  for (let i = 0; i < candidates.count;) {
    const record = recordOf[candidates.list[i]!]!;
    let all = false;
    kernel.shadows.count = 0;
    for (; i < candidates.count && recordOf[candidates.list[i]!] === record; i++) {
      all = castShadow(kernel, compiled.occluders, candidates.list[i]!) === EVERYTHING || all;
    }
    sums[record]! += all ? 1 : 1 - uncoveredInCrowd(kernel.shadows);
  }
}

function ranked(records: readonly string[], sums: Float64Array, seats: number): RecordLoss[] {
  return records
    .map((record, number) => ({ record, loss: (sums[number] ?? 0) / Math.max(1, seats) }))
    .filter(({ loss }) => loss > NEGLIGIBLE)
    .sort((a, b) => b.loss - a.loss || (a.record < b.record ? -1 : 1));
}
