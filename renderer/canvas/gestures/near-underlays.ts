/** What of the shown underlays is near a spot: a corner of any before a line of any, the nearest first. */

import { allOf, type Document } from '#model/document/document.ts';
import type { Vec2 } from '#model/geometry/frame.ts';
import { nearestOf, type Near } from '#model/underlay/nearest.ts';

export function nearUnderlays(document: Document, spot: Vec2, within: number): Near | null {
  const found = allOf(document, 'underlay').flatMap((underlay) => nearestOf(underlay, spot, within) ?? []);
  const away = ({ at }: Near): number => Math.hypot(at.x - spot.x, at.y - spot.y);
  const [best] = found.sort(
    (a, b) => Number(b.what === 'corner') - Number(a.what === 'corner') || away(a) - away(b),
  );
  return best ?? null;
}
