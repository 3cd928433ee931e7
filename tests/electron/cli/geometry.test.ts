/**
 * `check --json --geometry`: the scene as it is printed, in exactly the published form, recomputed by another program
 * (three 0.187 with three-mesh-bvh 0.9.17, tests/oracles/ray-caster.ts) from the printed numbers alone.
 */

import { beforeAll, describe, expect, it } from 'vitest';
import type { Scene } from '#model/checks/scene.ts';
import { buildPrograms, runBuilt } from '../../helpers/built.ts';
import { temporaryFolder } from '../../helpers/folders.ts';
import { sharesByRays } from '../../oracles/ray-caster.ts';

interface Printed {
  readonly scene: Scene & { readonly visible: readonly (readonly number[])[] };
  readonly sight: readonly { readonly player: string; readonly seenWell: number; readonly median: number }[];
}

beforeAll(buildPrograms);

function printed(setup: string): Printed {
  const words = ['check', 'demo', '--json', '--geometry', '--setup', setup];
  return JSON.parse(runBuilt(words, temporaryFolder()).stdout) as Printed;
}

const KEYS: Readonly<Record<string, readonly string[]>> = {
  quad: ['corners', 'id', 'kind'],
  box: ['center', 'id', 'kind', 'size', 'yaw'],
  capsule: ['id', 'kind', 'r', 'x', 'y', 'z0', 'z1'],
};

describe.each(['setup-1', 'setup-2', 'setup-3'])('%s of the demo', (setup) => {
  it('has the published form: these keys, finite numbers, ids that occur once', () => {
    const { scene } = printed(setup);
    expect(Object.keys(scene)).toEqual(['seats', 'targets', 'occluders', 'visible']);
    expect(scene.seats.length).toBeGreaterThan(170);
    for (const seat of scene.seats) expect(Object.keys(seat)).toEqual(['id', 'x', 'y', 'z']);
    for (const target of scene.targets)
      expect(Object.keys(target)).toEqual(['id', 'x', 'y', 'z0', 'z1', 'width']);
    for (const { owner, ...occluder } of scene.occluders) {
      expect(Object.keys(occluder).sort()).toEqual(KEYS[occluder.kind]);
      if (owner !== undefined) expect(scene.targets.map(({ id }) => id)).toContain(owner);
    }
    for (const list of [scene.seats, scene.targets, scene.occluders]) {
      expect(new Set(list.map(({ id }) => id)).size).toBe(list.length);
    }
    expect(JSON.stringify(scene)).not.toContain('null');
    expect(scene.visible).toHaveLength(scene.seats.length);
    for (const row of scene.visible) expect(row).toHaveLength(scene.targets.length);
  });

  it('agrees with a ray caster for every seat and player within 1 % at 128 x 128 rays', () => {
    const { scene } = printed(setup);
    const rays = sharesByRays(scene, 128);
    const differences = scene.visible.flat().map((share, pair) => Math.abs(share - (rays[pair] ?? NaN)));
    expect(differences.reduce((most, difference) => Math.max(most, difference), 0)).toBeLessThan(0.01);
  });

  it('gives the house figures that follow from the printed shares', () => {
    const { scene, sight } = printed(setup);
    for (const { player, seenWell, median } of sight) {
      const target = scene.targets.findIndex(({ id }) => id === player);
      const shares = scene.visible.map((row) => row[target] ?? NaN).sort((a, b) => a - b);
      expect(seenWell).toBeCloseTo(shares.filter((share) => share >= 0.9).length / shares.length, 12);
      const middle = shares.length / 2;
      const [low, high] = [shares[Math.ceil(middle) - 1] ?? NaN, shares[Math.floor(middle)] ?? NaN];
      expect(median).toBeCloseTo((low + high) / 2, 12);
    }
  });
});
