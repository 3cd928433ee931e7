/** What the upright plane through a line between two pairs of eyes cuts out of the things of a scene. */

import { radians } from '../../geometry/frame.ts';
import { TOUCHING } from '../../geometry/tolerances.ts';
import type { BoxOccluder, CapsuleOccluder, Occluder, QuadOccluder, Triple } from '../scene.ts';
import type { Cut, EyeLine, FlatCut, RoundCut, Spot } from './eye-line.ts';

/** Null when the plane cuts nothing. */
export function cutOf(line: EyeLine, thing: Occluder): Cut | null {
  switch (thing.kind) {
    case 'quad':
      return cutOfQuad(line, thing);
    case 'box':
      return cutOfBox(line, thing);
    case 'capsule':
      return cutOfCapsule(line, thing);
  }
}

/** A corner seen from above: how far along the line, and how far to the left of it. */
interface Corner extends Spot {
  readonly aside: number;
}

function asideOf({ from, along }: EyeLine, [x, y]: Triple): number {
  return (y - from.y) * along.x - (x - from.x) * along.y;
}

function cornerOf(line: EyeLine, corner: Triple): Corner {
  const { from, along } = line;
  const [x, y, z] = corner;
  const ahead = (x - from.x) * along.x + (y - from.y) * along.y;
  return { ahead, aside: asideOf(line, corner), z };
}

function cutOfQuad(line: EyeLine, { corners: [a, b, c, d] }: QuadOccluder): FlatCut | null {
  const [p, q, r, s] = [asideOf(line, a), asideOf(line, b), asideOf(line, c), asideOf(line, d)];
  // Most things lie wholly to one side.
  if (Math.min(p, q, r, s) > TOUCHING || Math.max(p, q, r, s) < -TOUCHING) return null;
  const inPlane = crossings([a, b, c, d].map((corner) => cornerOf(line, corner)));
  const corners = beyond(beyond(inPlane, line.length, -1), 0, 1);
  return corners.length === 0 ? null : { kind: 'flat', corners };
}

/** Where the outline of the quadrilateral crosses the upright plane, and its corners that lie in it. */
function crossings(corners: readonly Corner[]): Corner[] {
  return corners.flatMap((corner, index) => {
    const next = corners[(index + 1) % corners.length] ?? corner;
    const here = sideOf(corner);
    const found = here === 0 ? [corner] : [];
    if (here * sideOf(next) < 0) {
      found.push(between(corner, next, corner.aside / (corner.aside - next.aside)));
    }
    return found;
  });
}

/** -1, 0 or 1: on which side of the plane, or in it. A board whose edge only grazes the line counts as in it. */
function sideOf({ aside }: Corner): number {
  return Math.abs(aside) <= TOUCHING ? 0 : Math.sign(aside);
}

function between(a: Corner, b: Corner, share: number): Corner {
  const at = (p: number, q: number): number => p + (q - p) * share;
  return { ahead: at(a.ahead, b.ahead), aside: 0, z: at(a.z, b.z) };
}

/** The part of a ring of corners that lies beyond `limit` along the line, or before it (`sign` -1). */
function beyond(ring: readonly Corner[], limit: number, sign: 1 | -1): Corner[] {
  const depth = ({ ahead }: Corner): number => sign * (ahead - limit);
  return ring.flatMap((corner, index) => {
    const next = ring[(index + 1) % ring.length] ?? corner;
    const [here, there] = [depth(corner), depth(next)];
    const kept = here >= 0 ? [corner] : [];
    if (here * there < 0) kept.push(between(corner, next, here / (here - there)));
    return kept;
  });
}

/** The plane cuts an upright box in a rectangle: only the stretch of the line over its plan is to be found. */
function cutOfBox(line: EyeLine, { center, size, yaw }: BoxOccluder): FlatCut | null {
  const [x, y, z] = center;
  const [width, depth, height] = size;
  const stretch = stretchOver(line, { x, y, yaw, width, depth });
  if (!stretch) return null;
  const [low, high] = [z - height / 2, z + height / 2];
  const corners = stretch.flatMap((ahead) => [
    { ahead, z: low },
    { ahead, z: high },
  ]);
  return { kind: 'flat', corners };
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
function cutOfCapsule(line: EyeLine, { x, y, z0, z1, r }: CapsuleOccluder): RoundCut | null {
  const { ahead, aside } = cornerOf(line, [x, y, 0]);
  if (Math.abs(aside) > r) return null;
  const radius = Math.sqrt(r * r - aside * aside);
  const [first, last] = [Math.max(0, ahead - radius), Math.min(line.length, ahead + radius)];
  return first > last ? null : { kind: 'round', ahead, z0, z1, radius, first, last };
}
