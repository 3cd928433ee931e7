/**
 * Visible shares against the union of polygons by `polygon-clipping` 0.15.7 on seeded scenes of quads and boxes: within
 * 1e-6 of the window's area.
 */

import { expect, test } from 'vitest';
import { visibleShares } from '#model/checks/sightlines/visible-shares.ts';
import { shareByUnion } from './polygon-union.ts';
import { randomScene } from './random-scenes.ts';

const SIZE = { seats: 4, targets: 3, occluders: 10, kinds: ['quad', 'box'] } as const;

test('1000 random scenes agree with the polygon library within 1e-6', () => {
  let worst = 0;
  let partly = 0;
  for (let seed = 1; seed <= 1000; seed++) {
    const scene = randomScene(seed, SIZE);
    const shares = visibleShares(scene);
    scene.seats.forEach((seat, s) => {
      scene.targets.forEach((target, t) => {
        const share = shares[s * scene.targets.length + t] ?? NaN;
        const union = shareByUnion(scene, seat, target);
        worst = Math.max(worst, Math.abs(share - union));
        if (share > 0.01 && share < 0.99) partly++;
        expect(
          Math.abs(share - union),
          `seed ${seed}, seat ${s}, target ${t}: ${share} and ${union}`,
        ).toBeLessThan(1e-6);
      });
    });
  }
  console.log(`worst difference ${worst.toExponential(2)}; ${partly} of 12000 pairs partly hidden`);
  expect(partly).toBeGreaterThan(3000);
});
