/** Outlines of round and cut-out parts, each on one plane that looks to the eye. */

import { convexHull } from '../../geometry/convex-hull.ts';
import type { Vec2, Vec3 } from '../../geometry/frame.ts';
import type { CutOut, Limb } from './mesh.ts';
import { cross, difference, dot, lengthOf, scaled, sum, unit } from './vectors.ts';

/** An arrow shorter than this, in mm or as a sine, has no direction. */
const NO_ARROW = 1e-6;

/**
 * What a limb hides from the eye, anticlockwise: the hull of the balls at its two ends, exact but for its corners. Null
 * for an eye inside it, and for a limb that reaches beside the eye.
 */
export function limbOutline({ from, to, radii }: Limb, eye: Vec3): Vec3[] | null {
  const screen = screenOf(from, to, { eye, thick: 2 * Math.max(radii[0], radii[1]) });
  const [first, second] = [rimOf(from, radii[0], screen), rimOf(to, radii[1], screen)];
  if (!first || !second) return null;
  const { middle, across, up } = screen;
  return convexHull([...first, ...second]).map(({ x, y }) =>
    sum(middle, sum(scaled(across, x), scaled(up, y))),
  );
}

/** The plane on which a limb is painted, as coordinates about its middle, and what is drawn on it. */
interface Screen {
  readonly eye: Vec3;
  readonly middle: Vec3;
  /** Unit vectors: to the eye's side, and two along the plane. */
  readonly normal: Vec3;
  readonly across: Vec3;
  readonly up: Vec3;
  readonly axis: Vec3;
}

/** How far a thick limb's plane may be bent from its axis, so that it is not seen on edge by an eye along the axis. */
const MOST_BENT = 0.35;

function screenOf(
  from: Vec3,
  to: Vec3,
  { eye, thick }: { readonly eye: Vec3; readonly thick: number },
): Screen {
  const middle = scaled(sum(from, to), 0.5);
  const length = lengthOf(difference(to, from));
  const axis = length > NO_ARROW ? scaled(difference(to, from), 1 / length) : { x: 0, y: 0, z: 1 };
  const sight = unitOr(difference(eye, middle), axis);
  const bent = Math.min(MOST_BENT, thick / Math.max(length, NO_ARROW));
  const normal = unitOr(difference(sight, scaled(axis, (1 - bent) * dot(sight, axis))), sight);
  const across = unit(cross(Math.abs(normal.z) < 0.9 ? { x: 0, y: 0, z: 1 } : { x: 1, y: 0, z: 0 }, normal));
  return { eye, middle, normal, across, up: cross(normal, across), axis };
}

function unitOr(arrow: Vec3, otherwise: Vec3): Vec3 {
  const length = lengthOf(arrow);
  return length > NO_ARROW ? scaled(arrow, 1 / length) : otherwise;
}

/** The circle in which lines from the eye touch a ball, thrown on the screen; null when there is none. */
function rimOf(centre: Vec3, r: number, screen: Screen): Vec2[] | null {
  const { eye, axis } = screen;
  const away = difference(centre, eye);
  const distance = lengthOf(away);
  const share = r / distance;
  if (!(share < 1)) return null;
  const count = cornersFor(share);
  const sight = scaled(away, 1 / distance);
  // From here the first corner and the middle one lie on the limb's sides, so that it is as thick as it should be.
  const u = unitOr(cross(sight, axis), unit(cross(sight, { x: 1, y: 0.1, z: 0.2 })));
  const v = cross(sight, u);
  const middle = difference(centre, scaled(sight, r * share));
  const radius = r * Math.sqrt(1 - share * share) * fullness(count);
  const rim: Vec2[] = [];
  for (let corner = 0; corner < count; corner++) {
    const angle = (2 * Math.PI * corner) / count;
    const [c, s] = [radius * Math.cos(angle), radius * Math.sin(angle)];
    const spot = thrown(sum(middle, sum(scaled(u, c), scaled(v, s))), screen);
    if (!spot) return null;
    rim.push(spot);
  }
  return rim;
}

/** Corners round a ball of so large a radius as a share of its distance: what is small needs few. All are even. */
function cornersFor(share: number): number {
  if (share > 0.02) return 24;
  return share > 0.006 ? 14 : 8;
}

/** So much farther out the corners have to be for a polygon of as much area as the circle. */
function fullness(corners: number): number {
  const step = (2 * Math.PI) / corners;
  return Math.sqrt(step / Math.sin(step));
}

/** A point as seen from the eye on the screen; null beside or behind the eye. */
function thrown(point: Vec3, { eye, middle, normal, across, up }: Screen): Vec2 | null {
  const ray = difference(point, eye);
  const towards = dot(ray, normal);
  if (towards > -NO_ARROW) return null;
  const to = difference(middle, eye);
  const spot = difference(scaled(ray, dot(to, normal) / towards), to);
  return { x: dot(spot, across), y: dot(spot, up) };
}

/** The outline, upright and square to the level direction from the eye; null for an eye right above it. */
export function cutOutOutline({ foot, outline }: CutOut, eye: Vec3): Vec3[] | null {
  const [dx, dy] = [foot.x - eye.x, foot.y - eye.y];
  const size = Math.hypot(dx, dy);
  if (size < NO_ARROW) return null;
  return outline.map(({ x, y }) => ({
    x: foot.x + (dy / size) * x,
    y: foot.y - (dx / size) * x,
    z: foot.z + y,
  }));
}
