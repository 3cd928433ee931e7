/** Bringing figures up to date gives, bit for bit, what computing them from nothing gives. */

import { describe, expect, test } from 'vitest';
import type { Occluder, Scene } from '#model/checks/scene.ts';
import { createSightEngine } from '#model/checks/sightlines/sight-engine.ts';
import { visibleShares } from '#model/checks/sightlines/visible-shares.ts';
import { randomScene } from '../../../oracles/random-scenes.ts';
import { diceOf, type Dice } from '../../../oracles/seeded.ts';
import { sceneWith, screen } from '../../../helpers/scenes.ts';

const SIZE = { seats: 25, targets: 4, occluders: 12, kinds: ['quad', 'box', 'capsule'] } as const;

function shifted(occluder: Occluder, dx: number, dy: number): Occluder {
  if (occluder.kind === 'capsule') return { ...occluder, x: occluder.x + dx, y: occluder.y + dy };
  if (occluder.kind === 'box') {
    const [x, y, z] = occluder.center;
    return { ...occluder, center: [x + dx, y + dy, z] };
  }
  const [a, b, c, d] = occluder.corners;
  const move = ([x, y, z]: typeof a): typeof a => [x + dx, y + dy, z];
  return { ...occluder, corners: [move(a), move(b), move(c), move(d)] };
}

/** One of the things that an edit of the document does to a scene. */
function edited(scene: Scene, dice: Dice, step: number): Scene {
  const { seats, targets, occluders } = scene;
  const [dx, dy] = [dice.between(-300, 300), dice.between(-300, 300)];
  const one = dice.whole(0, occluders.length - 1);
  const kind = dice.between(0, 1);
  if (kind < 0.5)
    return { ...scene, occluders: occluders.map((o, i) => (i === one ? shifted(o, dx, dy) : o)) };
  if (kind < 0.6) return { ...scene, occluders: occluders.filter((_, i) => i !== one) };
  if (kind < 0.7) {
    const [more] = randomScene(step, { ...SIZE, seats: 0, occluders: 1 }).occluders;
    return more ? { ...scene, occluders: [...occluders, { ...more, id: `more-${step}` }] } : scene;
  }
  if (kind < 0.8) {
    const owner = dice.pick(targets).id;
    return { ...scene, occluders: occluders.map((o, i) => (i === one ? { ...o, owner } : o)) };
  }
  if (kind < 0.9) {
    const moved = dice.whole(0, targets.length - 1);
    return {
      ...scene,
      targets: targets.map((t, i) => (i === moved ? { ...t, x: t.x + dx, y: t.y + dy } : t)),
    };
  }
  if (kind < 0.95) return { ...scene, occluders: [...occluders].reverse() };
  return { ...scene, seats: seats.map((seat) => ({ ...seat, z: seat.z + 10 })) };
}

function expectSameBits(actual: Float64Array, expected: Float64Array, hint: string): void {
  const bits = (shares: Float64Array): BigInt64Array => new BigInt64Array(shares.slice().buffer);
  expect(bits(actual), hint).toEqual(bits(expected));
}

/** The scene with some occluders made parts of one record. */
function withRecord(scene: Scene, ids: ReadonlySet<string>): Scene {
  return {
    ...scene,
    occluders: scene.occluders.map((o) => (ids.has(o.id) ? { ...o, record: 'dragged' } : o)),
  };
}

describe('an engine', () => {
  test('after 500 random edits still has the figures of a fresh computation, bit for bit', () => {
    const dice = diceOf(2);
    let scene = randomScene(1, SIZE);
    let engine = createSightEngine(scene);
    for (let step = 0; step < 500; step++) {
      scene = edited(scene, dice, step);
      engine = engine.update(scene);
      expectSameBits(engine.visible, visibleShares(scene), `step ${step}`);
    }
  });

  test('stays as it was when it is updated, so that a draft can be dropped', () => {
    const engine = createSightEngine(sceneWith());
    const hidden = engine.update(sceneWith(screen(5000, [-400, 400], [0, 5000])));
    expect([...engine.visible]).toEqual([1]);
    expect([...hidden.visible]).toEqual([0]);
    expect([...hidden.update(sceneWith()).visible]).toEqual([1]);
  });

  test('two occluders of one id are no reason to go wrong', () => {
    const twice = sceneWith(screen(5000, [0, 400], [0, 5000], 'a'), screen(5000, [-400, 0], [0, 5000], 'a'));
    const once = sceneWith(screen(5000, [0, 400], [0, 5000], 'a'));
    expect([...createSightEngine(twice).update(once).visible]).toEqual([...visibleShares(once)]);
    expect([...createSightEngine(once).update(twice).visible]).toEqual([...visibleShares(twice)]);
  });

  test('notices a paper that its desk no longer covers', () => {
    const desk = screen(5000, [-50, 50], [1400, 1600], 'desk');
    const paper = { ...screen(5000, [-40, 40], [1400, 1500], 'paper'), record: 'desk' };
    const moved = shifted(desk, 60, 0);
    const engine = createSightEngine(sceneWith(desk, paper));
    expectSameBits(
      engine.update(sceneWith(moved, paper)).visible,
      visibleShares(sceneWith(moved, paper)),
      'moved',
    );
    expectSameBits(engine.update(sceneWith(paper)).visible, visibleShares(sceneWith(paper)), 'gone');
  });

  const kinds = ['quad', 'box', 'capsule'] as const;

  test('follows a thing that is dragged, frame by frame, bit for bit', () => {
    for (let seed = 1; seed <= 12; seed++) {
      const scene = randomScene(seed, { seats: 40, targets: 4, occluders: 14, kinds });
      // One to four shadows at once.
      const dragged = new Set(scene.occluders.slice(0, 1 + (seed % 4)).map(({ id }) => id));
      let engine = createSightEngine(withRecord(scene, dragged));
      for (let frame = 1; frame <= 25; frame++) {
        const moved = withRecord(
          {
            ...scene,
            occluders: scene.occluders.map((o) =>
              dragged.has(o.id) ? shifted(o, 40 * frame, 15 * frame) : o,
            ),
          },
          dragged,
        );
        engine = engine.update(moved);
        expectSameBits(engine.visible, visibleShares(moved), `seed ${seed}, frame ${frame}`);
      }
    }
  });

  test('follows a player who is dragged with his stand through a crowd', () => {
    const scene = randomScene(7, { seats: 30, targets: 3, occluders: 70, kinds });
    const dragged = new Set(scene.occluders.slice(0, 2).map(({ id }) => id));
    let engine = createSightEngine(withRecord(scene, dragged));
    for (let frame = 1; frame <= 15; frame++) {
      const [dx, dy] = [30 * frame, -20 * frame];
      const moved = withRecord(
        {
          ...scene,
          targets: scene.targets.map((t, i) => (i === 0 ? { ...t, x: t.x + dx, y: t.y + dy } : t)),
          occluders: scene.occluders.map((o) => (dragged.has(o.id) ? shifted(o, dx, dy) : o)),
        },
        dragged,
      );
      engine = engine.update(moved);
      expectSameBits(engine.visible, visibleShares(moved), `frame ${frame}`);
    }
  });

  test('tries one thing in many places from the same start', () => {
    const scene = randomScene(9, { ...SIZE, occluders: 20 });
    const engine = createSightEngine(scene);
    for (const index of [3, 8, 3, 8, 3]) {
      for (let step = -6; step <= 6; step++) {
        const tried = {
          ...scene,
          occluders: scene.occluders.map((o, i) => (i === index ? shifted(o, step * 55, step * 20) : o)),
        };
        expectSameBits(engine.update(tried).visible, visibleShares(tried), `${index} by ${step}`);
      }
    }
  });
});
