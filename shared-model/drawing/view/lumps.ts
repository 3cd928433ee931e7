/**
 * Parting whole lumps before their faces: a plane that passes between lumps orders them and cuts nothing. First solids
 * are parted, so that nearly every item of a stage is painted in one piece, then the bodies of solids that stand in one
 * another's way. Only bodies that no such plane parts go to the exact order together.
 */

import type { Vec3 } from '../../geometry/frame.ts';
import { IN_PLANE } from './clip.ts';
import type { Face } from './face.ts';
import { paintOrder } from './paint-order.ts';
import { dot } from './vectors.ts';

/** All faces in painting order, farthest first. */
export function paintOrderOfSolids(faces: readonly Face[], eye: Vec3): Face[] {
  return clustersInOrder(faces, ({ solid }) => solid, eye)
    .flatMap((cluster) => clustersInOrder(cluster, ({ body }) => body, eye))
    .flatMap((cluster) => paintOrder(cluster, eye));
}

/** Faces that no plane between lumps parts, farthest cluster first. Faces of one number make a lump. */
export function clustersInOrder(
  faces: readonly Face[],
  lumpOf: (face: Face) => number,
  eye: Vec3,
): (readonly Face[])[] {
  const clusters: (readonly Face[])[] = [];
  const waiting = [lumpsOf(faces, lumpOf)];
  for (let lumps = waiting.pop(); lumps; lumps = waiting.pop()) {
    const gap = lumps.length > 1 ? bestGap(lumps) : null;
    if (!gap) clusters.push(facesOf(lumps));
    else if (dot(DIRECTIONS[gap.direction] ?? NOWHERE, eye) >= gap.at) waiting.push(gap.high, gap.low);
    else waiting.push(gap.low, gap.high);
  }
  return clusters;
}

/** Up, and level directions every 22.5 degrees, the most different ones first. */
const DIRECTIONS: readonly Vec3[] = [
  { x: 0, y: 0, z: 1 },
  ...[0, 4, 2, 6, 1, 3, 5, 7].map((step) => ({
    x: Math.cos((step * Math.PI) / 8),
    y: Math.sin((step * Math.PI) / 8),
    z: 0,
  })),
];

interface Lump {
  readonly faces: Face[];
  /** From where to where it reaches in each direction; measured when it is first asked for. */
  readonly reach: (Reach | undefined)[];
}

interface Reach {
  readonly low: number;
  readonly high: number;
}

function lumpsOf(faces: readonly Face[], lumpOf: (face: Face) => number): Lump[] {
  const lumps = new Map<number, Lump>();
  for (const face of faces) {
    const number = lumpOf(face);
    const lump = lumps.get(number);
    if (lump) lump.faces.push(face);
    else lumps.set(number, { faces: [face], reach: [] });
  }
  return [...lumps.values()];
}

function reachOf(lump: Lump, direction: number): Reach {
  return (lump.reach[direction] ??= measuredReach(lump, direction));
}

function measuredReach({ faces }: Lump, direction: number): Reach {
  const { x, y, z } = DIRECTIONS[direction] ?? NOWHERE;
  let [low, high] = [Infinity, -Infinity];
  for (const { rings } of faces) {
    for (const { corners } of rings) {
      for (let i = 0; i < corners.length; i += 3) {
        const at = x * (corners[i] ?? 0) + y * (corners[i + 1] ?? 0) + z * (corners[i + 2] ?? 0);
        if (at < low) low = at;
        if (at > high) high = at;
      }
    }
  }
  return { low, high };
}

const NOWHERE: Vec3 = { x: 0, y: 0, z: 0 };

function facesOf(lumps: readonly Lump[]): readonly Face[] {
  const only = lumps.length === 1 ? lumps[0] : undefined;
  return only ? only.faces : lumps.flatMap(({ faces }) => faces);
}

interface Gap {
  readonly direction: number;
  readonly at: number;
  readonly low: Lump[];
  readonly high: Lump[];
}

/** Between lumps, in the first direction that leaves a fair share on either side, or else the most even one. */
function bestGap(lumps: readonly Lump[]): Gap | null {
  let best: Gap | null = null;
  let most = 0;
  for (let direction = 0; direction < DIRECTIONS.length && 4 * most < lumps.length; direction++) {
    const sorted = lumps.toSorted((a, b) => reachOf(a, direction).low - reachOf(b, direction).low);
    const { count, at } = mostEvenSplit(sorted, direction);
    const smaller = Math.min(count, lumps.length - count);
    if (smaller <= most) continue;
    most = smaller;
    best = { direction, at, low: sorted.slice(0, count), high: sorted.slice(count) };
  }
  return best;
}

/** How many of the lumps, sorted along a direction, come before the gap nearest to their middle; 0: there is none. */
function mostEvenSplit(sorted: readonly Lump[], direction: number): { count: number; at: number } {
  let reached = -Infinity;
  let best = { count: 0, at: 0 };
  let least = Infinity;
  sorted.forEach((lump, index) => {
    const { low, high } = reachOf(lump, direction);
    const uneven = Math.abs(sorted.length / 2 - index);
    if (index > 0 && reached <= low + IN_PLANE && uneven < least) {
      best = { count: index, at: low };
      least = uneven;
    }
    if (high > reached) reached = high;
  });
  return best;
}
