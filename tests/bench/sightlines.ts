/** Times the sight check; see README.md in this folder. */

import os from 'node:os';
import type { Occluder, Scene } from '#model/checks/scene.ts';
import { createSightEngine, type SightEngine } from '#model/checks/sightlines/sight-engine.ts';
import { lossesByRecord } from '#model/checks/sightlines/losses.ts';
import { visibleShares } from '#model/checks/sightlines/visible-shares.ts';
import { rayTree, shareByTree, shareByUnion, somePairs } from './baselines.ts';
import { compareWithC } from './c-kernel.ts';
import { hallScene, W1, W2, W3, type HallSize } from './hall-scene.ts';

/** How far a stand is dragged from frame to frame, and for how many frames. */
const STEP = { x: 10, y: 3 };
const FRAMES = 12;

const cpus = os.cpus();
console.log(
  `${cpus.length} x ${cpus[0]?.model.trim()}, Node ${process.version}, load ${os.loadavg()[0]?.toFixed(1)}`,
);
compare(W1);
compare(W2);
besideC(W2);
large(W3);
growth(
  'seats',
  [200, 2000, 20_000].map((seats) => ({ ...W2, seats })),
);
growth(
  'players',
  [3, 12, 30].map((players) => ({ ...W2, players })),
);
growth(
  'occluders',
  [40, 120, 400].map((occluders) => ({ ...W2, occluders })),
);

/** Milliseconds of processor time, which other programs on a shared machine disturb less than they do the clock. */
function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** Median over the rounds of the time of each task; the tasks take turns, so that all share bad moments. */
function medians(rounds: number, ...tasks: (() => void)[]): number[] {
  const times = tasks.map((): number[] => []);
  // First without the watch, until the engine has compiled what it will.
  for (let warm = 0; warm < 4; warm++) for (const task of tasks) task();
  for (let round = 0; round < rounds; round++) {
    tasks.forEach((task, i) => {
      // No task pays for what another one threw away.
      globalThis.gc?.();
      const start = processorTime();
      task();
      times[i]?.push(processorTime() - start);
    });
  }
  return times.map(median);
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;
}

function compare(size: HallSize): void {
  const scene = hallScene(size);
  const pairs = size.seats * size.players;
  const shares = visibleShares(scene);
  const tree = rayTree(scene);
  const [forRays, forUnions] = [somePairs(scene, 7), somePairs(scene, Math.ceil(pairs / 120))];
  const drags = draggedStands(scene);
  // The processor's clock is coarse, so that small scenes are computed several times over.
  const times = Math.ceil(24_000 / pairs);
  const [full = NaN, rays = NaN, unions = NaN] = medians(
    9,
    () => repeat(times, () => visibleShares(scene)),
    () => forRays.forEach((pair) => shareByTree(tree, pair, 8)),
    () => forUnions.forEach((pair) => shareByUnion(scene, pair)),
  );
  const { taken, moved } = timeDrags(createSightEngine(scene), drags);
  const perPair = (full * 1000) / times / pairs;
  const [perRays, perUnions] = [(rays * 1000) / forRays.length, (unions * 1000) / forUnions.length];
  const mean = shares.reduce((sum, share) => sum + share, 0) / pairs;
  console.log(`\n${size.name}: ${size.seats} seats x ${size.players} players x ${size.occluders} occluders`);
  console.log(
    `  mean share visible ${mean.toFixed(3)}, partly hidden pairs ${(100 * partly(shares)).toFixed(0)} %`,
  );
  console.log(`  all pairs               ${(full / times).toFixed(1)} ms, ${perPair.toFixed(2)} us a pair`);
  console.log(
    `  three-mesh-bvh, 64 rays ${perRays.toFixed(1)} us a pair: ${(perRays / perPair).toFixed(1)} times as long`,
  );
  console.log(
    `  polygon-clipping        ${perUnions.toFixed(0)} us a pair: ${(perUnions / perPair).toFixed(0)} times as long`,
  );
  const timesAll = (part: number): string =>
    `${part.toFixed(2)} ms: all pairs take ${(full / times / part).toFixed(1)} times as long`;
  console.log(`  a stand is taken        ${timesAll(taken)}`);
  console.log(`  and moved               ${timesAll(moved)}`);
}

/** The file with the C program comes from the command line: the bundle lies elsewhere. */
function besideC(size: HallSize): void {
  const times = compareWithC(hallScene(size), process.argv[2] ?? '');
  if (typeof times === 'string')
    return console.log(`  the same union in C      not compared: ${times.trim()}`);
  const { product, compiled, windows } = times;
  console.log(
    `  the union of ${windows} windows: ${product.toFixed(2)} us each; in C (-O3) ${compiled.toFixed(2)} us: ${(product / compiled).toFixed(2)} times as long`,
  );
}

function repeat(times: number, task: () => void): void {
  for (let i = 0; i < times; i++) task();
}

function partly(shares: Float64Array): number {
  return shares.filter((share) => share > 0 && share < 1).length / shares.length;
}

/** For one stand after the other, the scenes while it is dragged. */
function draggedStands(scene: Scene): Scene[][] {
  const stands = [
    ...new Set(scene.occluders.filter(({ kind }) => kind === 'quad').map(({ record }) => record)),
  ];
  const after = (record: string, steps: number): Scene => ({
    ...scene,
    occluders: scene.occluders.map((occluder) =>
      occluder.record === record ? moved(occluder, steps * STEP.x, steps * STEP.y) : occluder,
    ),
  });
  return stands.map((record) => Array.from({ length: FRAMES }, (_, frame) => after(record, frame + 1)));
}

/** Median milliseconds of the first frame of a drag, and of each of the others. */
function timeDrags(
  engine: SightEngine,
  drags: readonly (readonly Scene[])[],
): { taken: number; moved: number } {
  const times: { taken: number[]; moved: number[] } = { taken: [], moved: [] };
  for (let round = 0; round < 4; round++) {
    for (const [first, ...others] of drags) {
      if (!first) continue;
      globalThis.gc?.();
      const start = processorTime();
      let draft = engine.update(first);
      const taken = processorTime();
      for (const scene of others) draft = draft.update(scene);
      // The first round is for the engine to compile what it will.
      if (round === 0) continue;
      times.taken.push(taken - start);
      times.moved.push((processorTime() - taken) / others.length);
    }
  }
  return { taken: median(times.taken), moved: median(times.moved) };
}

function moved(occluder: Occluder, dx: number, dy: number): Occluder {
  if (occluder.kind !== 'quad') return occluder;
  const [a, b, c, d] = occluder.corners;
  const move = ([x, y, z]: typeof a): typeof a => [x + dx, y + dy, z];
  return { ...occluder, corners: [move(a), move(b), move(c), move(d)] };
}

function large(size: HallSize): void {
  const scene = hallScene(size);
  const [full = NaN, losses = NaN] = medians(
    3,
    () => visibleShares(scene),
    () => lossesByRecord(scene),
  );
  const pairs = size.seats * size.players;
  const memory = process.memoryUsage().rss / 1e6;
  console.log(`\n${size.name}: ${size.seats} seats x ${size.players} players x ${size.occluders} occluders`);
  console.log(`  all pairs   ${(full / 1000).toFixed(2)} s, ${((full * 1000) / pairs).toFixed(2)} us a pair`);
  console.log(`  who hides whom ${(losses / 1000).toFixed(2)} s; process ${memory.toFixed(0)} MB\n`);
}

function growth(what: 'seats' | 'players' | 'occluders', sizes: readonly HallSize[]): void {
  const row = sizes.map((size) => {
    const scene = hallScene(size);
    const [full = NaN] = medians(5, () => visibleShares(scene));
    return `${size[what]}: ${full.toFixed(1)} ms`;
  });
  console.log(`W2 with more ${what}: ${row.join(', ')}`);
}
