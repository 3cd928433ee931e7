/** Small scenes for tests of the sight check. */

import type {
  BoxOccluder,
  CapsuleOccluder,
  Occluder,
  QuadOccluder,
  Scene,
  Target,
  Triple,
} from '#model/checks/scene.ts';

type Corners = QuadOccluder['corners'];

/** An eye at (x, y, z). */
export const seatAt = (x: number, y: number, z: number, id = 'seat'): Scene['seats'][number] => ({
  id,
  x,
  y,
  z,
  record: 'block',
  label: id,
  row: 0,
});

/** 500 wide, from 1000 to 2000, 10 m up the line from an eye at the origin of the plan. */
export const targetOf = (fields: Partial<Target> = {}): Target => ({
  id: 'player',
  x: 0,
  y: 10_000,
  z0: 1000,
  z1: 2000,
  width: 500,
  chin: 1800,
  ...fields,
});

export const quad = (corners: Corners, fields: Partial<QuadOccluder> = {}): QuadOccluder => ({
  id: 'quad',
  record: 'quad',
  kind: 'quad',
  corners,
  ...fields,
});

/** Upright and square to the y axis, at depth y. */
export const screen = (
  y: number,
  [x0, x1]: readonly [number, number],
  [z0, z1]: readonly [number, number],
  id = 'screen',
): QuadOccluder =>
  quad(
    [
      [x0, y, z0],
      [x1, y, z0],
      [x1, y, z1],
      [x0, y, z1],
    ],
    { id, record: id },
  );

export const box = (
  center: Triple,
  size: Triple,
  yaw = 0,
  fields: Partial<BoxOccluder> = {},
): BoxOccluder => ({
  id: 'box',
  record: 'box',
  kind: 'box',
  center,
  size,
  yaw,
  ...fields,
});

export const capsule = (fields: Partial<CapsuleOccluder> = {}): CapsuleOccluder => ({
  id: 'capsule',
  record: 'capsule',
  kind: 'capsule',
  x: 0,
  y: 5000,
  z0: 0,
  z1: 3000,
  r: 100,
  ...fields,
});

/** An eye at (0, 0, 1500), so level with the middle of the target's window, and these occluders. */
export const sceneWith = (...occluders: Occluder[]): Scene => ({
  seats: [seatAt(0, 0, 1500)],
  targets: [targetOf()],
  occluders,
});
