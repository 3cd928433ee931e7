/** What the hands leave on the overlay, made reactive for the painter. */

import type { Vec2 } from '#model/geometry/frame.ts';
import type { Extent } from './camera.ts';
import type { Traces } from './gestures/gesture.ts';
import type { Guide } from './snapping.ts';

export class HandTraces implements Traces {
  guides: readonly Guide[] = $state.raw([]);
  marquee: Extent | null = $state.raw(null);
  caption: { readonly at: Vec2; readonly words: string } | null = $state.raw(null);
  hovered: string | null = $state(null);
  cursor = $state('default');
}
