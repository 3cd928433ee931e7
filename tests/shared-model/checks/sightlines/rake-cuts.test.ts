/** What cuts the line of sight of a row: heads by the published rule, things against an independent ray caster. */

import fc from 'fast-check';
import * as THREE from 'three';
import { describe, expect, test } from 'vitest';
import { EYE_TO_CROWN, eyeOfRow, firstCut } from '#model/checks/sightlines/rake-cuts.ts';
import type { FocusPoint } from '#model/checks/sightlines/rake-focus.ts';
import { CENTRE_PLANE } from '#model/checks/sightlines/rake-plane.ts';
import { rakesOnPlane, sceneWithoutHeads } from '#model/checks/sightlines/rake.ts';
import type { Occluder, Scene, Triple } from '#model/checks/scene.ts';
import { asId } from '#model/document/ids.ts';
import type { AnyRecord } from '#model/document/records.ts';
import { aDocument, aPlatform, aPlayer, aSeatBlock, aStand, SETUP } from '../../../helpers/build.ts';
import { box, capsule, screen } from '../../../helpers/scenes.ts';
import { meshOf } from '../../../oracles/ray-caster.ts';

const plane = CENTRE_PLANE;
const PLAYER = { kind: 'player', player: asId<'player'>('player-1') } as const;

/** What cuts the rows of the only block on the centre line, in words. */
function cutsOf(focus: 'edge' | 'player', ...records: AnyRecord[]): string[] {
  const document = aDocument(aPlayer({ y: 1500 }), ...records);
  const scene = sceneWithoutHeads(document, SETUP);
  const wanted = focus === 'edge' ? ({ kind: 'edge' } as const) : PLAYER;
  const [rake] = rakesOnPlane(document, scene, { plane, focus: wanted, beside: true });
  if (!rake) throw new Error('no rows');
  return rake.rows.map((row) => {
    const cut = firstCut(eyeOfRow(row), rake.focus, { plane, scene });
    return cut ? `${cut.by} ${cut.record}` : 'clear';
  });
}

describe('heads', () => {
  test('from eye to crown is the median of ANSUR II, sexes weighted equally: 111 mm', () => {
    // NATICK/TR-15/007, sitting height less sitting eye height: P50 111 mm; the mean body of median stature is near it.
    expect(Math.abs(EYE_TO_CROWN - 111)).toBeLessThan(1.5);
  });

  test('on a flat floor every row but the front one looks into a head', () => {
    expect(cutsOf('edge')).toEqual(['clear', ...Array(4).fill('head stalls')]);
  });

  test('C just over the head is clear, just under it is cut', () => {
    // T 900, D 2500, R 1200 - 600 = 600 over the platform's edge: N = (R + C)(D + T) / D - R.
    const riser = (clearance: number): number => ((600 + clearance) * 3400) / 2500 - 600;
    const two = (clearance: number) => aSeatBlock({ rows: 2, riser: riser(clearance) });
    expect(cutsOf('edge', two(EYE_TO_CROWN + 1))).toEqual(['clear', 'clear']);
    expect(cutsOf('edge', two(EYE_TO_CROWN - 1))).toEqual(['clear', 'head stalls']);
  });

  test('staggered rows look between the heads of the next row', () => {
    expect(cutsOf('edge', aSeatBlock({ rows: 3, staggered: true }))).toEqual([
      'clear',
      'clear',
      'head stalls',
    ]);
  });
});

describe('things', () => {
  test('a desk before the player, then a lower one', () => {
    const steep = aSeatBlock({ rows: 3, riser: 100 });
    const desk = (lip: number) => aStand({ y: 900, lip, facing: 180, tilt: 80 });
    const [front] = cutsOf('player', steep, desk(900));
    expect(front).toBe('thing stand-1');
    expect(cutsOf('player', steep, desk(200))[0]).toBe('clear');
  });

  test('the platform hides what is low from low eyes', () => {
    const low = aSeatBlock({ rows: 1, eyeHeight: 1000 });
    // Sat on the floor far upstage of a platform higher than the eyes.
    const player = aPlayer({ y: 4500, chair: { model: 'orchestra-chair', height: 200 } });
    expect(cutsOf('player', low, player, aPlatform({ height: 1400 }))[0]).toBe('thing platform-1');
  });

  test('a rail before a balcony', () => {
    const balcony = aSeatBlock({ floor: 4000, rows: 1, y: -3000, frontRail: 1150 });
    expect(cutsOf('edge', balcony)).toEqual(['thing stalls']);
  });

  test('the player who is looked at does not hide himself', () => {
    expect(cutsOf('player', aSeatBlock({ rows: 1, riser: 0 }))).toEqual(['clear']);
  });
});

/** `three-mesh-bvh` meshes the scene itself and knows nothing of planes and cuts. */
describe('against an independent ray caster', () => {
  const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const things: fc.Arbitrary<Occluder[]> = fc.array(
    fc.oneof(
      fc
        .tuple(number(-800, 800), number(500, 5500), number(0, 2000), number(100, 900), number(-90, 90))
        .map(([x, y, z, size, yaw]) => box([x, y, z], [size, size / 2, size], yaw)),
      fc
        .tuple(number(-800, 800), number(500, 5500), number(0, 2000), number(100, 900))
        .map(([x, y, z, size]) => screen(y, [x - size, x + size], [z, z + size])),
      fc
        .tuple(number(-500, 500), number(500, 5500), number(0, 1500), number(50, 300))
        .map(([x, y, z, r]) => capsule({ x, y, z0: z, z1: z + 500, r })),
    ),
    { minLength: 1, maxLength: 5 },
  );

  test('the first thing met, and where, for flat things; whether any is met, for all', () => {
    let [met, clear] = [0, 0];
    fc.assert(
      fc.property(things, number(0, 2000), number(0, 2000), (occluders, from, to) => {
        const scene: Scene = { seats: [], targets: [], occluders };
        const focus: FocusPoint = { x: 300, y: 6000, z: to, out: -6000, focus: { kind: 'edge' } };
        if (occluders.some((thing) => grazes(thing, from, to))) return;
        const cut = firstCut({ out: 0, z: from, looks: 1, inLine: [] }, focus, { plane, scene });
        const hit = firstHit(occluders, from, to);
        expect(cut === null).toBe(hit === null);
        if (cut && hit !== null && occluders.every(({ kind }) => kind !== 'capsule')) {
          expect(Math.abs(cut.share - hit)).toBeLessThan(1e-5);
        }
        if (hit === null) clear++;
        else met++;
      }),
      { numRuns: 200 },
    );
    // Else the comparison would be about nothing.
    expect(Math.min(met, clear)).toBeGreaterThan(25);
  });

  /** Share of the way to the first hit; null: none. */
  function firstHit(occluders: readonly Occluder[], from: number, to: number): number | null {
    const eye = new THREE.Vector3(0, 0, from);
    const way = new THREE.Vector3(300, 6000, to).sub(eye);
    const length = way.length();
    const ray = new THREE.Ray(eye, way.normalize());
    const hit = meshOf(occluders)?.raycastFirst(ray, THREE.DoubleSide, 0, length);
    return hit ? hit.distance / length : null;
  }

  /** The line passes so near to an edge, or to a round body that is meshed with facets, that a hair decides. */
  function grazes(thing: Occluder, from: number, to: number): boolean {
    const isHit = (by: number): boolean => firstHit([resized(thing, by)], from, to) !== null;
    return isHit(1.01) !== isHit(0.99);
  }

  function resized(thing: Occluder, by: number): Occluder {
    if (thing.kind === 'capsule') return { ...thing, r: thing.r * by };
    if (thing.kind === 'box')
      return box(thing.center, [thing.size[0] * by, thing.size[1] * by, thing.size[2] * by], thing.yaw);
    const middle = [0, 1, 2].map((axis) => thing.corners.reduce((sum, corner) => sum + corner[axis]! / 4, 0));
    const moved = (corner: Triple): Triple =>
      [0, 1, 2].map((axis) => middle[axis]! + by * (corner[axis]! - middle[axis]!)) as unknown as Triple;
    const [a, b, c, d] = thing.corners;
    return { ...thing, corners: [moved(a), moved(b), moved(c), moved(d)] };
  }
});
