/** Which primitives one shape draws. */

import type { Primitive } from '#model/drawing/primitives.ts';

/** Each subject by itself, and everything between two subjects together. */
export function partsOf(primitives: readonly Primitive[]): Primitive[][] {
  const parts: Primitive[][] = [];
  let between: Primitive[] | null = null;
  for (const primitive of primitives) {
    if (primitive.kind === 'group' && primitive.subject !== undefined) {
      parts.push([primitive]);
      between = null;
    } else if (between) between.push(primitive);
    else parts.push((between = [primitive]));
  }
  return parts;
}
