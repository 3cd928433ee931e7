/** Sets a thing of the store down: previewed as a draft under the pointer, so that it is judged before it is placed. */

import { allOf, concertOf, platformOf, type Document } from '#model/document/document.ts';
import type { Outcome } from '#model/commands/command.ts';
import type { Vec2 } from '#model/geometry/frame.ts';
import type { Editor } from '../state/editor.svelte.ts';
import type { Thing } from '../store/things.ts';
import { CATCH_PIXELS, neighboursOf } from './gestures/drag-items.ts';
import { freeSpot, wayForCopies } from './free-spot.ts';
import { roundFigureFor, settle, type Settled } from './snapping.ts';

export function settledForPlacing({ session, view, units }: Editor, wanted: Vec2): Settled {
  return settle({
    wanted,
    spread: { downstage: 0 },
    neighbours: neighboursOf(session.settled, session.setup, []),
    edgeDistance: 0,
    within: CATCH_PIXELS / view.camera.scale,
    roundTo: roundFigureFor(view.camera.scale, units),
  });
}

export function placingOutcome({ session, view, units }: Editor, thing: Thing, { x, y }: Vec2): Outcome {
  const spot = { x, y, setup: session.setup, facing: 0, units };
  return thing.place(session.settled, { spot, withStand: view.withStand });
}

/**
 * Places the thing where it can be seen: at the view's middle, or over the platform's middle if that is elsewhere. Nobody
 * sees beforehand where it goes, so it goes beside what stands there.
 */
export function placeAtViewCentre(editor: Editor, thing: Thing): void {
  const { x, y } = editor.view.camera.centre;
  const limits = concertOf(editor.session.settled).limits;
  const spot = { x: Math.round(x / 100) * 100, y: Math.max(limits.edgeDistance, Math.round(y / 100) * 100) };
  const { settled, setup } = editor.session;
  const taken = neighboursOf(settled, setup, []);
  const free = thing.beyond ? behindPlatform(settled) : freeSpot(spot, taken, platformOf(settled).outline);
  editor.carryOut(placingOutcome(editor, thing, free));
}

const BEHIND = 1500;

/** Where there mostly is room for what waits: on the centre line behind the platform, one place beside the other. */
export function behindPlatform(document: Document): Vec2 {
  const y = platformOf(document).outline.reduce((most, corner) => Math.max(most, corner.y), 0) + BEHIND;
  const taken = allOf(document, 'storage');
  const isFree = (x: number): boolean => taken.every((at) => Math.hypot(at.x - x, at.y - y) >= BEHIND);
  let x = 0;
  while (!isFree(x)) x += BEHIND;
  return { x, y };
}

/** From things of the setup, or such as are to be pasted into it, to where copies of them have room, in mm. */
export function wayBeside({ session: { settled, setup } }: Editor, originals: readonly Vec2[]): Vec2 {
  return wayForCopies(originals, neighboursOf(settled, setup, []), platformOf(settled).outline);
}
