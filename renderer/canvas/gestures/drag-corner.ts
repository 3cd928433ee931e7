/** Drags a corner of the platform. */

import { moveCorners } from '#model/commands/platform-outline.ts';
import { platformOf } from '#model/document/document.ts';
import { formatPosition } from '#model/document/measures.ts';
import { roundFigureFor, settle } from '../snapping.ts';
import { CATCH_PIXELS } from './drag-items.ts';
import { clearTraces, type Bench, type Gesture } from './gesture.ts';

export function dragCorner({ editor, traces }: Bench, corner: number): Gesture {
  const { session, view } = editor;
  const before = session.settled;
  const neighbours = platformOf(before)
    .outline.map(({ x, y }, index) => ({ id: String(index), x, y }))
    .filter((_, index) => index !== corner);
  return {
    cursor: 'grabbing',
    move({ spot, free }) {
      const to = free
        ? { ...spot, guides: [] }
        : settle({
            wanted: spot,
            spread: { downstage: 0 },
            neighbours,
            edgeDistance: 0,
            within: CATCH_PIXELS / view.camera.scale,
            roundTo: roundFigureFor(view.camera.scale, editor.units),
          });
      // The neighbours are corners and have no names of their own.
      traces.guides = to.guides.map((guide) => ({ ...guide, with: [] }));
      traces.caption = { at: to, words: formatPosition(to, editor.units) };
      session.preview(moveCorners(before, { moves: [{ corner, x: to.x, y: to.y }] }));
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
