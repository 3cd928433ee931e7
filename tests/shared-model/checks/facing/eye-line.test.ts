import { BoxGeometry, DoubleSide, Mesh, MeshBasicMaterial, Raycaster, Ray, Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { cutOf } from '#model/checks/facing/cuts.ts';
import {
  eyeLine,
  heightsOver as heightsOfCut,
  isMet,
  type EyeLine,
  type Heights,
} from '#model/checks/facing/eye-line.ts';
import type { BoxOccluder, CapsuleOccluder, Occluder, QuadOccluder, Triple } from '#model/checks/scene.ts';
import { radians, type Vec3 } from '#model/geometry/frame.ts';
import { diceOf, type Dice } from '../../../oracles/seeded.ts';

const line = (from: Vec3, to: Vec3) => {
  const made = eyeLine(from, to);
  if (!made) throw new Error('no line');
  return made;
};
/** Of a thing above the line; null when it is beside it. */
function heightsOver(over: EyeLine, thing: Occluder): Heights | null {
  const cut = cutOf(over, thing);
  return cut && heightsOfCut(over, cut);
}

const at = (x: number, y: number, z: number): Vec3 => ({ x, y, z });
const common = { id: 'thing', record: 'thing' };

const capsule = (fields: Partial<CapsuleOccluder>): CapsuleOccluder => ({
  ...common,
  kind: 'capsule',
  x: 500,
  y: 0,
  z0: 1000,
  z1: 1000,
  r: 100,
  ...fields,
});
const box = (center: Triple, size: Triple, yaw = 0): BoxOccluder => ({
  ...common,
  kind: 'box',
  center,
  size,
  yaw,
});

describe('heights over a line, worked by hand', () => {
  const level = line(at(0, 0, 1000), at(1000, 0, 1000));
  const rising = line(at(0, 0, 1000), at(1000, 0, 1400));
  const expectHeights = (found: Heights | null, least: number, most: number): void => {
    expect(found?.least).toBeCloseTo(least, 9);
    expect(found?.most).toBeCloseTo(most, 9);
  };

  it('of a box under a level and a rising line', () => {
    // The line rises by 0.4 a mm: over the box, 400 to 600 mm along, from 1160 to 1240.
    expectHeights(heightsOver(level, box([500, 0, 950], [200, 100, 100])), -100, 0);
    expectHeights(heightsOver(rising, box([500, 0, 1200], [200, 100, 100])), 1150 - 1240, 1250 - 1160);
  });

  it('of a box turned by 45°: its diagonal lies along the line', () => {
    expectHeights(
      heightsOver(rising, box([500, 0, 1200], [200, 200, 100], 45)),
      1150 - 1200 - 0.4 * 100 * Math.SQRT2,
      1250 - 1200 + 0.4 * 100 * Math.SQRT2,
    );
  });

  it('of a round head: the sphere’s distance above a slanting line', () => {
    // Farthest point of a sphere from a line of slope m is r sqrt(1 + m²) above it, measured upright.
    const swell = 100 * Math.hypot(1, 0.4);
    expectHeights(heightsOver(rising, capsule({ z0: 1200, z1: 1200 })), -swell, swell);
    expectHeights(heightsOver(level, capsule({ y: 60 })), -80, 80);
    expect(heightsOver(level, capsule({ y: 100.1 }))).toBeNull();
  });

  it('of a desk: from its lip to its upper edge', () => {
    const desk: QuadOccluder = {
      ...common,
      kind: 'quad',
      corners: [
        [400, -200, 900],
        [400, 200, 900],
        [600, 200, 1100],
        [600, -200, 1100],
      ],
    };
    expectHeights(heightsOver(level, desk), -100, 100);
    expectHeights(heightsOver(rising, desk), 900 - 1160, 1100 - 1240);
    expect(heightsOver(line(at(0, 300, 1000), at(1000, 300, 1000)), desk)).toBeNull();
    // Between the eyes only: a line that ends over the middle of the desk meets the lower half of it.
    expectHeights(heightsOver(line(at(0, 0, 1000), at(500, 0, 1000)), desk), -100, 0);
    expect(heightsOver(line(at(0, 0, 1000), at(390, 0, 1000)), desk)).toBeNull();
  });

  it('are none where one stands on the other’s spot', () => {
    expect(eyeLine(at(5, 5, 1000), at(5, 5, 1700))).toBeNull();
  });

  it('meet a square column that the line enters and leaves through its edges', () => {
    const wall = (a: readonly [number, number], b: readonly [number, number]): QuadOccluder => ({
      ...common,
      kind: 'quad',
      corners: [
        [a[0], a[1], 0],
        [b[0], b[1], 0],
        [b[0], b[1], 2500],
        [a[0], a[1], 2500],
      ],
    });
    const corners: [number, number][] = [
      [150, 150],
      [-150, 150],
      [-150, -150],
      [150, -150],
    ];
    const walls = corners.map((a, index) => wall(a, corners[(index + 1) % 4] ?? a));
    const diagonal = line(at(-1000, -1000, 1200), at(1000, 1000, 1300));
    const met = walls.map((one) => heightsOver(diagonal, one)).filter((found) => found && isMet(found));
    expect(met.length).toBeGreaterThan(0);
  });
});

describe('against three.js', () => {
  /** Whether the straight way from one eye to the other hits the thing, by three.js. */
  function hits(from: Vec3, to: Vec3, thing: BoxOccluder | QuadOccluder): boolean {
    const [a, b] = [new Vector3(from.x, from.y, from.z), new Vector3(to.x, to.y, to.z)];
    const ray = new Ray(a, b.clone().sub(a).normalize());
    if (thing.kind === 'quad') {
      const [p, q, r, s] = thing.corners.map((corner) => new Vector3(...corner)) as [
        Vector3,
        Vector3,
        Vector3,
        Vector3,
      ];
      const triangles: [Vector3, Vector3, Vector3][] = [
        [p, q, r],
        [p, r, s],
      ];
      return triangles.some(([d, e, f]) => {
        const hit = ray.intersectTriangle(d, e, f, false, new Vector3());
        return hit !== null && hit.distanceTo(a) <= b.distanceTo(a);
      });
    }
    const mesh = new Mesh(new BoxGeometry(...thing.size), new MeshBasicMaterial({ side: DoubleSide }));
    mesh.position.set(...thing.center);
    mesh.rotation.z = radians(thing.yaw);
    mesh.updateMatrixWorld();
    const caster = new Raycaster(ray.origin, ray.direction, 0, a.distanceTo(b));
    return caster.intersectObject(mesh).length > 0;
  }

  const eye = (dice: Dice, side: number): Vec3 =>
    at(side * dice.between(400, 1500), dice.between(-600, 600), dice.between(1000, 1700));

  function someDesk(dice: Dice): QuadOccluder {
    const [x, y, z] = [dice.between(-300, 300), dice.between(-400, 400), dice.between(900, 1500)];
    const [turn, tilt] = [dice.between(0, 6.28), dice.between(0, 1.57)];
    const across = new Vector3(Math.cos(turn), Math.sin(turn), 0).multiplyScalar(dice.between(100, 400));
    const up = new Vector3(-Math.sin(turn) * Math.cos(tilt), Math.cos(turn) * Math.cos(tilt), Math.sin(tilt));
    up.multiplyScalar(dice.between(100, 300));
    const corner = (i: number, j: number): Triple => {
      const p = new Vector3(x, y, z).addScaledVector(across, i).addScaledVector(up, j);
      return [p.x, p.y, p.z];
    };
    return { ...common, kind: 'quad', corners: [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)] };
  }

  const someBox = (dice: Dice): BoxOccluder =>
    box(
      [dice.between(-200, 200), dice.between(-500, 500), dice.between(700, 1500)],
      [dice.between(50, 350), dice.between(50, 900), dice.between(100, 900)],
      dice.between(-180, 180),
    );

  const raised = <T extends BoxOccluder | QuadOccluder>(thing: T, by: number): T =>
    thing.kind === 'box'
      ? { ...thing, center: [thing.center[0], thing.center[1], thing.center[2] + by] }
      : { ...thing, corners: thing.corners.map(([x, y, z]) => [x, y, z + by]) };

  it.each([
    ['desks', someDesk],
    ['boxes', someBox],
  ])('meets the same %s out of 4,000, and lowering by the height clears them', (_, make) => {
    const dice = diceOf(20270313);
    let [met, missed] = [0, 0];
    for (let round = 0; round < 4000; round++) {
      const [from, to, thing] = [eye(dice, -1), eye(dice, 1), make(dice)];
      const heights = heightsOver(line(from, to), thing);
      const isHit = hits(from, to, thing);
      expect(heights !== null && isMet(heights), `round ${round}`).toBe(isHit);
      if (!isHit || !heights) {
        missed++;
        continue;
      }
      met++;
      expect(hits(from, to, raised(thing, -heights.most - 0.01))).toBe(false);
      expect(hits(from, to, raised(thing, -heights.most + 0.01))).toBe(true);
      expect(hits(from, to, raised(thing, -heights.least + 0.01))).toBe(false);
    }
    expect(met).toBeGreaterThan(400);
    expect(missed).toBeGreaterThan(400);
  });

  /** Distance of the line between the eyes from the capsule's axis, by halving intervals: both are convex. */
  function distanceToAxis(from: Vec3, to: Vec3, { x, y, z0, z1 }: CapsuleOccluder): number {
    const distanceAt = (share: number): number => {
      const p = new Vector3(from.x, from.y, from.z).lerp(new Vector3(to.x, to.y, to.z), share);
      return p.distanceTo(new Vector3(x, y, Math.min(z1, Math.max(z0, p.z))));
    };
    let [low, high] = [0, 1];
    for (let i = 0; i < 100; i++) {
      const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
      if (distanceAt(a) < distanceAt(b)) high = b;
      else low = a;
    }
    return distanceAt((low + high) / 2);
  }

  it('meets the same bodies out of 4,000 as a search for the nearest points, and lowering clears them', () => {
    const dice = diceOf(7);
    let met = 0;
    for (let round = 0; round < 4000; round++) {
      const [from, to] = [eye(dice, -1), eye(dice, 1)];
      const z0 = dice.between(600, 1400);
      const body = capsule({
        x: dice.between(-900, 900),
        y: dice.between(-500, 500),
        z0,
        z1: z0 + dice.between(0, 400),
        r: dice.between(60, 200),
      });
      const heights = heightsOver(line(from, to), body);
      const gap = distanceToAxis(from, to, body) - body.r;
      if (Math.abs(gap) < 0.05) continue;
      expect(heights !== null && isMet(heights), `round ${round}`).toBe(gap < 0);
      if (gap > 0 || !heights) continue;
      met++;
      const lowered = { ...body, z0: body.z0 - heights.most, z1: body.z1 - heights.most };
      expect(distanceToAxis(from, to, lowered) - body.r).toBeGreaterThan(-0.01);
      const isBesideAnEye = [from, to].some((end) => Math.hypot(end.x - body.x, end.y - body.y) < body.r);
      if (!isBesideAnEye) expect(distanceToAxis(from, to, lowered)).toBeCloseTo(body.r, 2);
    }
    expect(met).toBeGreaterThan(300);
  });
});

it('every kind of thing is told apart', () => {
  const things: Occluder[] = [capsule({}), box([500, 0, 1000], [100, 100, 100])];
  for (const thing of things)
    expect(heightsOver(line(at(0, 0, 1000), at(1000, 0, 1000)), thing)).not.toBeNull();
});
