/** Turns the selection by its handle, several things together; a single one can settle on facing another. */

import { turnBy, turnTo } from '#model/commands/turn.ts';
import { formatFacing } from '#model/document/measures.ts';
import { labelOf } from '#model/document/labels.ts';
import { facingTowards, normaliseFacing, type Vec2 } from '#model/geometry/frame.ts';
import { text } from '../../app/text.ts';
import { settleTurn } from '../turning.ts';
import { neighboursOf } from './drag-items.ts';
import { clearTraces, type Bench, type Gesture, type PointerAt } from './gesture.ts';

export interface Turning {
  readonly item: Vec2;
  /** The facing that the handle stood for when it was caught. */
  readonly facing: number;
}

export function turnItems({ editor, traces }: Bench, { item, facing }: Turning): Gesture {
  const { session } = editor;
  const before = session.settled;
  const ids = session.selection;
  const neighbours = neighboursOf(before, session.setup, ids);

  const wanted = (at: PointerAt) => {
    const pointed = facingTowards(item, at.spot);
    // Several have no facing in common that could be towards somebody.
    const others = ids.length === 1 ? neighbours : [];
    return at.free
      ? { facing: Math.round(pointed), faces: null }
      : settleTurn({ item, wanted: pointed, neighbours: others });
  };

  return {
    cursor: 'grabbing',
    move(at) {
      const to = wanted(at);
      const by = normaliseFacing(to.facing - facing);
      session.preview(
        ids.length === 1
          ? turnTo(before, { ids, facing: to.facing })
          : turnBy(before, { ids, by, about: 'common' }),
      );
      const faces = to.faces === null ? '' : text.plan.faces(labelOf(before, session.setup, to.faces));
      const figure = ids.length === 1 ? formatFacing(to.facing) : text.plan.turned(by);
      traces.caption = { at: at.spot, words: [figure, faces].filter(Boolean).join(', ') };
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
