/** A path of the drawings as the `d` of an SVG path. */

import type { PathItem } from '#model/drawing/primitives.ts';

export function written(path: readonly PathItem[]): string {
  return path.map((item) => item.join(' ')).join(' ');
}
