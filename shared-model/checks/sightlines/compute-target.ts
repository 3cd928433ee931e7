/** The visible shares of one target from every seat. */

import { CROWD, uncoveredInCrowd } from '../../geometry/shadows/crowd.ts';
import { EVERYTHING } from '../../geometry/shadows/shadows.ts';

import type { SeatsByBearing } from './bearings.ts';
import { createCandidates, moveTo, startTarget, type Candidates } from './candidates.ts';
import type { CompiledScene } from './compile-scene.ts';
import { aim, castShadow, createKernel, type Kernel } from './pair-kernel.ts';
import { shareOfArea } from './share-steps.ts';

/** Room to work in; make one and use it for all targets of a scene. */
export interface Work {
  readonly kernel: Kernel;
  readonly candidates: Candidates;
}

export function createWork(compiled: CompiledScene): Work {
  return { kernel: createKernel(), candidates: createCandidates(compiled) };
}

/** One target's part of the shares. */
export interface TargetColumn {
  readonly compiled: CompiledScene;
  /** The seats sorted by their bearing from this target. */
  readonly seats: SeatsByBearing;
  /** The places that each occluder concerns; see stretches.ts. */
  readonly stretches: Int32Array;
  readonly target: number;
  /** Shares of all targets, row-major; this target's are written. */
  readonly visible: Float64Array;
}

export function computeTarget(column: TargetColumn, work: Work): void {
  const { compiled, seats, stretches, target, visible } = column;
  startTarget(work.candidates, stretches);
  for (let place = 0; place < seats.order.length; place++) {
    moveTo(work.candidates, place);
    const seat = seats.order[place]!;
    visible[seat * compiled.targets.length + target] = shareFrom(seat, target, compiled, work);
  }
}

/** A window of which less than this is visible is hidden. */
const HIDDEN = 1e-12;

/** The share of a target from one seat, whose candidates `work` holds. */
export function shareFrom(
  seat: number,
  target: number,
  compiled: CompiledScene,
  { kernel, candidates }: Work,
): number {
  if (!aim(kernel, compiled, seat, target)) return 1;
  let crowd = CROWD;
  for (let i = 0; i < candidates.count; i++) {
    if (castShadow(kernel, compiled.occluders, candidates.list[i]!) === EVERYTHING) return 0;
    if (kernel.shadows.count <= crowd) continue;
    // In a crowd it is worth finding out now and then whether anything is left to see.
    if (uncoveredInCrowd(kernel.shadows) < HIDDEN) return 0;
    crowd *= 4;
  }
  return shareOfArea(uncoveredInCrowd(kernel.shadows));
}
