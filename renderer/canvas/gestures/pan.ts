/** Moves the view with the hand. */

import type { Vec2 } from '#model/geometry/frame.ts';
import { panned } from '../camera.ts';
import type { Bench, Gesture } from './gesture.ts';

export function pan({ editor: { view } }: Bench, from: Vec2): Gesture {
  const before = view.camera;
  return {
    cursor: 'grabbing',
    move({ pixel }) {
      view.camera = panned(before, { x: pixel.x - from.x, y: pixel.y - from.y });
    },
    finish: () => undefined,
    cancel() {
      view.camera = before;
    },
  };
}
