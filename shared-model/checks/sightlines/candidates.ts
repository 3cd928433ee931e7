/** For one target, which occluders may hide it from each seat: a set of bits that changes from seat to seat. */

import type { CompiledScene } from './compile-scene.ts';
import { concerns } from './stretches.ts';

export interface Candidates {
  /** The occluders that may hide the target from the current seat, in the order of the scene. */
  readonly list: Int32Array;
  count: number;
  /** The places that each occluder concerns; see stretches.ts. */
  stretches: Int32Array;
  /** Bits of the current seat. */
  readonly row: Int32Array;
  /** For each place of the current block, which bits change there. */
  readonly flips: Int32Array;
}

/** Seats are gone through in blocks of this many, so that a large house with many occluders needs little room. */
const BLOCK = 512;

export function createCandidates(scene: CompiledScene): Candidates {
  const { count } = scene.occluders;
  const words = Math.ceil(count / 32);
  return {
    list: new Int32Array(count),
    count: 0,
    stretches: new Int32Array(0),
    row: new Int32Array(words),
    flips: new Int32Array(words * (BLOCK + 1)),
  };
}

/** Goes back before the first seat of a target's order. */
export function startTarget(candidates: Candidates, stretches: Int32Array): void {
  candidates.stretches = stretches;
}

/** Goes straight to the seat at one place: for a seat here and there that is quicker than going through all. */
export function jumpTo(candidates: Candidates, stretches: Int32Array, place: number): void {
  candidates.count = 0;
  for (let index = 0; index < candidates.list.length; index++) {
    if (concerns(stretches, index, place)) candidates.list[candidates.count++] = index;
  }
}

/** Moves on to the seat at `place` in the order. Every place has to be visited, in order. */
export function moveTo(candidates: Candidates, place: number): void {
  const { row, flips, list } = candidates;
  if (place % BLOCK === 0) startBlock(candidates, place);
  let count = 0;
  for (let word = 0, at = (place % BLOCK) * row.length; word < row.length; word++, at++) {
    let bits = row[word]! ^ flips[at]!;
    row[word] = bits;
    while (bits !== 0) {
      list[count++] = (word << 5) + 31 - Math.clz32(bits & -bits);
      bits &= bits - 1;
    }
  }
  candidates.count = count;
}

/** Notes where in the block of places from `start` each occluder begins and ends to matter. */
function startBlock({ stretches, row, flips }: Candidates, start: number): void {
  row.fill(0);
  flips.fill(0);
  for (let i = 0; i < stretches.length; i += 2) {
    const from = Math.max(start, stretches[i]!);
    const to = Math.min(start + BLOCK, stretches[i + 1]!);
    if (from >= to) continue;
    const index = i >> 2;
    const bit = 1 << (index & 31);
    const word = index >> 5;
    flips[(from - start) * row.length + word]! ^= bit;
    flips[(to - start) * row.length + word]! ^= bit;
  }
}
