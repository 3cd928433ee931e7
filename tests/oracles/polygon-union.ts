/**
 * Visible shares by uniting polygons: an independent second program, on the general polygon library
 * `polygon-clipping`. It cuts every face of every flat-sided occluder in space, projects it and unites the lot.
 */

import polygonClipping, { type MultiPolygon, type Pair, type Polygon } from 'polygon-clipping';
import type {
  BoxOccluder,
  Occluder,
  QuadOccluder,
  Scene,
  SeatPoint,
  Target,
  Triple,
} from '#model/checks/scene.ts';

/** The share of `target` that `seat` sees. Occluders have to be quads and boxes, and the eye outside the boxes. */
export function shareByUnion(scene: Scene, seat: SeatPoint, target: Target): number {
  const window: Polygon = [windowCorners(target)];
  const shadows = scene.occluders
    .filter(({ owner }) => owner !== target.id)
    .flatMap(facesOf)
    .map((face) => shadowOf(face, seat, target))
    .filter((shadow) => shadow.length >= 3)
    .flatMap((shadow) => polygonClipping.intersection([shadow], window));
  const [first, ...others] = shadows;
  const covered = first
    ? polygonClipping.union([first], ...others.map((shadow): MultiPolygon => [shadow]))
    : [];
  return 1 - areaOf(covered) / ((target.z1 - target.z0) * target.width);
}

function windowCorners({ width, z0, z1 }: Target): Pair[] {
  const half = width / 2;
  return [
    [-half, z0],
    [half, z0],
    [half, z1],
    [-half, z1],
  ];
}

type Face = readonly Triple[];

function facesOf(occluder: Occluder): Face[] {
  if (occluder.kind === 'quad') return [(occluder satisfies QuadOccluder).corners];
  if (occluder.kind === 'box') return boxFaces(occluder);
  throw new Error('only flat-sided occluders');
}

function boxFaces({ center, size, yaw }: BoxOccluder): Face[] {
  const angle = (yaw * Math.PI) / 180;
  const corner = (sx: number, sy: number, sz: number): Triple => {
    const [a, b] = [(sx * size[0]) / 2, (sy * size[1]) / 2];
    return [
      center[0] + a * Math.cos(angle) - b * Math.sin(angle),
      center[1] + a * Math.sin(angle) + b * Math.cos(angle),
      center[2] + (sz * size[2]) / 2,
    ];
  };
  const turns: [number, number][] = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ];
  const ring = (sz: number): Triple[] => turns.map(([sx, sy]) => corner(sx, sy, sz));
  const [low, high] = [ring(-1), ring(1)];
  const sides = turns.map((_, i): Face => {
    const next = (i + 1) % 4;
    return [low[i], low[next], high[next], high[i]].filter((point) => point !== undefined);
  });
  return [low, high, ...sides];
}

/** The face's shadow on the window's plane: sideways from the axis, and height. */
function shadowOf(face: Face, seat: SeatPoint, target: Target): Pair[] {
  const distance = Math.hypot(target.x - seat.x, target.y - seat.y);
  const ahead = [(target.x - seat.x) / distance, (target.y - seat.y) / distance] as const;
  const local = face.map(([x, y, z]): Triple => {
    const [dx, dy] = [x - seat.x, y - seat.y];
    return [dx * ahead[1] - dy * ahead[0], dx * ahead[0] + dy * ahead[1], z - seat.z];
  });
  const between = cutAcross(cutAcross(local, 1, 1), -1, -distance);
  return between.map(([sideways, depth, up]) => [
    snapped((sideways * distance) / depth),
    snapped(seat.z + (up * distance) / depth),
  ]);
}

/**
 * To a grid of 2^-17 mm. The library loses its way between edges that all but coincide, as those of neighbouring faces
 * do after rounding; on the grid they coincide. It moves an area by less than 1e-7 of a window.
 */
function snapped(length: number): number {
  return Math.round(length * 2 ** 17) / 2 ** 17;
}

/** Keeps what has sign * depth of at least `least`. */
function cutAcross(face: Face, sign: 1 | -1, least: number): Face {
  return face.flatMap((b, i) => {
    const a = face[(i + face.length - 1) % face.length] ?? b;
    const [inA, inB] = [sign * a[1] - least, sign * b[1] - least];
    const t = inA / (inA - inB);
    const crossing: Triple = [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1]), a[2] + t * (b[2] - a[2])];
    const kept = inB >= 0 ? [b] : [];
    return inA >= 0 === inB >= 0 ? kept : [crossing, ...kept];
  });
}

function areaOf(polygons: MultiPolygon): number {
  let area = 0;
  for (const rings of polygons) {
    rings.forEach((ring, index) => {
      area += (index === 0 ? 1 : -1) * Math.abs(ringArea(ring));
    });
  }
  return area;
}

function ringArea(ring: readonly Pair[]): number {
  let twice = 0;
  ring.forEach(([x1, y1], i) => {
    const [x2, y2] = ring[(i + 1) % ring.length] ?? [x1, y1];
    twice += x1 * y2 - x2 * y1;
  });
  return twice / 2;
}
