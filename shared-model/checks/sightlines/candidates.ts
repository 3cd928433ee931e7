/** For one target, which occluders may hide it from each seat: a set of bits that changes from seat to seat. */

import { stretchesOf, wedgeOf, type SeatsByBearing, type Stretches } from './bearings.ts';
import type { CompiledScene } from './compile-scene.ts';

export interface Candidates {
  /** The occluders that may hide the target from the current seat, in the order of the scene. */
  readonly list: Int32Array;
  count: number;
  /** Bits of the current seat. */
  readonly row: Int32Array;
  /** For each place in the order of seats, which bits change there. */
  readonly flips: Int32Array;
}

export function createCandidates(scene: CompiledScene): Candidates {
  const words = Math.ceil(scene.occluders.count / 32);
  return {
    list: new Int32Array(scene.occluders.count),
    count: 0,
    row: new Int32Array(words),
    flips: new Int32Array(words * (scene.eyes.x.length + 1)),
  };
}

/** Goes back before the first seat of a target's order. */
export function startTarget(
  candidates: Candidates,
  scene: CompiledScene,
  target: number,
  seats: SeatsByBearing,
): void {
  const { flips, row } = candidates;
  const window = scene.targets[target];
  if (!window) throw new Error(`no target ${target}`);
  const axis = { x: window.x, y: window.y, margin: window.width / 2 };
  const stretches: Stretches = [0, 0, 0, 0];
  flips.fill(0);
  row.fill(0);
  for (let index = 0; index < scene.occluders.count; index++) {
    if (scene.occluders.owner[index] === window.owner || scene.occluders.nested[index] === 1) continue;
    stretchesOf(seats, wedgeOf(scene.occluders, index, axis), stretches);
    const word = index >> 5;
    for (const place of stretches) flips[place * row.length + word]! ^= 1 << (index & 31);
  }
}

/** Moves on to the seat at `place` in the order. Every place has to be visited, in order. */
export function moveTo(candidates: Candidates, place: number): void {
  const { row, flips, list } = candidates;
  let count = 0;
  for (let word = 0, at = place * row.length; word < row.length; word++, at++) {
    let bits = row[word]! ^ flips[at]!;
    row[word] = bits;
    while (bits !== 0) {
      list[count++] = (word << 5) + 31 - Math.clz32(bits & -bits);
      bits &= bits - 1;
    }
  }
  candidates.count = count;
}
