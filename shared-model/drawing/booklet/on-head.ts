/** A drawing turned by half a circle about the middle of a box, as a panel lies on the flat strip that stands on its head. */

import { mapPath, turnAbout } from '../affine.ts';
import type { Box, Primitive } from '../primitives.ts';

export function onHead(primitives: readonly Primitive[], box: Box): Primitive[] {
  const centre = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  const map = turnAbout(180, centre);
  return primitives.map((primitive): Primitive => {
    if (primitive.kind === 'path') return { ...primitive, path: mapPath(map, primitive.path) };
    if (primitive.kind === 'group') {
      if (primitive.clip) throw new Error('a clipped group cannot be turned');
      return { ...primitive, children: onHead(primitive.children, box) };
    }
    const { x, y, turn = 0 } = primitive;
    return { ...primitive, x: 2 * centre.x - x, y: 2 * centre.y - y, turn: turn + 180 };
  });
}
