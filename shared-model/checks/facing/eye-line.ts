/**
 * A straight line between two pairs of eyes, and how high the things of a scene stand above it.
 *
 * The upright plane through the line cuts every convex thing in a convex patch. The line meets the thing exactly when
 * some of the patch lies above the line and some below; and lowering the thing by the greatest height of the patch
 * above the line is the least that lets the line pass over it.
 */

import { radians, type Vec3 } from '../../geometry/frame.ts';
import { TOUCHING } from '../../geometry/tolerances.ts';
import type { BoxOccluder, CapsuleOccluder, Occluder, QuadOccluder } from '../scene.ts';

export interface EyeLine {
  readonly from: Vec3;
  /** Unit vector in plan. */
  readonly along: { readonly x: number; readonly y: number };
  /** In plan, mm. */
  readonly length: number;
  /** Rise per mm of `length`. */
  readonly slope: number;
}

/** Null when one stands on the other's spot. */
export function eyeLine(from: Vec3, to: Vec3): EyeLine | null {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length < TOUCHING) return null;
  return {
    from,
    along: { x: (to.x - from.x) / length, y: (to.y - from.y) / length },
    length,
    slope: (to.z - from.z) / length,
  };
}

/** Least and greatest height above the line, mm; negative below it. */
export interface Heights {
  readonly least: number;
  readonly most: number;
}

/** Of the part of a thing that the upright plane between the eyes cuts; null when it cuts nothing. */
export function heightsOver(line: EyeLine, thing: Occluder): Heights | null {
  switch (thing.kind) {
    case 'quad':
      return heightsOfQuad(line, thing);
    case 'box':
      return heightsOfBox(line, thing);
    case 'capsule':
      return heightsOfCapsule(line, thing);
  }
}

/** Touching the line is not standing in it. */
export function isMet({ least, most }: Heights): boolean {
  return least < -TOUCHING && most > TOUCHING;
}

interface Spot {
  /** Along the line in plan, and to the left of it. */
  readonly ahead: number;
  readonly aside: number;
  /** Height above the line. */
  readonly over: number;
}

function spotOf({ from, along, slope }: EyeLine, x: number, y: number, z: number): Spot {
  const [dx, dy] = [x - from.x, y - from.y];
  const ahead = dx * along.x + dy * along.y;
  return { ahead, aside: dy * along.x - dx * along.y, over: z - from.z - slope * ahead };
}

function heightsOfQuad(line: EyeLine, { corners }: QuadOccluder): Heights | null {
  const spots = corners.map(([x, y, z]) => spotOf(line, x, y, z));
  const patch = cutAt(cutAt(inPlane(spots), line.length, -1), 0, 1);
  return patch.length === 0 ? null : patch.reduce(wider, { least: Infinity, most: -Infinity });
}

const wider = ({ least, most }: Heights, { over }: Spot): Heights => ({
  least: Math.min(least, over),
  most: Math.max(most, over),
});

/** Where the outline of the quadrilateral crosses the upright plane, and its corners that lie in it. */
function inPlane(spots: readonly Spot[]): Spot[] {
  return spots.flatMap((spot, index) => {
    const next = spots[(index + 1) % spots.length] ?? spot;
    const here = isAside(spot);
    const found = here === 0 ? [spot] : [];
    if (here * isAside(next) < 0) found.push(between(spot, next, spot.aside / (spot.aside - next.aside)));
    return found;
  });
}

/** -1, 0 or 1: on which side of the plane, or in it. A board whose edge only grazes the line counts as in it. */
function isAside({ aside }: Spot): number {
  return Math.abs(aside) <= TOUCHING ? 0 : Math.sign(aside);
}

function between(a: Spot, b: Spot, share: number): Spot {
  const at = (p: number, q: number): number => p + (q - p) * share;
  return { ahead: at(a.ahead, b.ahead), aside: 0, over: at(a.over, b.over) };
}

/** The part of a ring of spots that lies beyond `limit` in the direction `sign`. */
function cutAt(ring: readonly Spot[], limit: number, sign: 1 | -1): Spot[] {
  const depth = ({ ahead }: Spot): number => sign * (ahead - limit);
  return ring.flatMap((spot, index) => {
    const next = ring[(index + 1) % ring.length] ?? spot;
    const [here, there] = [depth(spot), depth(next)];
    const kept = here >= 0 ? [spot] : [];
    if (here * there < 0) kept.push(between(spot, next, here / (here - there)));
    return kept;
  });
}

/** The plane cuts an upright box in a rectangle: only the stretch of the line over its plan is to be found. */
function heightsOfBox(line: EyeLine, { center, size, yaw }: BoxOccluder): Heights | null {
  const [x, y, z] = center;
  const [width, depth, height] = size;
  const stretch = stretchOver(line, { x, y, yaw, width, depth });
  if (!stretch) return null;
  const over = (ahead: number): number => z - line.from.z - line.slope * ahead;
  const [first, last] = [over(stretch[0]), over(stretch[1])];
  return { least: Math.min(first, last) - height / 2, most: Math.max(first, last) + height / 2 };
}

interface PlanBox {
  readonly x: number;
  readonly y: number;
  readonly yaw: number;
  readonly width: number;
  readonly depth: number;
}

/** From where to where the line runs over a turned rectangle. */
function stretchOver({ from, along, length }: EyeLine, box: PlanBox): Stretch {
  const [c, s] = [Math.cos(radians(box.yaw)), Math.sin(radians(box.yaw))];
  const [dx, dy] = [from.x - box.x, from.y - box.y];
  const across = within([0, length], c * dx + s * dy, c * along.x + s * along.y, box.width / 2);
  return within(across, c * dy - s * dx, c * along.y - s * along.x, box.depth / 2);
}

type Stretch = readonly [number, number] | null;

/** A line that turns by less than this over its whole length runs along the side of a box. */
const ALONG_SIDE = 1e-12;

/** The part of a stretch on which `start + rate * ahead` lies within `half` of 0. */
function within(stretch: Stretch, start: number, rate: number, half: number): Stretch {
  if (!stretch) return null;
  if (Math.abs(rate) < ALONG_SIDE) return Math.abs(start) <= half ? stretch : null;
  const [a, b] = [(-half - start) / rate, (half - start) / rate];
  const [first, last] = [Math.max(stretch[0], Math.min(a, b)), Math.min(stretch[1], Math.max(a, b))];
  return first <= last ? [first, last] : null;
}

/** The plane cuts an upright capsule in a narrower one, lying in the plane. */
function heightsOfCapsule(line: EyeLine, { x, y, z0, z1, r }: CapsuleOccluder): Heights | null {
  const foot = spotOf(line, x, y, 0);
  const round = r * r - foot.aside * foot.aside;
  if (round < 0) return null;
  const radius = Math.sqrt(round);
  const [first, last] = [Math.max(0, foot.ahead - radius), Math.min(line.length, foot.ahead + radius)];
  if (first > last) return null;
  // How far before the axis the round end is highest above the sloping line.
  const lead = (radius * line.slope) / Math.hypot(1, line.slope);
  const height = (z: number, end: 1 | -1): number => {
    const ahead = Math.min(last, Math.max(first, foot.ahead - end * lead));
    const swell = Math.sqrt(Math.max(0, round - (ahead - foot.ahead) ** 2));
    return z + end * swell - line.from.z - line.slope * ahead;
  };
  return { least: height(z0, -1), most: height(z1, 1) };
}
