/** Drags an underlay that was made loose. It settles nowhere: it has to lie as what is drawn on it says. */

import { moveUnderlay } from '#model/commands/underlay.ts';
import type { Id } from '#model/document/ids.ts';
import { formatPosition } from '#model/document/measures.ts';
import type { Vec2 } from '#model/geometry/frame.ts';
import { clearTraces, type Bench, type Gesture } from './gesture.ts';

export function dragUnderlay({ editor, traces }: Bench, id: Id<'underlay'>, from: Vec2): Gesture {
  const { session } = editor;
  const before = session.settled;
  return {
    cursor: 'grabbing',
    move({ spot }) {
      session.preview(moveUnderlay(before, { id, dx: spot.x - from.x, dy: spot.y - from.y }));
      const moved = session.document.records.get(id);
      if (moved?.kind === 'underlay')
        traces.caption = { at: spot, words: formatPosition(moved, editor.units) };
    },
    finish() {
      clearTraces(traces);
      session.keepDraft();
    },
    cancel() {
      clearTraces(traces);
      session.dropDraft();
    },
  };
}
