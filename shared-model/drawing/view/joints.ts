/** Where limbs grow together: an outline there would cut an arm into pieces. */

import type { Vec3 } from '../../geometry/frame.ts';
import type { Limb } from './mesh.ts';
import { between, difference, dot, lengthOf } from './vectors.ts';

/** A joint reaches so far round its middle, in radii of the limb. */
const REACH = 1.7;

/** Whether a spot on a limb's outline lies, for the eye, in what the limb is joined to, and near the joint. */
export function isInJoint(limb: Limb, spot: Vec3, eye: Vec3): boolean {
  const other = limb.joined?.find((each) => isSeenIn(each, spot, eye));
  if (!other) return false;
  const isAtStart = distanceTo(other, limb.from) < distanceTo(other, limb.to);
  const [joint, radius] = isAtStart ? [limb.from, limb.radii[0]] : [limb.to, limb.radii[1]];
  return lengthOf(difference(spot, joint)) < REACH * radius;
}

/** Whether the line from the eye to a spot runs through a limb. */
function isSeenIn({ from, to, radii }: Limb, spot: Vec3, eye: Vec3): boolean {
  const sight = difference(spot, eye);
  const share = nearestShare(from, to, { eye, sight });
  const at = between(from, to, share);
  const along = dot(difference(at, eye), sight) / dot(sight, sight);
  return lengthOf(difference(at, between(eye, spot, along))) < radii[0] + (radii[1] - radii[0]) * share;
}

interface Line {
  readonly eye: Vec3;
  readonly sight: Vec3;
}

/** Where on the way from one point to another it is nearest to a line: 0 to 1. */
function nearestShare(from: Vec3, to: Vec3, { eye, sight }: Line): number {
  const [axis, away] = [difference(to, from), difference(from, eye)];
  const [aa, ss, as] = [dot(axis, axis), dot(sight, sight), dot(axis, sight)];
  const flat = aa * ss - as * as;
  if (flat <= 1e-9 * aa * ss) return 0.5;
  const share = (as * dot(sight, away) - ss * dot(axis, away)) / flat;
  return Math.max(0, Math.min(1, share));
}

function distanceTo({ from, to }: Limb, point: Vec3): number {
  const axis = difference(to, from);
  const length = dot(axis, axis);
  const share = length > 0 ? dot(difference(point, from), axis) / length : 0;
  return lengthOf(difference(point, between(from, to, Math.max(0, Math.min(1, share)))));
}
