/**
 * A straight line between two pairs of eyes, and how high the things of a scene stand above it.
 *
 * The upright plane through the line cuts every convex thing in a convex patch. The line meets the thing exactly when
 * some of the patch lies above the line and some below; and lowering the thing by the greatest height of the patch
 * above the line is the least that lets the line pass over it.
 */

import type { Vec3 } from '../../geometry/frame.ts';
import { TOUCHING } from '../../geometry/tolerances.ts';

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

/** A point of the upright plane: how far along the line in plan, and its height. */
export interface Spot {
  readonly ahead: number;
  readonly z: number;
}

/** What the upright plane between the eyes cuts out of a thing. It does not depend on how high the eyes are. */
export type Cut = FlatCut | RoundCut;

/** A convex polygon. */
export interface FlatCut {
  readonly kind: 'flat';
  readonly corners: readonly Spot[];
}

/** All within `radius` of an upright segment, as far as it lies from `first` to `last` along the line. */
export interface RoundCut {
  readonly kind: 'round';
  readonly ahead: number;
  readonly z0: number;
  readonly z1: number;
  readonly radius: number;
  readonly first: number;
  readonly last: number;
}

/** Least and greatest height above the line, mm; negative below it. */
export interface Heights {
  readonly least: number;
  readonly most: number;
}

/** Of a cut above the line it was made with, or above another one over the same ground. */
export function heightsOver(line: EyeLine, cut: Cut): Heights {
  return cut.kind === 'flat' ? heightsOfFlat(line, cut) : heightsOfRound(line, cut);
}

/** Touching the line is not standing in it. */
export function isMet({ least, most }: Heights): boolean {
  return least < -TOUCHING && most > TOUCHING;
}

function heightsOfFlat({ from, slope }: EyeLine, { corners }: FlatCut): Heights {
  let [least, most] = [Infinity, -Infinity];
  for (const { ahead, z } of corners) {
    const over = z - from.z - slope * ahead;
    least = Math.min(least, over);
    most = Math.max(most, over);
  }
  return { least, most };
}

function heightsOfRound({ from, slope }: EyeLine, { ahead: middle, radius, ...cut }: RoundCut): Heights {
  // How far before its axis a round end is highest above a slanting line.
  const lead = (radius * slope) / Math.hypot(1, slope);
  const height = (z: number, end: 1 | -1): number => {
    const ahead = Math.min(cut.last, Math.max(cut.first, middle - end * lead));
    const swell = Math.sqrt(Math.max(0, radius * radius - (ahead - middle) ** 2));
    return z + end * swell - from.z - slope * ahead;
  };
  return { least: height(cut.z0, -1), most: height(cut.z1, 1) };
}
