/** Upright boxes that stand for what an item hides, in the item's own frame. */

import type { Millimetres } from '../document/records.ts';

/**
 * `x`, `y`: middle of the box about the item's spot before it is turned (its player looks along -y, +x is his left).
 * `width` lies along x, `depth` along y; `bottom` and `top` are heights above the floor the item is on.
 */
export interface LocalBox {
  readonly x: Millimetres;
  readonly y: Millimetres;
  readonly width: Millimetres;
  readonly depth: Millimetres;
  readonly bottom: Millimetres;
  readonly top: Millimetres;
}

export function boxBetween(
  [left, right]: readonly [number, number],
  [far, near]: readonly [number, number],
  [bottom, top]: readonly [number, number],
): LocalBox {
  return {
    x: (left + right) / 2,
    y: (far + near) / 2,
    width: Math.abs(left - right),
    depth: Math.abs(far - near),
    bottom,
    top,
  };
}
