import { describe, expect, test } from 'vitest';
import { buildScene } from '#model/checks/scene/build-scene.ts';
import { hidingOf } from '#model/checks/sightlines/hidden-part.ts';
import { visibleShares } from '#model/checks/sightlines/visible-shares.ts';
import { faceShares, faceWindow, thirdsOf } from '#model/checks/sightlines/windows.ts';
import { aDocument, aPlayer, SETUP } from '../../../helpers/build.ts';
import { sceneWith, screen, seatAt, targetOf } from '../../../helpers/scenes.ts';
import { randomScene } from '../../../oracles/random-scenes.ts';

const PLAYER = targetOf({ z0: 1000, z1: 1900, chin: 1700 });

/** Level with the eye at 1500, half-way to the player: what it covers of the window is twice as high. */
const halfway = (z0: number, z1: number, x: readonly [number, number] = [-400, 400]) =>
  screen(5000, x, [(z0 + 1500) / 2, (z1 + 1500) / 2], 'stand');
const hides = (z0: number, z1: number) => {
  const scene = { ...sceneWith(halfway(z0, z1)), targets: [PLAYER] };
  return hidingOf(scene, PLAYER, 'stand', 0.9)?.part ?? null;
};

describe('the face window', () => {
  test('is the upper part of the window, as wide, from the chin to the top of the head', () => {
    expect(faceWindow(PLAYER)).toEqual({ ...PLAYER, z0: 1700 });
  });

  test('a head is about 220 mm high: crown to chin of the median body', () => {
    const [target] = buildScene(aDocument(aPlayer()), SETUP).targets;
    // ANSUR II, pooled medians: sitting height 887 less sitting eye height 776 is eye to crown, half of the head.
    expect((target?.z1 ?? NaN) - (target?.chin ?? NaN)).toBeCloseTo(2 * (887 - 776), -1);
  });

  test('a desk that hides all but the head leaves the face', () => {
    const scene = { ...sceneWith(halfway(900, 1700)), targets: [PLAYER] };
    expect(visibleShares(scene)[0]).toBeCloseTo(200 / 900, 9);
    expect(faceShares(scene)[0]).toBeCloseTo(1, 9);
  });

  test('a chin under the window or over it makes no window turned over', () => {
    expect(faceWindow({ ...PLAYER, chin: 200 }).z0).toBe(1000);
    expect(faceWindow({ ...PLAYER, chin: 5000 }).z0).toBe(1900);
  });
});

test('the thirds of a window share it out: their shares have the mean of the whole', () => {
  for (let seed = 1; seed <= 10; seed++) {
    const scene = randomScene(seed, {
      seats: 4,
      targets: 1,
      occluders: 8,
      kinds: ['quad', 'box', 'capsule'],
    });
    const [target] = scene.targets;
    if (!target) throw new Error('no target');
    const whole = visibleShares(scene);
    const thirds = visibleShares({ ...scene, targets: thirdsOf(target) });
    whole.forEach((share, seat) => {
      const mean = (thirds[seat * 3]! + thirds[seat * 3 + 1]! + thirds[seat * 3 + 2]!) / 3;
      // A window is looked at towards its middle height alone in both, so the sums agree but for rounding.
      // Each of the shares is given to the next step of 2^-30.
      expect(Math.abs(mean - share)).toBeLessThan(2 ** -30);
    });
  }
});

describe('the part that is hidden', () => {
  test.each([
    [900, 1320, 'lower third'],
    [1320, 1580, 'middle'],
    [1600, 2000, 'upper third'],
    [900, 1620, 'lower two thirds'],
    [1280, 2000, 'upper two thirds'],
    [900, 2000, 'whole'],
    [1250, 1400, 'some'],
  ])('from %d to %d of a window from 1000 to 1900: %s', (z0, z1, part) => {
    expect(hides(z0, z1)).toBe(part);
  });

  test('what takes less than a tenth hides nothing worth naming', () => {
    expect(hides(900, 1080)).toBeNull();
  });

  test('counts the places that it hides the player from, whatever else is in the way', () => {
    const wall = screen(2000, [-5000, 5000], [0, 5000], 'wall');
    const scene = {
      ...sceneWith(halfway(900, 1320), wall),
      seats: [seatAt(0, 0, 1500, 'behind'), seatAt(6000, 0, 1500, 'beside')],
    };
    expect(hidingOf(scene, PLAYER, 'stand', 0.9)?.from.map(({ id }) => id)).toEqual(['behind']);
    expect(hidingOf(scene, PLAYER, 'wall', 0.9)).toMatchObject({ part: 'whole' });
  });
});
