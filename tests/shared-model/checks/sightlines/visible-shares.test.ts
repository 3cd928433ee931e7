/** Visible shares where a pencil gives the answer. The eye is level with the middle of a window 500 x 1000, 10 m off. */

import { describe, expect, test } from 'vitest';
import type { Occluder, Scene } from '#model/checks/scene.ts';
import { visibleShares } from '#model/checks/sightlines/visible-shares.ts';
import { box, capsule, quad, sceneWith, screen, seatAt, targetOf } from '../../../helpers/scenes.ts';

const shareOf = (scene: Scene): number => visibleShares(scene)[0] ?? NaN;
const past = (...occluders: Occluder[]): number => shareOf(sceneWith(...occluders));

describe('flat occluders', () => {
  test('nothing in the way', () => {
    expect(past()).toBe(1);
  });

  test('half way, things hide twice their size', () => {
    // 125 x 250 at 5 m hides 250 x 500 of 500 x 1000.
    expect(past(screen(5000, [-62.5, 62.5], [1375, 1625]))).toBeCloseTo(0.75, 9);
    expect(past(screen(2500, [-62.5, 62.5], [1375, 1625]))).toBeCloseTo(0, 9);
  });

  test('only what lies inside the window counts', () => {
    expect(past(screen(5000, [0, 5000], [0, 5000]))).toBeCloseTo(0.5, 9);
    expect(past(screen(5000, [-5000, 5000], [0, 1500]))).toBeCloseTo(0.5, 9);
    expect(past(screen(5000, [125, 400], [0, 5000]))).toBe(1);
    expect(past(screen(5000, [-400, 400], [1750, 5000]))).toBe(1);
    expect(past(screen(5000, [-400, 400], [0, 5000]))).toBe(0);
  });

  test('behind the eye, behind the window and edge-on: no shadow', () => {
    expect(past(screen(-5000, [-400, 400], [0, 5000]))).toBe(1);
    expect(past(screen(10_001, [-4000, 4000], [0, 5000]))).toBe(1);
    expect(
      past(
        quad([
          [0, 1000, 0],
          [0, 9000, 0],
          [0, 9000, 5000],
          [0, 1000, 5000],
        ]),
      ),
    ).toBe(1);
  });

  test('overlapping shadows count once', () => {
    const left = screen(5000, [-125, 25], [0, 5000], 'left');
    const right = screen(4000, [-20, 50], [0, 5000], 'right');
    // They hide -250..50 and -50..125 of -250..250.
    expect(past(left, right)).toBeCloseTo(0.25, 9);
    expect(past(left, left, { ...left, id: 'again', record: 'again' })).toBeCloseTo(0.4, 9);
  });

  test('two crossed strips: inclusion and exclusion', () => {
    const upright = screen(5000, [-25, 25], [0, 5000], 'upright');
    const level = screen(5000, [-500, 500], [1450, 1550], 'level');
    expect(past(upright, level)).toBeCloseTo((1 - 0.2) * (1 - 0.2), 9);
  });

  test('a tilted desk: the trapezium between its lip and its upper edge', () => {
    // Lip 200 wide at 5 m, 1400 high; upper edge 200 wide at 6 m, 1500 high.
    const desk = quad([
      [-100, 5000, 1400],
      [100, 5000, 1400],
      [100, 6000, 1500],
      [-100, 6000, 1500],
    ]);
    const lip = { half: 200, z: 1500 - 200 };
    const top = { half: 100 / 0.6, z: 1500 };
    const area = (lip.half + top.half) * (top.z - lip.z);
    expect(past(desk)).toBeCloseTo(1 - area / 500_000, 9);
  });

  test('reaching past the window: cut at its plane', () => {
    const through = quad([
      [-500, 9000, 1400],
      [500, 9000, 1400],
      [500, 11_000, 1600],
      [-500, 11_000, 1600],
    ]);
    const cut = quad([
      [-500, 9000, 1400],
      [500, 9000, 1400],
      [500, 10_000, 1500],
      [-500, 10_000, 1500],
    ]);
    expect(past(through)).toBeCloseTo(past(cut), 9);
    expect(past(through)).toBeCloseTo(1 - (1500 - (1500 - 100 / 0.9)) / 1000, 9);
  });

  test('reaching behind the eye: a ceiling just over it hides all above eye level', () => {
    const ceiling = quad([
      [-500, -1000, 1510],
      [500, -1000, 1510],
      [500, 10_000, 1510],
      [-500, 10_000, 1510],
    ]);
    expect(past(ceiling)).toBeCloseTo(0.5 + 0.01, 9);
  });

  test('a triangle given by a repeated corner', () => {
    const triangle = quad([
      [-125, 5000, 1250],
      [125, 5000, 1250],
      [125, 5000, 1750],
      [125, 5000, 1750],
    ]);
    expect(past(triangle)).toBeCloseTo(0.5, 9);
  });
});

describe('boxes', () => {
  test('seen straight on, the near face decides', () => {
    // Near face at 4 m, 100 x 200: hides 250 x 500.
    expect(past(box([0, 5000, 1500], [100, 2000, 200]))).toBeCloseTo(0.75, 9);
  });

  test('turned by 45 degrees, its corners decide', () => {
    const side = 100;
    const diagonal = side * Math.SQRT2;
    const half = ((diagonal / 2) * 10_000) / 5000;
    const tall = box([0, 5000, 1500], [side, side, 5000], 45);
    expect(past(tall)).toBeCloseTo(1 - (2 * half) / 500, 9);
  });

  test('the part past the window throws no shadow', () => {
    const through = box([0, 10_000, 1500], [100, 4000, 5000]);
    const before = box([0, 9000, 1500], [100, 2000, 5000]);
    expect(past(through)).toBeCloseTo(past(before), 9);
    expect(past(before)).toBeCloseTo(1 - 100 / 0.8 / 500, 9);
  });

  test('behind a wide box with the eye above it, what is lower than the far edge is hidden', () => {
    // Top at 1300, 4 to 8 m: the line over the far edge is at 1250 on the window; over the near edge at 1000.
    const table = box([0, 6000, 650], [5000, 4000, 1300]);
    expect(past(table)).toBeCloseTo(0.75, 9);
  });
});

describe('round bodies', () => {
  test('a column hides between its two tangents', () => {
    const half = 10_000 * Math.tan(Math.asin(100 / 5000));
    expect(past(capsule({ z0: -5000, z1: 5000 }))).toBeCloseTo(1 - (2 * half) / 500, 9);
  });

  test('a ball straight before the eye hides a circle: area to 1e-9', () => {
    const radius = 10_000 * Math.tan(Math.asin(50 / 5000));
    const ball = capsule({ z0: 1500, z1: 1500, r: 50 });
    expect(past(ball)).toBeCloseTo(1 - (Math.PI * radius ** 2) / 500_000, 9);
  });

  test('a ball cut in half by the edge of the window', () => {
    const radius = 10_000 * Math.tan(Math.asin(50 / 5000));
    const ball = capsule({ x: 0, z0: 1500, z1: 1500, r: 50 });
    const scene = sceneWith(ball);
    const halved = { ...scene, targets: [targetOf({ z0: 1500, z1: 2500 })] };
    expect(shareOf(halved)).toBeCloseTo(1 - (Math.PI * radius ** 2) / 2 / 500_000, 6);
  });

  test('a capsule is a ball drawn out: shoulders over a rectangle', () => {
    const radius = 10_000 * Math.tan(Math.asin(50 / 5000));
    // The upper half ball is level with the eye, the lower one far below the window.
    const share = past(capsule({ z0: -5000, z1: 1500, r: 50 }));
    expect(share).toBeCloseTo(1 - (2 * radius * 500 + (Math.PI * radius ** 2) / 2) / 500_000, 9);
  });

  test('its axis in the plane of the window: the front half hides what the whole would', () => {
    const half = 10_000 * Math.tan(Math.asin(100 / 10_000));
    expect(past(capsule({ y: 10_000, z0: -5000, z1: 5000 }))).toBeCloseTo(1 - (2 * half) / 500, 5);
  });

  test('just past the plane of the window, its cut by the plane hides', () => {
    // The plane cuts a column of radius 100, 60 behind it, in a strip of 2 * 80.
    expect(past(capsule({ y: 10_060, z0: -5000, z1: 5000 }))).toBeCloseTo(1 - 160 / 500, 9);
    expect(past(capsule({ y: 10_100, z0: -5000, z1: 5000 }))).toBe(1);
  });
});

describe('who is hidden by what', () => {
  test('an occluder does not hide its owner, but everybody else', () => {
    const body = capsule({ owner: 'player', z0: -5000, z1: 5000, r: 300 });
    expect(past(body)).toBe(1);
    expect(past({ ...body, owner: 'somebody' })).toBe(0);
  });

  test('shares are in row-major order, seat by seat', () => {
    const scene: Scene = {
      seats: [seatAt(0, 0, 1500, 'a'), seatAt(3000, 0, 1500, 'b')],
      targets: [targetOf({ id: 'p' }), targetOf({ id: 'q', x: -3000 })],
      occluders: [screen(5000, [-400, 400], [0, 5000])],
    };
    // The line from b to q passes the screen's middle too.
    expect([...visibleShares(scene)]).toEqual([0, 1, 1, 0]);
  });
});

describe('odd input', () => {
  test('an eye inside a box, inside a capsule: sees nothing', () => {
    expect(past(box([0, 0, 1500], [400, 400, 400], 30))).toBeCloseTo(0, 9);
    expect(past(capsule({ y: 0, r: 200 }))).toBe(0);
    expect(past(capsule({ x: 10, y: 20, z0: 1500, z1: 1500, r: 200 }))).toBe(0);
  });

  test('an eye right above or below a capsule looks past it', () => {
    expect(past(capsule({ y: 50, z0: 0, z1: 1300, r: 100 }))).toBe(1);
    expect(past(capsule({ y: 50, z0: 1700, z1: 2500, r: 100 }))).toBe(1);
  });

  test('an eye on the target axis, a window without width or height: nothing is hidden', () => {
    const wall = screen(5000, [-400, 400], [0, 5000]);
    const with_ = (target: Partial<Scene['targets'][number]>): number =>
      shareOf({ ...sceneWith(wall), targets: [targetOf(target)] });
    expect(with_({ y: 0 })).toBe(1);
    expect(with_({ width: 0 })).toBe(1);
    expect(with_({ z1: 1000 })).toBe(1);
    expect(with_({})).toBe(0);
  });

  test('occluders without area hide nothing', () => {
    const point: [number, number, number] = [0, 5000, 1500];
    expect(past(quad([point, point, point, point]))).toBe(1);
    expect(past(quad([point, point, [50, 5000, 1600], [50, 5000, 1600]]))).toBe(1);
    expect(past(capsule({ r: 0 }))).toBe(1);
  });

  test('a box without depth is a wall; upside-down heights are turned over', () => {
    expect(past(box([0, 5000, 1500], [125, 0, 250]))).toBeCloseTo(0.75, 9);
    expect(past(box([0, 5000, 1500], [125, 0, -250]))).toBeCloseTo(0.75, 9);
    expect(past(capsule({ z0: 5000, z1: -5000 }))).toBe(past(capsule({ z0: -5000, z1: 5000 })));
  });

  test('no seats, no targets', () => {
    expect(visibleShares({ ...sceneWith(), seats: [] })).toHaveLength(0);
    expect(visibleShares({ ...sceneWith(), targets: [] })).toHaveLength(0);
  });
});
