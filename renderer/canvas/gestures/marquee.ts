/** Draws a rectangle and selects what lies wholly in it. */

import type { Vec2 } from '#model/geometry/frame.ts';
import type { Extent } from '../camera.ts';
import { itemsWithin } from '../picking.ts';
import { pickables } from '../pickables.ts';
import { clearTraces, type Bench, type Gesture } from './gesture.ts';

export function marquee({ editor, traces }: Bench, from: Vec2, add: boolean): Gesture {
  const { session } = editor;
  const before = session.selection;
  const items = pickables(session.document, session.setup);
  const kept = add ? before : [];
  return {
    cursor: 'crosshair',
    move({ spot }) {
      traces.marquee = extentBetween(from, spot);
      session.select([...new Set([...kept, ...itemsWithin(items, traces.marquee)])]);
    },
    finish() {
      clearTraces(traces);
    },
    cancel() {
      clearTraces(traces);
      session.select(before);
    },
  };
}

function extentBetween(a: Vec2, b: Vec2): Extent {
  return {
    x: Math.min(a.x, b.x),
    y: Math.min(a.y, b.y),
    width: Math.abs(a.x - b.x),
    height: Math.abs(a.y - b.y),
  };
}
