/** The union of shadows beside the same algorithm in C (`sweep.c`), on the same shadows; only where a compiler is. */

import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Scene } from '#model/checks/scene.ts';
import { sortSeats } from '#model/checks/sightlines/bearings.ts';
import { moveTo, startTarget } from '#model/checks/sightlines/candidates.ts';
import { compileScene } from '#model/checks/sightlines/compile-scene.ts';
import { createWork } from '#model/checks/sightlines/compute-target.ts';
import { allStretches } from '#model/checks/sightlines/stretches.ts';
import { aim, castShadow } from '#model/checks/sightlines/pair-kernel.ts';
import { EVERYTHING, type Shadows } from '#model/geometry/shadows/shadows.ts';
import { uncoveredShare } from '#model/geometry/shadows/uncovered.ts';

/** Microseconds a window. */
export interface SweepTimes {
  readonly product: number;
  readonly compiled: number;
  readonly windows: number;
}

const ROUNDS = 15;

/** A reason in words where there is nothing to compare with. `source`: the C file. */
export function compareWithC(scene: Scene, source: string): SweepTimes | string {
  const folder = mkdtempSync(join(tmpdir(), 'standlines-c-'));
  try {
    const windows = shadowsOf(scene);
    const file = join(folder, 'shadows');
    writeFileSync(file, packed(windows));
    const program = join(folder, 'sweep');
    const built = spawnSync('cc', ['-O3', '-march=native', source, '-lm', '-o', program], {
      encoding: 'utf8',
    });
    if (built.status !== 0) return built.error ? 'no C compiler here' : built.stderr;
    const run = spawnSync(program, [file, String(ROUNDS)], { encoding: 'utf8' });
    if (run.status !== 0) return run.stderr;
    const [compiled = NaN, mean = NaN] = run.stdout.split(' ').map(Number);
    const own = timed(windows);
    if (Math.abs(own.mean - mean) > 1e-12)
      return `the C program computes another share: ${mean}, not ${own.mean}`;
    return { product: own.microseconds, compiled, windows: windows.length };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** What stands before each window that is partly hidden. */
function shadowsOf(scene: Scene): Shadows[] {
  const compiled = compileScene(scene);
  const { kernel, candidates } = createWork(compiled);
  return scene.targets.flatMap(({ x, y }, target) => {
    const seats = sortSeats(compiled, x, y);
    startTarget(candidates, allStretches(compiled, target, seats));
    const found: Shadows[] = [];
    for (let place = 0; place < seats.order.length; place++) {
      moveTo(candidates, place);
      if (!aim(kernel, compiled, seats.order[place] ?? 0, target)) continue;
      let hidden = false;
      for (let i = 0; i < candidates.count; i++) {
        const cover = castShadow(kernel, compiled.occluders, candidates.list[i] ?? 0);
        hidden ||= cover === EVERYTHING;
      }
      if (!hidden && kernel.shadows.count > 0) found.push(copyOf(kernel.shadows));
    }
    return found;
  });
}

function copyOf({ u, lo, hi, starts, count }: Shadows): Shadows {
  const columns = starts[count] ?? 0;
  return {
    u: u.slice(0, columns),
    lo: lo.slice(0, columns),
    hi: hi.slice(0, columns),
    starts: starts.slice(0, count + 1),
    count,
  };
}

function packed(windows: readonly Shadows[]): Float64Array {
  const numbers = [windows.length];
  for (const { u, lo, hi, starts, count } of windows) {
    numbers.push(count);
    for (const start of starts) numbers.push(start);
    u.forEach((at, column) => numbers.push(at, lo[column] ?? NaN, hi[column] ?? NaN));
  }
  return Float64Array.from(numbers);
}

function timed(windows: readonly Shadows[]): { readonly microseconds: number; readonly mean: number } {
  const times: number[] = [];
  let sum = 0;
  for (let round = 0; round < 2 * ROUNDS; round++) {
    const { user, system } = process.cpuUsage();
    sum = 0;
    for (const shadows of windows) sum += uncoveredShare(shadows);
    const now = process.cpuUsage();
    // The first half warms the engine up.
    if (round >= ROUNDS) times.push(now.user + now.system - user - system);
  }
  const median = times.sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? NaN;
  return { microseconds: median / windows.length, mean: sum / windows.length };
}
