/** Lines as boxes that labels keep off. */

import type { Point } from '../../document/records.ts';
import type { Box } from '../primitives.ts';

/** A line in short pieces. */
export function boxesAlong(a: Point, b: Point): Box[] {
  const pieces = Math.min(200, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / 3));
  return Array.from({ length: pieces }, (_, piece) => {
    const share = (piece + 0.5) / pieces;
    const [x, y] = [a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share];
    const [width, height] = [Math.abs(b.x - a.x) / pieces + 0.6, Math.abs(b.y - a.y) / pieces + 0.6];
    return { x: x - width / 2, y: y - height / 2, width, height };
  });
}
