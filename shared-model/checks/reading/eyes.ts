/** Where a player's eyes are. */

import { bodies } from '../../catalogue/people.ts';
import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { floorHeightAt } from '../../document/levels.ts';
import type { Player } from '../../document/records.ts';
import type { Vec3 } from '../../geometry/frame.ts';

/** Who is looked at when anyone may play; the only one when it is somebody. */
export type End = 'small' | 'tall';

export interface Eye extends Vec3 {
  readonly end: End;
}

/**
 * The eyes of the smallest and the tallest who may play there: one point, or two when anyone may. Stage frame, mm.
 *
 * They are taken on the axis of the head, as the windows of the sight check are. Eyes lie some 80 mm before it, so
 * distances to a page come out that much too long, and apparent sizes too small rather than too large.
 */
export function eyesOf(document: Document, setup: Id<'setup'>, player: Player): Eye[] {
  const floor = floorHeightAt(document, setup, player);
  const { small, tall } = bodies(player.person, player.chair?.height ?? null);
  const eye = (end: End, height: number): Eye => ({ end, x: player.x, y: player.y, z: floor + height });
  const lower = eye('small', small.eyeHeight);
  return small === tall ? [lower] : [lower, eye('tall', tall.eyeHeight)];
}
