/** What must hold for every scene: property tests on random scenes with all kinds of occluders. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Occluder, Scene, Triple } from '#model/checks/scene.ts';
import { visibleShares } from '#model/checks/sightlines/visible-shares.ts';
import { randomScene } from '../../../oracles/random-scenes.ts';

const SIZE = { seats: 3, targets: 3, occluders: 9, kinds: ['quad', 'box', 'capsule'] } as const;
const scenes = fc.integer({ min: 1, max: 1e9 }).map((seed) => randomScene(seed, SIZE));
const RUNS = { numRuns: 200 };

interface Moving {
  /** Of a point. */
  readonly point: (point: Triple) => Triple;
  readonly length: number;
  readonly yaw: (yaw: number) => number;
}

function movedScene({ seats, targets, occluders }: Scene, moving: Moving): Scene {
  const spot = ({ x, y, z }: { x: number; y: number; z: number }) => {
    const [mx, my, mz] = moving.point([x, y, z]);
    return { x: mx, y: my, z: mz };
  };
  return {
    seats: seats.map((seat) => ({ ...seat, ...spot(seat) })),
    targets: targets.map((target) => {
      const [low, high] = [spot({ ...target, z: target.z0 }), spot({ ...target, z: target.z1 })];
      return { ...target, x: low.x, y: low.y, z0: low.z, z1: high.z, width: target.width * moving.length };
    }),
    occluders: occluders.map((occluder) => movedOccluder(occluder, moving)),
  };
}

function movedOccluder(occluder: Occluder, { point, length, yaw }: Moving): Occluder {
  if (occluder.kind === 'quad') {
    const [a, b, c, d] = occluder.corners;
    return { ...occluder, corners: [point(a), point(b), point(c), point(d)] };
  }
  if (occluder.kind === 'box') {
    const [dx, dy, dz] = occluder.size;
    const size: Triple = [dx * length, dy * length, dz * length];
    return { ...occluder, center: point(occluder.center), size, yaw: yaw(occluder.yaw) };
  }
  const [x, y, z0] = point([occluder.x, occluder.y, occluder.z0]);
  const [, , z1] = point([occluder.x, occluder.y, occluder.z1]);
  return { ...occluder, x, y, z0, z1, r: occluder.r * length };
}

function expectSameShares(a: Scene, b: Scene): void {
  const [before, after] = [visibleShares(a), visibleShares(b)];
  before.forEach((share, pair) => expect(Math.abs(share - (after[pair] ?? NaN))).toBeLessThan(1e-9));
}

describe('no share changes', () => {
  test('turning the whole scene', () => {
    fc.assert(
      fc.property(scenes, fc.double({ min: -400, max: 400, noNaN: true }), (scene, degrees) => {
        const angle = (degrees * Math.PI) / 180;
        const [c, s] = [Math.cos(angle), Math.sin(angle)];
        const point = ([x, y, z]: Triple): Triple => [c * x - s * y, s * x + c * y, z];
        expectSameShares(scene, movedScene(scene, { point, length: 1, yaw: (yaw) => yaw + degrees }));
      }),
      RUNS,
    );
  });

  test('mirroring it in the centre line', () => {
    fc.assert(
      fc.property(scenes, (scene) => {
        const point = ([x, y, z]: Triple): Triple => [-x, y, z];
        expectSameShares(scene, movedScene(scene, { point, length: 1, yaw: (yaw) => -yaw }));
      }),
      RUNS,
    );
  });

  test('moving it', () => {
    const shift = fc.double({ min: -50_000, max: 50_000, noNaN: true });
    fc.assert(
      fc.property(scenes, shift, shift, shift, (scene, dx, dy, dz) => {
        const point = ([x, y, z]: Triple): Triple => [x + dx, y + dy, z + dz];
        expectSameShares(scene, movedScene(scene, { point, length: 1, yaw: (yaw) => yaw }));
      }),
      RUNS,
    );
  });

  test('scaling everything by k', () => {
    fc.assert(
      fc.property(scenes, fc.double({ min: 0.05, max: 20, noNaN: true }), (scene, k) => {
        const point = ([x, y, z]: Triple): Triple => [k * x, k * y, k * z];
        expectSameShares(scene, movedScene(scene, { point, length: k, yaw: (yaw) => yaw }));
      }),
      RUNS,
    );
  });

  test('listing the occluders in another order', () => {
    fc.assert(
      fc.property(scenes, (scene) => {
        expectSameShares(scene, { ...scene, occluders: [...scene.occluders].reverse() });
      }),
      RUNS,
    );
  });

  test('listing the corners of a quad from another corner, or the other way round', () => {
    fc.assert(
      fc.property(scenes, (scene) => {
        const turned = scene.occluders.map((occluder): Occluder => {
          if (occluder.kind !== 'quad') return occluder;
          const [a, b, c, d] = occluder.corners;
          return { ...occluder, corners: [c, b, a, d] };
        });
        expectSameShares(scene, { ...scene, occluders: turned });
      }),
      RUNS,
    );
  });
});

describe('shares', () => {
  test('are between 0 and 1', () => {
    fc.assert(
      fc.property(scenes, (scene) => {
        for (const share of visibleShares(scene)) {
          expect(share).toBeGreaterThanOrEqual(0);
          expect(share).toBeLessThanOrEqual(1);
        }
      }),
      RUNS,
    );
  });

  test('never rise when an occluder is added', () => {
    fc.assert(
      fc.property(scenes, fc.nat(SIZE.occluders - 1), (scene, left) => {
        const fewer = visibleShares({ ...scene, occluders: scene.occluders.filter((_, i) => i !== left) });
        visibleShares(scene).forEach((share, pair) => {
          expect(share).toBeLessThanOrEqual((fewer[pair] ?? NaN) + 1e-12);
        });
      }),
      RUNS,
    );
  });

  test('fall by no more than the added occluder hides alone', () => {
    fc.assert(
      fc.property(scenes, fc.nat(SIZE.occluders - 1), (scene, added) => {
        const fewer = visibleShares({ ...scene, occluders: scene.occluders.filter((_, i) => i !== added) });
        const alone = visibleShares({ ...scene, occluders: scene.occluders.filter((_, i) => i === added) });
        visibleShares(scene).forEach((share, pair) => {
          const loss = 1 - (alone[pair] ?? NaN);
          // Three shares, each to the next step of 2^-30.
          expect(share).toBeGreaterThanOrEqual((fewer[pair] ?? NaN) - loss - 2 * 2 ** -30);
        });
      }),
      RUNS,
    );
  });

  test('of eyes anywhere, even among and inside the occluders, are never NaN', () => {
    const eye = fc.record({
      x: fc.integer({ min: -4000, max: 4000 }),
      y: fc.integer({ min: -3000, max: 6000 }),
      z: fc.integer({ min: 0, max: 2000 }),
    });
    fc.assert(
      fc.property(scenes, fc.array(eye, { minLength: 5, maxLength: 5 }), (scene, eyes) => {
        const seats = eyes.map((spot, i) => ({ ...spot, id: `s${i}`, record: 'b', label: '', row: 0 }));
        for (const share of visibleShares({ ...scene, seats })) {
          expect(share >= 0 && share <= 1).toBe(true);
        }
      }),
      RUNS,
    );
  });
});
