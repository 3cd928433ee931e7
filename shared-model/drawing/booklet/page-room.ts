/** Room for a page on the panels of a booklet. */

import type { Size } from './order.ts';

const A4: Size = { width: 210, height: 297 };

/** As large as the largest page, A4 when there are only blanks. */
export function pageRoom(sizes: readonly Size[]): Size {
  const [first] = sizes;
  if (!first) return A4;
  return sizes.reduce<Size>(
    (most, { width, height }) => ({
      width: Math.max(most.width, width),
      height: Math.max(most.height, height),
    }),
    { width: first.width, height: first.height },
  );
}
