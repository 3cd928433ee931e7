/** A simple polygon as convex pieces: itself when it is convex, otherwise triangles by cutting off ears. */

import type { Vec2 } from '../../geometry/frame.ts';
import { turn } from '../../geometry/segments.ts';

/** Indices of the corners of each piece, anticlockwise like the outline. */
export function convexPieces(outline: readonly Vec2[]): number[][] {
  const left = outline.map((_, index) => index);
  if (left.every((_, at) => cornerTurn(outline, left, at) >= 0)) return [left];
  const pieces: number[][] = [];
  while (left.length > 3) {
    const ear = earOf(outline, left);
    pieces.push(around(left, ear));
    left.splice(ear, 1);
  }
  pieces.push(left);
  return pieces;
}

/** Corner before, corner, corner after. */
function around(left: readonly number[], at: number): [number, number, number] {
  const count = left.length;
  return [left[(at + count - 1) % count] ?? 0, left[at] ?? 0, left[(at + 1) % count] ?? 0];
}

const NOWHERE: Vec2 = { x: 0, y: 0 };

function cornerTurn(outline: readonly Vec2[], left: readonly number[], at: number): number {
  const [a, b, c] = around(left, at);
  return turn(outline[a] ?? NOWHERE, outline[b] ?? NOWHERE, outline[c] ?? NOWHERE);
}

/**
 * A corner whose triangle can be cut off. Every simple polygon has two (Meisters 1975); where rounding hides them the
 * sharpest corner is taken, so that it always ends.
 */
function earOf(outline: readonly Vec2[], left: readonly number[]): number {
  let sharpest = 0;
  let most = -Infinity;
  for (let at = 0; at < left.length; at++) {
    const sharp = cornerTurn(outline, left, at);
    if (sharp > 0 && isEmpty(outline, left, at)) return at;
    if (sharp > most) [sharpest, most] = [at, sharp];
  }
  return sharpest;
}

function isEmpty(outline: readonly Vec2[], left: readonly number[], at: number): boolean {
  const corner = around(left, at);
  const [a = NOWHERE, b = NOWHERE, c = NOWHERE] = corner.map((index) => outline[index]);
  return left.every((index) => {
    const point = outline[index];
    if (!point || corner.includes(index)) return true;
    return turn(a, b, point) < 0 || turn(b, c, point) < 0 || turn(c, a, point) < 0;
  });
}
