import { describe, expect, test } from 'vitest';
import type { Scene } from '#model/checks/scene.ts';
import { bandOf } from '#model/checks/sightlines/bands.ts';
import { houseFigures } from '#model/checks/sightlines/house-figures.ts';
import { lossesByRecord } from '#model/checks/sightlines/losses.ts';
import { visibleShares } from '#model/checks/sightlines/visible-shares.ts';
import { randomScene } from '../../../oracles/random-scenes.ts';
import { sceneWith, screen, seatAt, targetOf } from '../../../helpers/scenes.ts';

describe('bands of the published auditorium study', () => {
  test('under 25 %, 25-50, 50-75, 75-90, 90 and more', () => {
    const edges = [0, 0.2499, 0.25, 0.4999, 0.5, 0.7499, 0.75, 0.8999, 0.9, 1];
    expect(edges.map(bandOf)).toEqual([0, 0, 1, 1, 2, 2, 3, 3, 4, 4]);
  });

  test('rounding puts no seat into the worse band', () => {
    expect(bandOf(0.9 - 1e-12)).toBe(4);
  });
});

describe('the figures of a player', () => {
  const shares = [0.1, 0.3, 0.6, 0.8, 0.95, 1];
  const scene: Scene = {
    seats: shares.map((_, i) => seatAt(0, -1000 * i, 1500, `seat-${i}`)),
    targets: [targetOf()],
    occluders: [],
  };
  const [figure] = houseFigures(scene, Float64Array.from(shares), 0.9);

  test('count the places that see well, and those of each band', () => {
    expect(figure).toMatchObject({ player: 'player', seenWell: 2 / 6, bands: [1, 1, 1, 1, 2] });
  });

  test('give the median and the worst place', () => {
    expect(figure?.median).toBeCloseTo(0.7, 12);
    expect(figure?.worst).toEqual({ seat: 'seat-0', share: 0.1 });
  });

  test('of a house without places are all well', () => {
    const [empty] = houseFigures({ ...scene, seats: [] }, new Float64Array(), 0.9);
    expect(empty).toMatchObject({ seenWell: 1, median: 1, worst: { seat: '', share: 1 }, coveredBy: [] });
  });
});

describe('what covers a player', () => {
  test('each record by itself, worst first, though their shadows overlap', () => {
    // Left hides 0.6 of the window, right 0.5; together all of it but for nothing.
    const left = screen(5000, [-125, 25], [0, 5000], 'left');
    const right = screen(4000, [0, 100], [0, 5000], 'right');
    const [losses] = lossesByRecord(sceneWith(right, left));
    expect(losses?.map(({ record }) => record)).toEqual(['left', 'right']);
    expect(losses?.[0]?.loss).toBeCloseTo(0.6, 12);
    expect(losses?.[1]?.loss).toBeCloseTo(0.5, 12);
  });

  test('a record of several parts counts as their union, wherever they are in the list', () => {
    const part = (x: readonly [number, number], id: string) => ({
      ...screen(5000, x, [0, 5000], id),
      record: 'stand',
    });
    const other = screen(5000, [100, 125], [0, 5000], 'other');
    const [losses] = lossesByRecord(sceneWith(part([-125, 0], 'a'), other, part([-50, 50], 'b')));
    expect(losses?.[0]).toMatchObject({ record: 'stand' });
    expect(losses?.[0]?.loss).toBeCloseTo(0.7, 12);
  });

  test('is the mean over the house of what is lost when only that record stands there', () => {
    for (let seed = 1; seed <= 20; seed++) {
      const scene = randomScene(seed, {
        seats: 6,
        targets: 3,
        occluders: 8,
        kinds: ['quad', 'box', 'capsule'],
      });
      const losses = lossesByRecord(scene);
      scene.targets.forEach((_, target) => {
        for (const { record, loss } of losses[target] ?? []) {
          const alone = visibleShares({
            ...scene,
            occluders: scene.occluders.filter((o) => o.record === record),
          });
          const lost = scene.seats.map(
            (__, seat) => 1 - (alone[seat * scene.targets.length + target] ?? NaN),
          );
          expect(loss).toBeCloseTo(lost.reduce((a, b) => a + b, 0) / lost.length, 9);
        }
      });
    }
  });
});
