/**
 * Central projection. Formula: with the eye as origin and Z along the view, (X, Y, Z) comes to (f X / Z, f Y / Z)
 * (Hartley and Zisserman, Multiple View Geometry in Computer Vision, 2nd edition, section 6.1; from memory). The whole
 * camera, pitch included, is compared with `PerspectiveCamera` of three 0.187.
 */

import fc from 'fast-check';
import * as THREE from 'three';
import { describe, expect, test } from 'vitest';
import { cameraOf, depthOf, frustumOf, horizonOf, project, scaleAt } from '#model/drawing/view/camera.ts';
import { heightOver } from '#model/drawing/view/plane.ts';
import type { View } from '#model/drawing/view/view.ts';

/** An eye over the origin that looks upstage; on paper 200 wide a tangent of one is 100 mm. */
const LOOKING_UPSTAGE: View = {
  subject: 'seat',
  label: 'A 1',
  from: 'seat',
  eye: { x: 0, y: 0, z: 1000 },
  facing: 180,
  pitch: 0,
  field: { left: -1, right: 1, bottom: -0.5, top: 0.5 },
};

const camera = cameraOf(LOOKING_UPSTAGE, 200, 100);

const point = (x: number, y: number, z: number) => ({ x, y, z });

describe('a cube of 1 m, 4 m before the eye, worked out by hand with f = 100 mm', () => {
  test.each([
    // 100 * 500 / 4000 = 12.5 aside; the top is level with the eye; 100 * 1000 / 4000 = 25 down.
    ['near, right, top', point(500, 4000, 1000), { x: 112.5, y: 50 }],
    ['near, right, bottom', point(500, 4000, 0), { x: 112.5, y: 75 }],
    ['near, left, top', point(-500, 4000, 1000), { x: 87.5, y: 50 }],
    ['near, left, bottom', point(-500, 4000, 0), { x: 87.5, y: 75 }],
    // 100 * 500 / 5000 = 10 aside, 100 * 1000 / 5000 = 20 down.
    ['far, right, top', point(500, 5000, 1000), { x: 110, y: 50 }],
    ['far, right, bottom', point(500, 5000, 0), { x: 110, y: 70 }],
    ['far, left, top', point(-500, 5000, 1000), { x: 90, y: 50 }],
    ['far, left, bottom', point(-500, 5000, 0), { x: 90, y: 70 }],
  ])('%s', (_, corner, onPaper) => {
    const { x, y } = project(camera, corner);
    expect(x).toBeCloseTo(onPaper.x, 9);
    expect(y).toBeCloseTo(onPaper.y, 9);
  });
});

const metres = (from: number, to: number) => fc.double({ min: from, max: to, noNaN: true });
const ahead = fc.record({ x: metres(-9000, 9000), y: metres(500, 20_000), z: metres(-2000, 6000) });

test('uprights stay upright when the view is level', () => {
  fc.assert(
    fc.property(ahead, metres(1, 4000), metres(-180, 180), (foot, height, facing) => {
      const turned = cameraOf({ ...LOOKING_UPSTAGE, facing }, 200, 100);
      fc.pre(depthOf(turned, foot) > 100);
      const [low, high] = [project(turned, foot), project(turned, { ...foot, z: foot.z + height })];
      expect(Math.abs(high.x - low.x)).toBeLessThan(1e-9 * (1 + Math.abs(low.x)));
      expect(high.y).toBeLessThan(low.y);
    }),
  );
});

test('what is twice as far looks half as large', () => {
  fc.assert(
    fc.property(metres(-1500, 1500), metres(500, 8000), metres(100, 2000), (x, depth, height) => {
      const size = (away: number): number =>
        project(camera, point(x, away, 0)).y - project(camera, point(x, away, height)).y;
      expect(size(2 * depth)).toBeCloseTo(size(depth) / 2, 9);
      expect(scaleAt(camera, point(x, 2 * depth, 0))).toBeCloseTo(
        scaleAt(camera, point(x, depth, 0)) / 2,
        12,
      );
    }),
  );
});

test('the horizon is the level of the eyes, however far, also when the view is bent down', () => {
  for (const pitch of [0, 12, 30]) {
    const bent = cameraOf({ ...LOOKING_UPSTAGE, pitch }, 200, 100);
    for (const far of [point(0, 2000, 1000), point(9000, 30_000, 1000), point(-40, 400, 1000)]) {
      expect(project(bent, far).y).toBeCloseTo(horizonOf(bent), 9);
    }
  }
});

const anyView = fc.record({
  facing: metres(-180, 180),
  pitch: metres(-20, 40),
  left: metres(-2, -0.2),
  right: metres(0.2, 2),
  bottom: metres(-2, -0.1),
  top: metres(0.1, 1),
});

test('agrees with the camera of three', () => {
  fc.assert(
    fc.property(anyView, ahead, ({ facing, pitch, ...field }, spot) => {
      const [width, height] = [100 * (field.right - field.left), 100 * (field.top - field.bottom)];
      const ours = cameraOf({ ...LOOKING_UPSTAGE, facing, pitch, field }, width, height);
      fc.pre(depthOf(ours, spot) > 100);
      const theirs = cameraOfThree({ facing, pitch, field });
      const seen = new THREE.Vector3(spot.x, spot.y, spot.z).project(theirs);
      const { x, y } = project(ours, spot);
      const tolerance = 1e-6 * (1 + Math.abs(x) + Math.abs(y));
      expect(Math.abs(x - ((seen.x + 1) / 2) * width)).toBeLessThan(tolerance);
      expect(Math.abs(y - ((1 - seen.y) / 2) * height)).toBeLessThan(tolerance);
    }),
  );
});

/** Angles by three's own means: it looks along -z, so the view is turned and bent by rotations. */
function cameraOfThree({ facing, pitch, field }: Pick<View, 'facing' | 'pitch' | 'field'>): THREE.Camera {
  const three = new THREE.PerspectiveCamera();
  const { x, y, z } = LOOKING_UPSTAGE.eye;
  three.position.set(x, y, z);
  // From "along -z, y up" to "along -y, z up", then to the facing, after bending down.
  three.rotateZ(THREE.MathUtils.degToRad(facing + 180));
  three.rotateX(THREE.MathUtils.degToRad(90 - pitch));
  three.updateMatrixWorld();
  three.projectionMatrix.makePerspective(field.left, field.right, field.top, field.bottom, 1, 1e6);
  three.projectionMatrixInverse.copy(three.projectionMatrix).invert();
  return three;
}

test('paper of another shape holds the field whole, with more round it', () => {
  for (const [width, height] of [
    [200, 300],
    [500, 100],
  ] as const) {
    const wide = cameraOf(LOOKING_UPSTAGE, width, height);
    for (const corner of [point(-1000, 1000, 500), point(1000, 1000, 1500)]) {
      const { x, y } = project(wide, corner);
      expect(x).toBeGreaterThanOrEqual(-1e-9);
      expect(x).toBeLessThanOrEqual(width + 1e-9);
      expect(y).toBeGreaterThanOrEqual(-1e-9);
      expect(y).toBeLessThanOrEqual(height + 1e-9);
    }
  }
});

test('a point is before all planes of the frustum when it falls on the paper, and only then', () => {
  fc.assert(
    fc.property(ahead, metres(-30, 30), (spot, pitch) => {
      const bent = cameraOf({ ...LOOKING_UPSTAGE, pitch }, 200, 100);
      fc.pre(depthOf(bent, spot) > 100);
      const { x, y } = project(bent, spot);
      // A bleed of 4 mm is kept round the paper.
      const outside = Math.max(-4 - x, x - 204, -4 - y, y - 104);
      fc.pre(Math.abs(outside) > 1e-6);
      const inside = frustumOf(bent).every((plane) => heightOver(plane, spot) > 0);
      expect(inside).toBe(outside < 0);
    }),
  );
});
