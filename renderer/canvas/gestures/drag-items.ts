/** Drags the selected items, or copies of them; they settle on lines and round figures. */

import { refusalWords } from '#model/commands/refusal-words.ts';
import { duplicate } from '#model/commands/duplicate.ts';
import { move } from '#model/commands/move.ts';
import type { Outcome, Refusal } from '#model/commands/command.ts';
import { belongsTo, concertOf, platformOf, type Document } from '#model/document/document.ts';
import { isHidden } from '#model/document/groups.ts';
import { isPlaced, type PlacedRecord } from '#model/document/records.ts';
import type { Vec2 } from '#model/geometry/frame.ts';
import { gridStep } from '#model/drawing/plan/datum.ts';
import { extentOf } from '../camera.ts';
import { pickOutline } from '../pickables.ts';
import { paperScaleFor } from '#model/drawing/screen/framing.ts';
import {
  roundFigureFor,
  settle,
  straightEdges,
  type Neighbour,
  type Settled,
  type Spread,
} from '../snapping.ts';
import { clearTraces, type Bench, type Gesture, type PointerAt } from './gesture.ts';

/** Lines catch within this many pixels. */
export const CATCH_PIXELS = 7;

/** `lead` is the item under the pointer: it settles, the others go with it. `press`: where and with which keys it was taken. */
export function dragItems({ editor, traces }: Bench, lead: string, press: PointerAt): Gesture {
  const { session, view } = editor;
  const before = session.settled;
  const ids = session.selection;
  const from = press.spot;
  const start = spotOf(before, lead) ?? from;
  const neighbours = neighboursOf(before, session.setup, ids);
  const spread = spreadOf(before, lead);
  const edges = straightEdges(platformOf(before).outline);
  let moved = false;
  let refusal: Refusal | null = null;
  /** Ctrl was held before the press and has not been let go since: it is for the copy, and not against snapping. */
  let copying = press.control;

  const wanted = (at: PointerAt): Vec2 => ({
    x: start.x + at.spot.x - from.x,
    y: start.y + at.spot.y - from.y,
  });

  const settled = (at: PointerAt): Settled =>
    at.free && !copying
      ? { ...wanted(at), guides: [] }
      : settle({
          wanted: wanted(at),
          spread,
          neighbours,
          edgeDistance: concertOf(before).limits.edgeDistance,
          within: CATCH_PIXELS / view.camera.scale,
          roundTo: roundFigureFor(view.camera.scale, editor.units),
          edges,
          ...(view.grid ? { grid: gridStep(editor.units, paperScaleFor(view.camera.scale)).mm } : {}),
        });

  const outcome = (at: PointerAt, { x, y }: Vec2): Outcome => {
    const way = { ids, dx: x - start.x, dy: y - start.y };
    return at.copy || copying ? duplicate(before, way) : move(before, way);
  };

  return {
    cursor: 'grabbing',
    move(at) {
      moved = true;
      copying &&= at.control;
      const to = at.add ? straight(settled(at), start, wanted(at)) : settled(at);
      traces.guides = to.guides;
      refusal = session.preview(outcome(at, to));
      traces.caption = refusal && { at: at.spot, words: refusalWords(refusal, editor.units) };
    },
    finish() {
      clearTraces(traces);
      if (!moved) return;
      if (refusal) return editor.announce(refusalWords(refusal, editor.units));
      session.keepDraft();
      editor.announce(session.selection.map((id) => editor.whereIs(id)).join('; '));
    },
    cancel() {
      clearTraces(traces);
      session.dropDraft();
    },
  };
}

/** Along the axis of the longer way only; the other figure stays what it was. */
function straight({ x, y, guides }: Settled, start: Vec2, wanted: Vec2): Settled {
  const axis = Math.abs(wanted.x - start.x) >= Math.abs(wanted.y - start.y) ? 'x' : 'y';
  const kept = guides.filter((guide) => guide.axis === axis);
  return axis === 'x' ? { x, y: start.y, guides: kept } : { x: start.x, y, guides: kept };
}

/** Items that others line up with: players, stands and whatever else is not moved along. */
export function neighboursOf(document: Document, setup: string, moving: readonly string[]): Neighbour[] {
  const others: Neighbour[] = [];
  for (const record of document.records.values()) {
    if (!isPlaced(record) || moving.includes(record.id) || isHidden(document, record.id)) continue;
    if (!belongsTo(record, setup as PlacedRecord['setup'] & string)) continue;
    others.push({ id: record.id, x: record.x, y: record.y });
  }
  return others;
}

function spotOf(document: Document, id: string): Vec2 | null {
  const record = document.records.get(id);
  return record && 'x' in record ? record : null;
}

function spreadOf(document: Document, id: string): Spread {
  const record = document.records.get(id);
  if (!record || !isPlaced(record)) return { downstage: 0 };
  const extent = extentOf(pickOutline(record));
  if (!extent) return { downstage: 0 };
  return {
    downstage: record.y - extent.y,
    upstage: extent.y + extent.height - record.y,
    stageLeft: extent.x + extent.width - record.x,
    stageRight: record.x - extent.x,
  };
}
