/** Draws a rectangle and selects what lies wholly in it, and with it whole groups; locked things are left alone. */

import type { Vec2 } from '#model/geometry/frame.ts';
import { freeOf, heldWith } from '../../app/grouping.ts';
import type { Extent } from '../camera.ts';
import { itemsWithin } from '../picking.ts';
import { pickables } from '../pickables.ts';
import { clearTraces, type Bench, type Gesture } from './gesture.ts';

export function marquee({ editor, traces }: Bench, from: Vec2, add: boolean): Gesture {
  const { session } = editor;
  const before = session.selection;
  const items = pickables(session.document, session.setup);
  const within = (frame: Extent): string[] =>
    heldWith(editor, freeOf(session.document, itemsWithin(items, frame)));
  const kept = add ? before : [];
  return {
    cursor: 'crosshair',
    move({ spot }) {
      traces.marquee = extentBetween(from, spot);
      session.select([...new Set([...kept, ...within(traces.marquee)])]);
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
